import type { FaceKind, Point } from './floorShape.ts';
import { cross, distance, dot, minus, quarterTurn, times, unit } from './point.ts';

export type HardKind = Exclude<FaceKind, 'run'>;
export const HARD_KINDS: readonly HardKind[] = ['wall', 'obstruction', 'drop', 'stop'];

/*
 *            inward
 *              ^          floor
 *      a ------+------> b
 *            solid, or the end of the floor
 */
export interface Face {
  readonly a: Point;
  readonly b: Point;
  /** Unit vector along the face, floor on its left (see quarterTurn). */
  readonly run: Point;
  /** Unit vector into the floor. */
  readonly inward: Point;
  readonly lengthMm: number;
  readonly kind: HardKind;
  /** Id of what the face belongs to. */
  readonly of: string;
}

/** Faces that follow each other without a break; `closed` when the last meets the first. */
export interface Chain {
  readonly faces: readonly Face[];
  readonly closed: boolean;
}

export function faceBetween(a: Point, b: Point, kind: HardKind, of: string): Face {
  const run = unit(minus(b, a));
  return { a, b, run, inward: quarterTurn(run), lengthMm: distance(a, b), kind, of };
}

/** The same face seen from its other side. */
export function turnedFace(face: Face): Face {
  return faceBetween(face.b, face.a, face.kind, face.of);
}

/** A part of a face between two shares of its length. */
export function partOfFace(face: Face, from: number, to: number): Face {
  if (from === 0 && to === 1) return face;
  const span = minus(face.b, face.a);
  const at = (share: number): Point => (share === 0 ? face.a : share === 1 ? face.b : plusScaled(face.a, span, share));
  return { ...face, a: at(from), b: at(to), lengthMm: face.lengthMm * (to - from) };
}

function plusScaled(a: Point, span: Point, share: number): Point {
  const move = times(span, share);
  return [a[0] + move[0], a[1] + move[1]];
}

/** Faces that turn back on each other within this, in radians, are the two sides of something thin. */
const FOLD = 1e-6;

/**
 * Turn from one face to the next in radians: positive at an inner corner of the floor, negative at an outer (reflex)
 * one. Right back is an outer one: the end of something thin that stands on the floor.
 */
export function turnBetween(before: Face, after: Face): number {
  const turn = Math.atan2(cross(before.run, after.run), dot(before.run, after.run));
  return turn > Math.PI - FOLD ? turn - 2 * Math.PI : turn;
}
