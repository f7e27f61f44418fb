import type {
  FaceKind,
  FloorShape,
  LineShape,
  MachineShape,
  Passage,
  PatchShape,
  Ring,
  SlabShape,
  SolidShape,
  WallShape,
  ZoneShape,
} from '../geometry/floorShape.ts';
import { formRing } from '../geometry/formRing.ts';
import { corner } from '../geometry/ring.ts';
import { distance } from '../geometry/point.ts';
import { onFloor, recordsOf, type Doc, type Held } from '../model/doc.ts';
import { grouped } from './grouped.ts';
import { keptIfSame, keptList, keptOf, keptOfTwo } from './keptShapes.ts';
import type { Machine } from '../model/records/machine.ts';
import type { Edge } from '../model/records/slab.ts';
import { cascadeOf, prepOfFloor, type PlannedMachine, type ZonePrep } from './prep.ts';
import { gapRing, wallBodies } from './wallBody.ts';

/**
 * What the geometry engine is told about one floor of a job: rings and lines in mm, with the ids of the records they
 * come from. What lies under an obstruction decides how it counts:
 *   none, outOfScope   taken off the net floor, its faces are hard (something stands there either way)
 *   byHand             the same for the machine; its area is counted apart as hand area (takeoff/spotLines.ts)
 *   clearedBefore      floor like any other
 * A flight of steps is taken off too and its faces are hard: its treads are counted (takeoff/stepsLines.ts).
 *
 * A record that has not changed gives the very same shape again, a list of such records the very same list, and a plan
 * of which nothing that can be measured has changed the very same answer.
 */
export function planShape(doc: Doc, floor: string): FloorShape {
  const preps = prepOfFloor(doc, floor);
  const drawn = preps.filter((prep) => prep.zone !== 'rest');
  const rest = preps.find((prep) => prep.zone === 'rest');
  const slabs = slabShapes(onFloor(doc, 'slab', floor));
  return sameFloor(slabs, {
    slabs,
    walls: wallsOf(onFloor(doc, 'wall', floor), recordsOf(doc, 'opening')),
    solids: solidsOf(onFloor(doc, 'obstruction', floor), onFloor(doc, 'steps', floor)),
    outOfScope: patchShapes(onFloor(doc, 'outOfScope', floor)),
    zones: drawn.flatMap((prep) => zoneShape(prep)),
    restMachine: rest?.machine?.id ?? null,
    ...(rest && rest.followers.length > 0 ? { restFollowedBy: rest.followers.map(({ id }) => id) } : {}),
    findings: patchShapes(onFloor(doc, 'finding', floor)),
    lines: linesOf(onFloor(doc, 'crack', floor), onFloor(doc, 'joint', floor)),
    machines: machineShapes(preps),
    entrances: entranceShapes(onFloor(doc, 'entrance', floor)),
  });
}

const sameFloor = keptIfSame<FloorShape>();

const slabShapes = keptList(slabShape);
const solidShapes = keptList(solidShape);
const flightShapes = keptList((steps: Held<'steps'>) => ({ id: steps.id, ring: steps.ring, solid: true }));
const solidsOf = keptOfTwo((obstructions: readonly Held<'obstruction'>[], steps: readonly Held<'steps'>[]) =>
  steps.length === 0 ? solidShapes(obstructions) : [...solidShapes(obstructions), ...flightShapes(steps)],
);
const patchShapes = keptList(patchShape);
const lineShapes = keptList(lineShape);
const entranceShapes = keptList(({ id, at, widthMm, heightMm }: Held<'entrance'>) => ({ id, at, widthMm, heightMm }));

/** How an edge of a slab meets a machine: open edges run on and doorways stop, unless said otherwise. */
export function faceOf(edge: Edge): Exclude<FaceKind, 'obstruction'> {
  switch (edge.kind) {
    case 'wall':
      return 'wall';
    case 'drop':
      return 'drop';
    case 'open':
      return edge.beyond ?? 'run';
    case 'doorway':
      return edge.beyond ?? 'stop';
  }
}

/** Name under which a doorway in a slab's outline comes back from the engine. */
export function doorwayId(slab: string, edge: number): string {
  return `${slab}#${edge}`;
}

