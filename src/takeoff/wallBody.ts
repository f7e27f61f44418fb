import type { Point, Ring } from '../geometry/floorShape.ts';
import { along, cross, distance, dot, isSame, minus, quarterTurn, unit } from '../geometry/point.ts';
import { pathLength, pointAt } from '../geometry/polyline.ts';

/*
 *   butt end                      mitred joint
 *      +--------------------------------+
 *      |  path  o-----------------o     |
 *      +------------------------+ |     |
 *                               | o     |
 *                               +-------+
 */

/** A joint sharper than this reach (in half thicknesses) is cut at it instead of running to a far point. */
const MITRE_LIMIT = 4;

/**
 * The body of a wall, mm: its path with half the thickness on either side, mitred joints, butt ends. A path that
 * closes gives two bodies that meet on two mitres, so that the floor inside it stays floor.
 */
export function wallBodies(path: readonly Point[], thicknessMm: number): Ring[] {
  const points = path.filter((at, i) => i === 0 || !isSame(at, path[i - 1] as Point));
  const first = points[0];
  const last = points.at(-1);
  if (!first || !last || points.length < 2) return [];
  if (points.length < 4 || !isSame(first, last)) return [bodyOf(points, thicknessMm, null, null)];
  const half = Math.floor(points.length / 2);
  const before = points.at(-2) as Point;
  const after = points[1] as Point;
  return [
    bodyOf(points.slice(0, half + 1), thicknessMm, before, points[half + 1] ?? null),
    bodyOf(points.slice(half), thicknessMm, points[half - 1] ?? null, after),
  ];
}

/** The part of a wall's body between two places along its path, mm: the gap of an opening. */
export function gapRing(path: readonly Point[], thicknessMm: number, fromMm: number, toMm: number): Ring | null {
  const total = pathLength(path);
  const [from, to] = [Math.max(0, fromMm), Math.min(total, toMm)];
  const [start, end] = [pointAt(path, from), pointAt(path, to)];
  if (!start || !end || to - from <= 0) return null;
  let walked = 0;
  const between: Point[] = [];
  for (const [i, at] of path.entries()) {
    if (i > 0) walked += distance(path[i - 1] as Point, at);
    if (walked > from && walked < to) between.push(at);
  }
  return bodyOf([start, ...between, end], thicknessMm, null, null);
}

/** `before` and `after` are the points beyond the ends when the wall goes on there: then the end is mitred. */
function bodyOf(points: readonly Point[], thicknessMm: number, before: Point | null, after: Point | null): Ring {
  const half = thicknessMm / 2;
  const offsets = points.map((at, i) => jointOffset(points[i - 1] ?? before, at, points[i + 1] ?? after));
  const right = points.map((at, i) => along(at, offsets[i] as Point, half));
  const left = points.map((at, i) => along(at, offsets[i] as Point, -half));
  return [...right, ...left.toReversed()];
}

/** How far, in half thicknesses, the right side of the wall lies from a point of its path. */
function jointOffset(before: Point | null, at: Point, after: Point | null): Point {
  const into = before ? unit(minus(at, before)) : null;
  const out = after ? unit(minus(after, at)) : null;
  if (!into || !out) return quarterTurn(into ?? out ?? [1, 0]);
  const [n, m] = [quarterTurn(into), quarterTurn(out)];
  // |n + m| = 2 cos(turn/2); a full turn back has no mitre at all.
  const middle: Point = [n[0] + m[0], n[1] + m[1]];
  const size = Math.hypot(...middle);
  if (size < 1e-9 && cross(into, out) === 0) return n;
  const reach = Math.min(MITRE_LIMIT, 1 / dot(unit(middle), n));
  return [(middle[0] / size) * reach, (middle[1] / size) * reach];
}
