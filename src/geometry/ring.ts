import type { Point, Region, Ring } from './floorShape.ts';
import { boxOf } from './box.ts';
import { cross, distance, dot, isFinitePoint, isSame, minus } from './point.ts';
import { crossing, overlap } from './segment.ts';
import { boxIndex } from './spatial.ts';

/*
 *   3 <------- 2
 *   |          ^     open ring: the first corner is not repeated,
 *   v          |     edge i runs from corner i to corner i + 1
 *   0 -------> 1
 */

/** Corner i, counted round and round; for rings that have corners. */
export function corner(ring: Ring, i: number): Point {
  const count = ring.length;
  return ring[((i % count) + count) % count] as Point;
}

/** Signed area (mm2 for mm): positive when the ring turns from x towards y. Summed about its first corner, so far from the origin costs no digits. */
export function signedArea(ring: Ring): number {
  const origin = ring[0];
  if (!origin) return 0;
  let sum = 0;
  for (let i = 1; i + 1 < ring.length; i += 1) {
    sum += cross(minus(corner(ring, i), origin), minus(corner(ring, i + 1), origin));
  }
  return sum / 2;
}

/** Area without sign. Planar shoelace sum. */
export function ringArea(ring: Ring): number {
  return Math.abs(signedArea(ring));
}

export function perimeter(ring: Ring): number {
  let sum = 0;
  for (let i = 0; i < ring.length; i += 1) sum += distance(corner(ring, i), corner(ring, i + 1));
  return sum;
}

/** The same ring with positive (or, for holes, negative) area. */
export function wound(ring: Ring, positive: boolean): Ring {
  return signedArea(ring) >= 0 === positive ? ring : ring.toReversed();
}

/** Without repeated corners, and without those that lie on a straight run or a spike. The repeated last corner of a closed ring goes too. */
export function tidyRing(ring: Ring): Ring {
  const distinct = ring.filter((at, i) => !isSame(at, corner(ring, i + 1)));
  const kept: Point[] = [];
  for (const [i, at] of distinct.entries()) {
    const before = kept.at(-1) ?? corner(distinct, i - 1);
    const after = corner(distinct, i + 1);
    if (cross(minus(at, before), minus(after, at)) !== 0) kept.push(at);
  }
  return kept.length === distinct.length || kept.length < 3 ? kept : tidyRing(kept);
}

/** True for a point inside or on the ring (even-odd for rings that cross themselves). */
export function ringContains(ring: Ring, p: Point): boolean {
  let inside = false;
  for (let i = 0; i < ring.length; i += 1) {
    const a = corner(ring, i);
    const b = corner(ring, i + 1);
    const side = cross(minus(b, a), minus(p, a));
    if (side === 0 && dot(minus(p, a), minus(p, b)) <= 0) return true;
    if (a[1] > p[1] !== b[1] > p[1] && side > 0 === b[1] > a[1]) inside = !inside;
  }
  return inside;
}

/**
 * Where a ring crosses or touches itself: two edges that are not neighbours share a point, or an edge
 * runs back over its neighbour. Null when it is simple. Answers the first such place by edge number.
 */
export function selfCrossing(ring: Ring): Point | null {
  const edges = ring.map((a, i) => [a, corner(ring, i + 1)] as const);
  if (edges.length > FEW_EDGES) return crossingByIndex(edges);
  // Of a ring with few edges looking at all pairs costs less than an index.
  for (let i = 0; i < edges.length; i += 1) {
    for (let j = i + 1; j < edges.length; j += 1) {
      const meet = mayMeet(edges[i] as RingEdge, edges[j] as RingEdge) ? edgesMeet(edges, i, j) : null;
      if (meet) return meet;
    }
  }
  return null;
}

type RingEdge = readonly [Point, Point];

function crossingByIndex(edges: readonly RingEdge[]): Point | null {
  const index = boxIndex(edges.map((edge) => boxOf(edge)));
  for (const [i, edge] of edges.entries()) {
    for (const j of index.meeting(boxOf(edge)).toSorted((x, y) => x - y)) {
      const meet = j > i && mayMeet(edge, edges[j] as RingEdge) ? edgesMeet(edges, i, j) : null;
      if (meet) return meet;
    }
  }
  return null;
}

/** Their boxes meet. */
function mayMeet([[ax, ay], [bx, by]]: RingEdge, [[cx, cy], [dx, dy]]: RingEdge): boolean {
  return (
    Math.min(ax, bx) <= Math.max(cx, dx) &&
    Math.min(cx, dx) <= Math.max(ax, bx) &&
    Math.min(ay, by) <= Math.max(cy, dy) &&
    Math.min(cy, dy) <= Math.max(ay, by)
  );
}

const FEW_EDGES = 24;

/** A place that two edges share, but for the corner between neighbours. */
function edgesMeet(edges: readonly (readonly [Point, Point])[], i: number, j: number): Point | null {
  const [a1, a2] = edges[i] as readonly [Point, Point];
  const [b1, b2] = edges[j] as readonly [Point, Point];
  const shared = overlap(a1, a2, b1, b2);
  if (shared) return shared;
  const areNeighbours = j === i + 1 || (i === 0 && j === edges.length - 1);
  return areNeighbours ? null : (crossing(a1, a2, b1, b2)?.at ?? null);
}

/** True when all corners lie on one line (a figure of eight has no signed area either, but is not flat). */
function isFlat(ring: Ring): boolean {
  const origin = corner(ring, 0);
  return ring.every((at, i) => Math.abs(cross(minus(at, origin), minus(corner(ring, i + 1), origin))) < 1);
}

/** A million km from the origin, in mm: what lies beyond is no place on a plan, and areas there are no numbers. */
const FARTHEST_MM = 1e12;

/** What makes a ring useless, by code, with the place; null when it is sound. */
export function ringFault(
  ring: Ring,
): { readonly code: 'notANumber' | 'tooFewCorners' | 'noArea' | 'crossesItself'; readonly at: Point | null } | null {
  const bad = ring.find((at) => !isFinitePoint(at) || Math.max(Math.abs(at[0]), Math.abs(at[1])) > FARTHEST_MM);
  if (bad) return { code: 'notANumber', at: null };
  if (ring.length < 3) return { code: 'tooFewCorners', at: ring[0] ?? null };
  if (isFlat(ring)) return { code: 'noArea', at: ring[0] ?? null };
  const at = selfCrossing(ring.filter((p, i) => !isSame(p, corner(ring, i + 1))));
  if (at) return { code: 'crossesItself', at };
  return ringArea(ring) < 1 ? { code: 'noArea', at: ring[0] ?? null } : null;
}

/** Area of a region, holes taken off (mm2 for mm). */
export function regionArea(region: Region): number {
  let sum = 0;
  for (const [outer, ...holes] of region) {
    if (outer) sum += ringArea(outer);
    for (const hole of holes) sum -= ringArea(hole);
  }
  return sum;
}
