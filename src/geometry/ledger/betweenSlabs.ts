import type { Point } from '../floorShape.ts';
import { between, distance } from '../point.ts';
import { nearestOnSegment } from '../segment.ts';
import { isNet } from './cells.ts';
import { type BoundaryFace, type ClusterTrace, type DrawnEdge, HARDNESS, type HardItem, isSlab } from './cluster.ts';
import { HARD_LAYERS } from './layers.ts';
import { placeIn } from './place.ts';
import { walk } from './walks.ts';

/*
 * Where two slabs meet and an edge between them is hard, the floor goes on but nothing crosses:
 *
 *   +-------+-------+        such an edge has a face on each side, though it is no boundary of net floor
 *   |  s1   |  s2   |
 *   +-------+-------+
 */

/** How far beside the edge floor is looked for, in mm. */
const BESIDE_MM = 0.05;
/** Shorter pieces, in mm, are rounding. */
const NOTHING_MM = 0.2;

/** Both faces of each hard edge that has floor on both sides. */
export function facesBetweenSlabs(trace: ClusterTrace, items: readonly HardItem[]): BoundaryFace[] {
  const slabs = items.filter(isSlab);
  if (slabs.length < 2) return [];
  const hard = slabs.flatMap((slab) => slab.drawn.filter((edge) => HARDNESS[edge.kind] > HARDNESS.run));
  return hard.flatMap((edge) =>
    floorOnBothSides(trace, edge).flatMap(([from, to]) => {
      const a = between([edge.ax, edge.ay], [edge.bx, edge.by], from);
      const b = between([edge.ax, edge.ay], [edge.bx, edge.by], to);
      const own: BoundaryFace = { a, b, kind: edge.kind, of: edge.of };
      const isOtherDrawn = hard.some((other) => runsBack(other, edge, between(a, b, 0.5)));
      return isOtherDrawn ? [own] : [own, { ...own, a: b, b: a }];
    }),
  );
}

function floorOnBothSides(trace: ClusterTrace, edge: DrawnEdge): (readonly [number, number])[] {
  const size = distance([edge.ax, edge.ay], [edge.bx, edge.by]);
  if (size === 0) return [];
  const [left, right] = [netBeside(trace, edge, size, BESIDE_MM), netBeside(trace, edge, size, -BESIDE_MM)];
  return left.flatMap(([from, to]) =>
    right.flatMap(([start, end]) => {
      const [low, high] = [Math.max(from, start), Math.min(to, end)];
      return (high - low) * size > NOTHING_MM ? [[low, high] as const] : [];
    }),
  );
}

function netBeside(
  { tile }: ClusterTrace,
  { ax, ay, bx, by }: DrawnEdge,
  size: number,
  off: number,
): (readonly [number, number])[] {
  const [dx, dy] = [(-(by - ay) / size) * off, ((bx - ax) / size) * off];
  const place = placeIn(tile, HARD_LAYERS);
  return walk(tile, place, ax + dx, ay + dy, bx + dx, by + dy, [0, 1], isNet)
    .filter(({ what }) => what)
    .map(({ from, to }) => [from, to] as const);
}

/** True when another edge lies at the place and runs the other way. */
function runsBack(other: DrawnEdge, edge: DrawnEdge, at: Point): boolean {
  const isBack = (other.bx - other.ax) * (edge.bx - edge.ax) + (other.by - other.ay) * (edge.by - edge.ay) < 0;
  return isBack && nearestOnSegment(at, [other.ax, other.ay], [other.bx, other.by]).distance <= BESIDE_MM;
}
