import type { Point, Ring } from '../floorShape.ts';
import type { Face } from '../hardFace.ts';
import { along, between, cross, distance, dot, minus, quarterTurn, unit } from '../point.ts';
import { corner, ringContains } from '../ring.ts';
import { crossing } from '../segment.ts';
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

/** The aprons of one machine, and with the fans between them as outlines. */
export interface Aprons {
  readonly rings: readonly Ring[];
  readonly outlines: readonly Outline[];
}

export function apronsAlong(runEdges: readonly BoundaryFace[], machine: MachineAt): Aprons {
  const depth = apronDepth(machine);
  const rings = runEdges.map((edge) => apron(edge, depth));
  const fans = runEdges.flatMap((edge) =>
    runEdges
      .filter((next) => next !== edge && distance(edge.b, next.a) <= SAME_CORNER_MM)
      .flatMap((next) => fan(edge, next, depth)),
  );
  return { rings, outlines: [...rings.map((ring) => ringOutline(ring, APRON, 0)), ...fans] };
}

/** How far behind a face, and how far from its ends, in mm, one looks what lies there. */
const LOOK_MM = 1;

/**
 * True when an apron lies right behind a face: floor beyond the open edge sees that face from behind. One that only
 * touches its end, as where a side of the apron runs along the next face of the same corner, is not behind it.
 */
export function seesApron({ a, b, inward, lengthMm }: Face, { rings }: Aprons): boolean {
  const inset = Math.min(LOOK_MM / lengthMm, 0.5);
  const [from, to] = [inset, 1 - inset].map((share) => along(between(a, b, share), inward, -LOOK_MM)) as [Point, Point];
  return rings.some(
    (ring) =>
      ringContains(ring, from) ||
      ringContains(ring, to) ||
      ring.some((at, i) => crossing(from, to, at, corner(ring, i + 1)) !== null),
  );
}

/** Deep enough for the machine to stand outside. */
function apronDepth({ shape, sizes }: MachineAt): number {
  return 2 * Math.max(shape.headRadiusMm + shape.clearanceMm.wall, shape.passageMm / 2, sizes.leadMm) + 200;
}

function outwardOf({ a, b }: BoundaryFace): Point {
  return quarterTurn(unit(minus(a, b)));
}

function apron(edge: BoundaryFace, depth: number): Ring {
  const { a, b } = edge;
  const outward = outwardOf(edge);
  return [a, b, along(b, outward, depth), along(a, outward, depth)];
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
