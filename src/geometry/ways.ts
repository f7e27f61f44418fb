import type { FloorShape, MachineShape, Passage, Point, Ring, SlabShape, WallShape } from './floorShape.ts';
import { boxOf, grownBox } from './box.ts';
import { faceBetween } from './hardFace.ts';
import { corner, ringContains } from './ring.ts';
import { nearestOnSegment } from './segment.ts';

/*
 * Ways through: the gap of a wall, or a thin strip along a doorway in the outline of a slab.
 *
 *    wall ======[ gap ]======      A passage too narrow or too low for a machine is closed to it, whatever
 *                                  the drawing would let through.
 */
export interface Way {
  readonly passage: Passage;
  readonly ring: Ring;
}

/** Half the thickness, in mm, that stands for a doorway drawn as a line. */
const DOORWAY_HALF_MM = 2;
/** An entrance this near to a way, in mm, stands in it. */
const ON_EDGE_MM = 5;
/** How far a passage may fall short, in mm, and still let a machine through. */
const BIAS_MM = 0.5;

export function waysOf(shape: Pick<FloorShape, 'slabs' | 'walls'>): Way[] {
  return [...shape.walls.flatMap(waysOfWall), ...shape.slabs.flatMap(waysOfSlab)];
}

export function waysOfWall(wall: WallShape): Way[] {
  return wall.gaps.map(({ passage, ring }) => ({ passage, ring }));
}

export function waysOfSlab(slab: SlabShape): Way[] {
  return slab.passages.flatMap((passage, i) =>
    passage ? [{ passage, ring: thinRing(corner(slab.ring, i), corner(slab.ring, i + 1)) }] : [],
  );
}

/** A line made a ring a few mm thick. */
function thinRing(a: Point, b: Point): Ring {
  const { inward } = faceBetween(a, b, 'wall', '');
  const off = (p: Point, by: number): Point => [p[0] + inward[0] * by, p[1] + inward[1] * by];
  return [off(a, -DOORWAY_HALF_MM), off(b, -DOORWAY_HALF_MM), off(b, DOORWAY_HALF_MM), off(a, DOORWAY_HALF_MM)];
}

export type Lack = { readonly needsMm: number; readonly what: 'width' | 'height' };

/** Why a machine does not fit through a passage; null when it does. Half a millimetre short still fits. */
export function tooTight(passage: Pick<Passage, 'widthMm' | 'heightMm'>, machine: MachineShape): Lack | null {
  if (passage.widthMm < machine.passageMm - BIAS_MM) return { needsMm: machine.passageMm, what: 'width' };
  if (passage.heightMm !== null && passage.heightMm < machine.heightMm)
    return { needsMm: machine.heightMm, what: 'height' };
  return null;
}

type Entrance = FloorShape['entrances'][number];

/** The passage that makes an entrance useless for a machine: its own size, or the doorway it stands in. */
export function blockedEntrance(
  entrance: Entrance,
  machine: MachineShape,
  ways: readonly Way[],
): (Lack & { readonly passage: Passage }) | null {
  const own = { id: entrance.id, widthMm: entrance.widthMm ?? Infinity, heightMm: entrance.heightMm };
  for (const passage of [own, ...ways.filter((way) => standsIn(entrance.at, way)).map((way) => way.passage)]) {
    const why = tooTight(passage, machine);
    if (why) return { passage, ...why };
  }
  return null;
}

function standsIn(at: Point, way: Way): boolean {
  const box = grownBox(boxOf(way.ring), ON_EDGE_MM);
  const isNear = at[0] >= box.minX && at[0] <= box.maxX && at[1] >= box.minY && at[1] <= box.maxY;
  return isNear && (ringContains(way.ring, at) || isNearRing(at, way));
}

function isNearRing(at: Point, way: Way): boolean {
  return way.ring.some((a, i) => nearestOnSegment(at, a, corner(way.ring, i + 1)).distance <= ON_EDGE_MM);
}
