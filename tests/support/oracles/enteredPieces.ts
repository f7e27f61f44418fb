import type { FloorShape, MachineShape, Point, Ring } from '../../../src/geometry/floorShape.ts';
import type { PlaneSets } from './planeSets.ts';
import { windingOf } from './ringTests.ts';

/** An entrance this near to an edge, in mm, leads in through it. */
const ON_EDGE_MM = 5;

/**
 * Which pieces of the places for the middle of a machine can be entered: for each entrance the piece that
 * holds it, or along a `run` edge all that touch it, or else the nearest within 1.5 times the stand-off.
 * 'all' when no entrance lies on the floor. An entrance that is too narrow or too low enters nothing.
 */
export function enteredPieces<S>(
  shape: FloorShape,
  pieces: readonly S[],
  standMm: number,
  sets: PlaneSets<S>,
): readonly S[] | 'all' {
  const usable = shape.entrances.filter(({ at }) => isOnFloor(at, shape));
  if (usable.length === 0) return 'all';
  const outlines = pieces.map((piece) => sets.outlines(piece));
  const entered = new Set<number>();
  for (const entrance of usable) {
    if (isBlocked(entrance, shape)) continue;
    for (const i of piecesAt(entrance.at, outlines, shape, standMm)) entered.add(i);
  }
  return pieces.filter((_, i) => entered.has(i));
}

function isOnFloor(at: Point, shape: FloorShape): boolean {
  const isInBody = [
    ...shape.solids.filter((solid) => solid.solid).map((solid) => solid.ring),
    ...shape.outOfScope.map((patch) => patch.ring),
  ].some((ring) => windingOf(ring, at) !== 0 && distanceTo(ring, at) > ON_EDGE_MM);
  const isInWall = shape.walls.some(
    ({ body, gaps }) =>
      windingOf(body, at) !== 0 &&
      distanceTo(body, at) > ON_EDGE_MM &&
      gaps.every((gap) => windingOf(gap.ring, at) === 0),
  );
  const isOnSlab = shape.slabs.some(({ ring }) => windingOf(ring, at) !== 0 || distanceTo(ring, at) <= ON_EDGE_MM);
  return isOnSlab && !isInBody && !isInWall;
}

/** By its own size, or by the gap or doorway it stands in. */
function isBlocked({ at, widthMm, heightMm }: FloorShape['entrances'][number], shape: FloorShape): boolean {
  const machine = shape.machines[0] as MachineShape;
  const gaps = shape.walls.flatMap((wall) => wall.gaps);
  const doors = shape.slabs.flatMap((slab) =>
    slab.passages.flatMap((passage, i) =>
      passage ? [{ passage, ring: [slab.ring[i], slab.ring[(i + 1) % slab.ring.length]] as Ring }] : [],
    ),
  );
  const ways = [...gaps, ...doors].filter(
    ({ ring }) => windingOf(ring, at) !== 0 || distanceTo(ring, at) <= ON_EDGE_MM,
  );
  return [{ widthMm, heightMm }, ...ways.map((way) => way.passage)].some(
    (way) =>
      (way.widthMm !== null && way.widthMm < machine.passageMm - 0.5) ||
      (way.heightMm !== null && way.heightMm < machine.heightMm),
  );
}

function piecesAt(
  at: Point,
  outlines: readonly (readonly Ring[])[],
  shape: FloorShape,
  standMm: number,
): readonly number[] {
  const holding = outlines.findIndex((rings) => rings.reduce((sum, ring) => sum + windingOf(ring, at), 0) !== 0);
  if (holding >= 0) return [holding];
  const near = outlines.map((rings, i) => ({ i, distance: Math.min(...rings.map((ring) => distanceTo(ring, at))) }));
  if (isOnRunEdge(at, shape)) return near.filter(({ distance }) => distance <= standMm).map(({ i }) => i);
  const [nearest] = near.toSorted((a, b) => a.distance - b.distance);
  return nearest && nearest.distance <= standMm * 1.5 + ON_EDGE_MM ? [nearest.i] : [];
}

function isOnRunEdge(at: Point, shape: FloorShape): boolean {
  return shape.slabs.some(({ ring, faces }) =>
    ring.some(
      (a, i) => faces[i] === 'run' && distanceToEdge(at, a, ring[(i + 1) % ring.length] as Point) <= ON_EDGE_MM,
    ),
  );
}

function distanceTo(ring: Ring, at: Point): number {
  return Math.min(...ring.map((a, i) => distanceToEdge(at, a, ring[(i + 1) % ring.length] as Point)));
}

function distanceToEdge([x, y]: Point, [ax, ay]: Point, [bx, by]: Point): number {
  const [runX, runY] = [bx - ax, by - ay];
  const square = runX * runX + runY * runY;
  const share = square > 0 ? Math.max(0, Math.min(1, ((x - ax) * runX + (y - ay) * runY) / square)) : 0;
  return Math.hypot(x - ax - share * runX, y - ay - share * runY);
}