function slabShape(slab: Held<'slab'>): SlabShape {
  const ring: Ring = slab.outline.map(({ x, y }) => [x, y]);
  return {
    id: slab.id,
    ring,
    faces: slab.outline.map(({ edge }) => faceOf(edge)),
    passages: slab.outline.map(({ edge }, i): Passage | null =>
      edge.kind === 'doorway'
        ? {
            id: doorwayId(slab.id, i),
            widthMm: distance(corner(ring, i), corner(ring, i + 1)),
            heightMm: edge.heightMm ? edge.heightMm : null,
          }
        : null,
    ),
  };
}

/** A wall with what is let into it. */
interface WalledIn {
  readonly wall: Held<'wall'>;
  readonly openings: readonly Held<'opening'>[];
}

const openingsByWall = keptOf((openings: readonly Held<'opening'>[]) => grouped(openings, (opening) => opening.wall));
const sameWall = keptIfSame<WalledIn>();
const wallShapesOf = keptOf(wallShapes);
const wallsOf = keptOfTwo((walls: readonly Held<'wall'>[], openings: readonly Held<'opening'>[]): WallShape[] => {
  const byWall = openingsByWall(openings);
  return walls.flatMap((wall) => wallShapesOf(sameWall(wall, { wall, openings: byWall.get(wall.id) ?? [] })));
});

function wallShapes({ wall, openings }: WalledIn): WallShape[] {
  const gaps = openings.flatMap(({ id, atMm, widthMm, heightMm }) => {
    const ring = gapRing(wall.path, wall.thicknessMm, atMm, atMm + widthMm);
    return ring ? [{ passage: { id, widthMm, heightMm }, ring }] : [];
  });
  return wallBodies(wall.path, wall.thicknessMm).map((body) => ({ id: wall.id, body, gaps }));
}

function solidShape(obstruction: Held<'obstruction'>): SolidShape {
  return {
    id: obstruction.id,
    ring: formRing(obstruction.shape),
    solid: obstruction.under !== 'clearedBefore',
  };
}

function patchShape(record: { readonly id: string; readonly ring: Ring }): PatchShape {
  return { id: record.id, ring: record.ring };
}

function lineShape(record: { readonly id: string; readonly path: Ring }): LineShape {
  return { id: record.id, path: record.path };
}

const linesOf = keptOfTwo((cracks: readonly Held<'crack'>[], joints: readonly Held<'joint'>[]): LineShape[] => [
  ...lineShapes(cracks),
  ...lineShapes(joints),
]);

const sameZone = keptIfSame<ZoneShape>();

function zoneShape({ zone, record, machine, followers }: ZonePrep): FloorShape['zones'] {
  const ring = record?.ring;
  if (!record || !ring) return [];
  const followedBy = followers.map(({ id }) => id);
  const shape = { id: zone, ring, machine: machine?.id ?? null, ...(followedBy.length > 0 ? { followedBy } : {}) };
  return [sameZone(record, shape)];
}

function machineShapes(preps: readonly ZonePrep[]): MachineShape[] {
  const used = new Map<string, PlannedMachine>();
  for (const machine of preps.flatMap(cascadeOf)) used.set(machine.id, machine);
  return [...used.values()].map(machineShape);
}

const machineShape = keptOf((machine: PlannedMachine): MachineShape => ({
  id: machine.id,
  headRadiusMm: machine.cutWidthMm / 2,
  clearanceMm: machine.clearanceMm,
  lapMm: machine.lapMm,
  passageMm: passageMm(machine),
  heightMm: machine.heightMm,
  // The record has the room it needs to turn, across: the circle's diameter.
  ...(machine.turningMm > 0 ? { turningRadiusMm: machine.turningMm / 2 } : {}),
}));

/** Least clear width that a machine passes, mm: its head with the clearance on both sides, its body, the book's opening. */
export function passageMm(machine: Machine): number {
  const head = machine.cutWidthMm + 2 * machine.clearanceMm.wall;
  return Math.max(head, machine.bodyWidthMm, machine.smallestOpeningMm);
}
