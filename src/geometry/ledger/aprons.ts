import type { Point } from '../floorShape.ts';
import { along, cross, distance, dot, minus, quarterTurn, unit } from '../point.ts';
import type { BoundaryFace } from './cluster.ts';
import { APRON } from './layers.ts';
import { type Outline, pathOutline, ringOutline } from './outline.ts';
import type { MachineAt } from './reach.ts';

/*
 * Floor beyond the edges where it runs on, for the machine to stand on:
 *
 *    +----------+.          an apron along each edge, and a fan round a corner that juts out between two of them
 *    |  apron   |  fan
 *    +--- run --+----+
 *         slab  | apron
 */

/** Ends of open edges within this of each other, in mm, are one corner. */
const SAME_CORNER_MM = 1e-3;

/** Outlines of the aprons and fans of one machine. */
export function apronsAlong(runEdges: readonly BoundaryFace[], machine: MachineAt): Outline[] {
  const depth = apronDepth(machine);
  const fans = runEdges.flatMap((edge) =>
    runEdges
      .filter((next) => next !== edge && distance(edge.b, next.a) <= SAME_CORNER_MM)
      .flatMap((next) => fan(edge, next, depth)),
  );
  return [...runEdges.map((edge) => apron(edge, depth)), ...fans];
}

/** Deep enough for the machine to stand outside. */
function apronDepth({ shape, sizes }: MachineAt): number {
  return 2 * Math.max(shape.headRadiusMm + shape.clearanceMm.wall, shape.passageMm / 2, sizes.leadMm) + 200;
}

function outwardOf({ a, b }: BoundaryFace): Point {
  return quarterTurn(unit(minus(a, b)));
}

function apron(edge: BoundaryFace, depth: number): Outline {
  const { a, b } = edge;
  const outward = outwardOf(edge);
  const ring: Point[] = [a, b, along(b, outward, depth), along(a, outward, depth)];
  return ringOutline(ring, APRON, 0);
}

function fan(before: BoundaryFace, after: BoundaryFace, depth: number): Outline[] {
  const [from, to] = [outwardOf(before), outwardOf(after)];
  const turn = Math.atan2(cross(from, to), dot(from, to));
  if (turn <= 0) return [];
  const [cx, cy] = before.b;
  const [startX, startY] = along(before.b, from, depth);
  const [endX, endY] = along(before.b, to, depth);
  const path = [
    { x: cx, y: cy },
    { x: startX, y: startY },
    { x: endX, y: endY, arc: { cx, cy, radius: depth, turn } },
  ];
  return [pathOutline(path, APRON, 0)];
}
