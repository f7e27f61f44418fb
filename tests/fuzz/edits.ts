import type { FaceKind, FloorShape, Point, Ring } from '../../src/geometry/floorShape.ts';
import { column } from '../support/floors.ts';
import type { Dice } from './dice.ts';
import { type Numbers, freshMemory, measured } from './engine.ts';
import { numbersIn } from './laws.ts';
import { latticeBox, line } from './shapes.ts';

/** A small change as a hand makes it; records that it leaves alone stay the same objects. Null where there is nothing of the kind. */
type Edit = (shape: FloorShape, dice: Dice) => FloorShape | null;

/** The list with one of its records changed. */
function withOne<T>(list: readonly T[], dice: Dice, change: (one: T) => T): T[] | null {
  if (list.length === 0) return null;
  const at = dice.whole(0, list.length - 1);
  return list.map((one, i) => (i === at ? change(one) : one));
}

function cornerMoved(ring: Ring, dice: Dice): Ring {
  const by: Point = dice.chance(0.5)
    ? [dice.step(-500, 500), dice.step(-500, 500)]
    : [dice.tiny(-3, 3), dice.tiny(-3, 3)];
  return withOne(ring, dice, ([x, y]): Point => [x + by[0], y + by[1]]) ?? ring;
}

function allMoved(ring: Ring, dice: Dice): Ring {
  const [dx, dy] = [dice.step(-800, 800), dice.step(-800, 800)];
  return ring.map(([x, y]): Point => [x + dx, y + dy]);
}

const crackPoint: Edit = (shape, dice) => {
  const lines = withOne(shape.lines, dice, (one) => ({ ...one, path: cornerMoved(one.path, dice) }));
  return lines && { ...shape, lines };
};
const moveColumn: Edit = (shape, dice) => {
  const solids = withOne(shape.solids, dice, (one) => ({ ...one, ring: allMoved(one.ring, dice) }));
  return solids && { ...shape, solids };
};
const columnCorner: Edit = (shape, dice) => {
  const solids = withOne(shape.solids, dice, (one) => ({ ...one, ring: cornerMoved(one.ring, dice) }));
  return solids && { ...shape, solids };
};
const slabCorner: Edit = (shape, dice) => {
  const slabs = withOne(shape.slabs, dice, (one) => ({ ...one, ring: cornerMoved(one.ring, dice) }));
  return slabs && { ...shape, slabs };
};
const edgeKind: Edit = (shape, dice) => {
  const kind = dice.pick<FaceKind>(['wall', 'run', 'stop', 'drop']);
  const slabs = withOne(shape.slabs, dice, (one) => ({ ...one, faces: withOne(one.faces, dice, () => kind) ?? [] }));
  return slabs && { ...shape, slabs };
};
const zoneCorner: Edit = (shape, dice) => {
  const zones = withOne(shape.zones, dice, (one) => ({ ...one, ring: cornerMoved(one.ring, dice) }));
  return zones && { ...shape, zones };
};
const findingCorner: Edit = (shape, dice) => {
  const findings = withOne(shape.findings, dice, (one) => ({ ...one, ring: cornerMoved(one.ring, dice) }));
  return findings && { ...shape, findings };
};
const moveGap: Edit = (shape, dice) => {
  const walls = withOne(shape.walls, dice, (one) => ({
    ...one,
    gaps: withOne(one.gaps, dice, (gap) => ({ ...gap, ring: allMoved(gap.ring, dice) })) ?? [],
  }));
  return walls && { ...shape, walls };
};
const moveEntrance: Edit = (shape, dice) => {
  const entrances = withOne(shape.entrances, dice, (one) => ({ ...one, at: allMoved([one.at], dice)[0] ?? one.at }));
  return entrances && { ...shape, entrances };
};
const zoneCrew: Edit = (shape, dice) => {
  const machine = dice.pick([null, 'm0', 'm1']);
  const zones = withOne(shape.zones, dice, ({ followedBy: _gone, ...one }) => ({ ...one, machine }));
  return zones && { ...shape, zones };
};
const machineSize: Edit = (shape, dice) => {
  const machines = withOne(shape.machines, dice, (one) => ({ ...one, lapMm: one.lapMm + dice.step(0, 50, 5) }));
  return machines && { ...shape, machines };
};
const addColumn: Edit = (shape, dice) => {
  const more = column(`new${shape.solids.length}`, dice.step(0, 8_000), dice.step(0, 8_000), dice.step(50, 900));
  return { ...shape, solids: [...shape.solids, more] };
};
const addZone: Edit = (shape, dice) => ({
  ...shape,
  zones: [
    ...shape.zones,
    { id: `new${shape.zones.length}`, ring: latticeBox(dice, 500, 5_000), machine: shape.restMachine },
  ],
});
const addCrack: Edit = (shape, dice) => ({
  ...shape,
  lines: [...shape.lines, { id: `new${shape.lines.length}`, path: line(dice) }],
});
const remove: Edit = (shape, dice) => {
  const key = dice.pick(['solids', 'zones', 'findings', 'lines', 'walls', 'entrances', 'slabs'] as const);
  return shape[key].length > 0 ? { ...shape, [key]: shape[key].slice(1) } : null;
};

const EDITS: readonly [Edit, ...Edit[]] = [
  crackPoint,
  moveColumn,
  columnCorner,
  slabCorner,
  edgeKind,
  zoneCorner,
  findingCorner,
  moveGap,
  moveEntrance,
  zoneCrew,
  machineSize,
  addColumn,
  addZone,
  addCrack,
  remove,
];

/**
 * Incremental is fresh: after each of a few edits, and after going back to the start, the engine that remembers
 * answers bit for bit what the one without memory does, `fresh` for the start. Answers the first number that is not the
 * same, or null.
 */
export function memoryFault(start: FloorShape, fresh: Numbers, dice: Dice): string | null {
  const memory = freshMemory();
  measured(start, memory);
  let shape = start;
  const steps = dice.whole(1, 3);
  for (let i = 0; i <= steps; i += 1) {
    const edit = dice.pick(EDITS);
    shape = i === steps ? start : (edit(shape, dice) ?? shape);
    const right = i === steps ? fresh : measured(shape);
    const fault = firstOtherBit(numbersIn(measured(shape, memory)), numbersIn(right));
    if (fault) return `after ${i === steps ? 'going back' : `edit ${i}, ${edit.name}`}: ${fault}`;
  }
  return null;
}

type Named = readonly (readonly [string, number])[];

/** By name: in which order records are told says nothing. */
function firstOtherBit(remembered: Named, fresh: Named): string | null {
  const kept = new Map(remembered);
  const other = fresh.find(([name, value]) => !Object.is(kept.get(name), value));
  if (other) return `${other.join(' ')} fresh, ${kept.get(other[0])} remembered`;
  const known = new Map(fresh);
  const extra = remembered.find(([name]) => !known.has(name));
  return extra ? `${extra.join(' ')} remembered, not there fresh` : null;
}
