import type { Point } from './floorShape.ts';

/** Vectors in the plane. x right, y down, mm; nothing here cares about the unit. */

export function plus(a: Point, b: Point): Point {
  return [a[0] + b[0], a[1] + b[1]];
}

export function minus(a: Point, b: Point): Point {
  return [a[0] - b[0], a[1] - b[1]];
}

export function times(a: Point, factor: number): Point {
  return [a[0] * factor, a[1] * factor];
}

/** a moved along `direction` by `by` times its length. */
export function along(a: Point, direction: Point, by: number): Point {
  return [a[0] + direction[0] * by, a[1] + direction[1] * by];
}

export function between(a: Point, b: Point, share: number): Point {
  return [a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share];
}

export function dot(a: Point, b: Point): number {
  return a[0] * b[0] + a[1] * b[1];
}

/** Positive when b turns the same way from a as the y axis turns from the x axis. */
export function cross(a: Point, b: Point): number {
  return a[0] * b[1] - a[1] * b[0];
}

export function lengthOf(a: Point): number {
  return Math.hypot(a[0], a[1]);
}

export function distance(a: Point, b: Point): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1]);
}

/** Unit vector; a zero vector stays zero. */
export function unit(a: Point): Point {
  const size = lengthOf(a);
  return size === 0 ? [0, 0] : [a[0] / size, a[1] / size];
}

/** The vector turned a quarter from x towards y: in a ring of positive area it points inwards. */
export function quarterTurn(a: Point): Point {
  return [-a[1], a[0]];
}

export function isSame(a: Point, b: Point): boolean {
  return a[0] === b[0] && a[1] === b[1];
}

export function isFinitePoint(a: Point): boolean {
  return Number.isFinite(a[0]) && Number.isFinite(a[1]);
}
