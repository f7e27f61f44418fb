import type { FaceKind, FloorShape, Point, Ring } from '../../src/geometry/floorShape.ts';
import { cutShares, windingOf } from './slowAreas.ts';

/*
 * Hard faces by asking, piece by piece, what lies on either side: the slow way, for the point sampler.
 *
 *        floor        a piece with floor on one side is a face of the kind it was drawn as;
 *   ----(piece)----   where two things are drawn on one line, or floor lies on both sides of a slab's
 *       no floor      hard edge, the kind is not certain and the sampler decides nothing by it
 */
export interface DirectFace {
  readonly a: Point;
  readonly b: Point;
  readonly kind: Exclude<FaceKind, 'run'>;
  readonly isCertain: boolean;
  /** On the outline of the net floor; false for what stands beyond an open edge. */
  readonly isOnFloor: boolean;
}

interface Drawn {
  readonly a: Point;
  readonly b: Point;
  readonly kind: FaceKind | 'soft';
}

/** This far beside a piece, in mm, its two sides are asked. */
const BESIDE_MM = 1e-3;

/** True where floor is net, by winding numbers. */
export function netAt(shape: FloorShape, at: Point): boolean {
  const isIn = (ring: Ring): boolean => windingOf(ring, at) !== 0;
  return (
    shape.slabs.some(({ ring }) => isIn(ring)) &&
    !shape.solids.some(({ ring, solid }) => solid && isIn(ring)) &&
    !shape.outOfScope.some(({ ring }) => isIn(ring)) &&
    !shape.walls.some(({ body, gaps }) => isIn(body) && !gaps.some((gap) => isIn(gap.ring)))
  );
}

export function directFaces(shape: FloorShape): DirectFace[] {
  const drawn = drawnEdges(shape);
  const rings = bodiesOf(shape);
  return drawn.flatMap((edge) => {
    if (edge.kind === 'run' || edge.kind === 'soft') return [];
    const cuts = cutShares(edge.a, edge.b, rings);
    return cuts.slice(1).flatMap((to, i) => faceOf(shape, drawn, edge, cuts[i] ?? 0, to));
  });
}

function faceOf(shape: FloorShape, drawn: readonly Drawn[], edge: Drawn, from: number, to: number): DirectFace[] {
  const run: Point = [edge.b[0] - edge.a[0], edge.b[1] - edge.a[1]];
  const size = Math.hypot(...run);
  if (!((to - from) * size > BESIDE_MM) || edge.kind === 'run' || edge.kind === 'soft') return [];
  const at = (share: number): Point => [edge.a[0] + run[0] * share, edge.a[1] + run[1] * share];
  const middle = at((from + to) / 2);
  const side: Point = [(-run[1] / size) * BESIDE_MM, (run[0] / size) * BESIDE_MM];
  const sides = [1, -1].filter((off) => netAt(shape, [middle[0] + side[0] * off, middle[1] + side[1] * off])).length;
  const isInSlab = shape.slabs.some(({ ring }) => windingOf(ring, middle) !== 0);
  if (sides === 0 && isInSlab) return [];
  const others = drawn.filter((other) => other !== edge && other.kind !== edge.kind);
  const isAlone = !others.some((other) => distanceTo(middle, other.a, other.b) < 2 * BESIDE_MM);
  return [{ a: at(from), b: at(to), kind: edge.kind, isCertain: isAlone && sides === 1, isOnFloor: sides > 0 }];
}

function drawnEdges(shape: FloorShape): Drawn[] {
  const edges = (ring: Ring, kindOf: (i: number) => Drawn['kind']): Drawn[] =>
    ring.map((a, i) => ({ a, b: ring[(i + 1) % ring.length] ?? a, kind: kindOf(i) }));
  return [
    ...shape.slabs.flatMap(({ ring, faces }) => edges(ring, (i) => faces[i] ?? 'wall')),
    ...shape.solids.flatMap(({ ring, solid }) => (solid ? edges(ring, () => 'obstruction') : [])),
    ...shape.walls.flatMap(({ body, gaps }) =>
      [body, ...gaps.map(({ ring }) => ring)].flatMap((ring) => edges(ring, () => 'wall')),
    ),
    ...shape.outOfScope.flatMap(({ ring }) => edges(ring, () => 'soft')),
  ];
}

/** The rings that make net floor what it is. */
export function bodiesOf(shape: FloorShape): Ring[] {
  return [
    ...shape.slabs.map(({ ring }) => ring),
    ...shape.solids.flatMap(({ ring, solid }) => (solid ? [ring] : [])),
    ...shape.walls.flatMap(({ body, gaps }) => [body, ...gaps.map(({ ring }) => ring)]),
    ...shape.outOfScope.map(({ ring }) => ring),
  ];
}

/** Distance from a point to a segment, by the textbook. */
export function distanceTo([x, y]: Point, [ax, ay]: Point, [bx, by]: Point): number {
  const [dx, dy] = [bx - ax, by - ay];
  const square = dx * dx + dy * dy;
  const share = square === 0 ? 0 : Math.min(1, Math.max(0, ((x - ax) * dx + (y - ay) * dy) / square));
  return Math.hypot(x - ax - share * dx, y - ay - share * dy);
}
