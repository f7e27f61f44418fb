import type { Point } from './floorShape.ts';
import { between, cross, distance, dot, minus } from './point.ts';

/** The place of segment a-b nearest to p: `share` runs from 0 at a to 1 at b; distance in the unit of the points. */
export interface Nearest {
  readonly at: Point;
  readonly share: number;
  readonly distance: number;
}

/** Nearest place of a segment; a segment of no length answers with its one point. */
export function nearestOnSegment(p: Point, a: Point, b: Point): Nearest {
  const run = minus(b, a);
  const square = dot(run, run);
  const share = square === 0 ? 0 : Math.min(1, Math.max(0, dot(minus(p, a), run) / square));
  const at = share === 0 ? a : share === 1 ? b : between(a, b, share);
  return { at, share, distance: distance(p, at) };
}

/** A crossing, as the share of each segment from its start. */
export interface Crossing {
  readonly at: Point;
  readonly shareA: number;
  readonly shareB: number;
}

/**
 * Where two segments meet in one point, touching ends included; null when they are apart or parallel.
 * Overlapping collinear segments answer null: ask `overlaps`.
 */
export function crossing(a1: Point, a2: Point, b1: Point, b2: Point): Crossing | null {
  const runA = minus(a2, a1);
  const runB = minus(b2, b1);
  const turn = cross(runA, runB);
  if (turn === 0) return null;
  const gap = minus(b1, a1);
  const shareA = cross(gap, runB) / turn;
  const shareB = cross(gap, runA) / turn;
  if (shareA < 0 || shareA > 1 || shareB < 0 || shareB > 1) return null;
  return { at: between(a1, a2, shareA), shareA, shareB };
}

/** The middle of what two collinear segments share, or null when that has no length. */
export function overlap(a1: Point, a2: Point, b1: Point, b2: Point): Point | null {
  const run = minus(a2, a1);
  const square = dot(run, run);
  if (square === 0 || cross(run, minus(b2, b1)) !== 0 || cross(run, minus(b1, a1)) !== 0) return null;
  const first = dot(minus(b1, a1), run) / square;
  const last = dot(minus(b2, a1), run) / square;
  const from = Math.max(0, Math.min(first, last));
  const to = Math.min(1, Math.max(first, last));
  return to > from ? between(a1, a2, (from + to) / 2) : null;
}
