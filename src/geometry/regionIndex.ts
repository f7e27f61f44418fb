import type { Point, Region } from './floorShape.ts';
import { type Box, boxOf, boxOfRegion } from './box.ts';
import { between, cross, distance, minus } from './point.ts';
import { corner } from './ring.ts';
import { nearestOnSegment } from './segment.ts';
import { type BoxIndex, boxIndex } from './spatial.ts';

/** A region made quick to ask: what is inside, where a segment crosses its outline, how far away it is. */
export interface RegionIndex {
  readonly box: Box;
  /** Even-odd over all rings; a point on the outline may answer either way. */
  contains(p: Point): boolean;
  /** Shares of a-b, from 0 to 1 and in order, between which a-b stays inside or stays outside. */
  cuts(a: Point, b: Point): readonly number[];
  /** The nearest place of the outline, or null beyond `withinMm`. */
  nearest(p: Point, withinMm: number): { readonly at: Point; readonly distance: number } | null;
  /** True when an edge of the outline meets the box. */
  outlineMeets(box: Box): boolean;
}

export function regionIndex(region: Region): RegionIndex {
  const edges: (readonly [Point, Point])[] = [];
  for (const ring of region.flat()) {
    for (let i = 0; i < ring.length; i += 1) edges.push([corner(ring, i), corner(ring, i + 1)]);
  }
  const index = boxIndex(edges.map((edge) => boxOf(edge)));
  const box = boxOfRegion(region);
  const near = (within: Box): (readonly [Point, Point])[] =>
    index.meeting(within).flatMap((i) => {
      const edge = edges[i];
      return edge ? [edge] : [];
    });

  return {
    box,
    contains(p) {
      const [x, y] = p;
      if (!(x >= box.minX && x <= box.maxX && y >= box.minY && y <= box.maxY)) return false;
      let inside = false;
      for (const [a, b] of near({ minX: x, minY: y, maxX: box.maxX, maxY: y })) {
        if (a[1] > y === b[1] > y) continue;
        if (cross(minus(b, a), minus(p, a)) > 0 === b[1] > a[1]) inside = !inside;
      }
      return inside;
    },
    cuts: (a, b) => cutShares(a, b, near(boxOf([a, b]))),
    nearest(p, withinMm) {
      const reach = { minX: p[0] - withinMm, minY: p[1] - withinMm, maxX: p[0] + withinMm, maxY: p[1] + withinMm };
      let best: { at: Point; distance: number } | null = null;
      for (const [a, b] of near(reach)) {
        const found = nearestOnSegment(p, a, b);
        if (found.distance <= withinMm && (!best || found.distance < best.distance)) best = found;
      }
      return best;
    },
    outlineMeets: (within) => meets(index, within),
  };
}

function meets(index: BoxIndex, box: Box): boolean {
  return index.meeting(box).length > 0;
}

function cutShares(a: Point, b: Point, edges: readonly (readonly [Point, Point])[]): readonly number[] {
  const run = minus(b, a);
  const size = distance(a, b);
  const shares: number[] = [0, 1];
  if (size === 0) return shares;
  for (const [from, to] of edges) {
    const edge = minus(to, from);
    const turn = cross(run, edge);
    const gap = minus(from, a);
    if (turn === 0) {
      // Along the same line: both ends of the edge are places where things may change.
      for (const end of [from, to]) {
        const found = nearestOnSegment(end, a, b);
        if (found.distance < 1e-9 * size) shares.push(found.share);
      }
      continue;
    }
    const share = cross(gap, edge) / turn;
    const other = cross(gap, run) / turn;
    if (share > 0 && share < 1 && other >= -1e-9 && other <= 1 + 1e-9) shares.push(share);
  }
  return [...new Set(shares)].toSorted((x, y) => x - y);
}

/** Parts of a-b that lie inside, or no further than `besideMm` from the outline, as pairs of shares; neighbouring parts are joined. */
export function insideShares(
  index: RegionIndex,
  a: Point,
  b: Point,
  besideMm = 0,
): readonly (readonly [number, number])[] {
  const shares = index.cuts(a, b);
  const parts: [number, number][] = [];
  for (let i = 0; i + 1 < shares.length; i += 1) {
    const from = shares[i] as number;
    const to = shares[i + 1] as number;
    const middle = between(a, b, (from + to) / 2);
    if (!index.contains(middle) && (besideMm === 0 || !index.nearest(middle, besideMm))) continue;
    const last = parts.at(-1);
    if (last && last[1] === from) last[1] = to;
    else parts.push([from, to]);
  }
  return parts;
}
