import type { FloorShape, MachineShape } from '../../src/geometry/floorShape.ts';
import { column } from '../support/floors.ts';
import { apart, partsOfFloor, slackOf, sum } from './laws.ts';
import type { Dice } from './dice.ts';
import type { Numbers, ZoneNumbers } from './engine.ts';
import { FACE_M, FACE_SHARE, LENGTH_SHARE, NOTHING_M, SAME_SHARE } from './tolerances.ts';

/**
 * More of one is never more, or never less, of another. `prepare` makes the floor that the law speaks of, `change`
 * what there is more of, `fault` looks at both answers.
 */
interface Growth {
  readonly prepare: (shape: FloorShape) => FloorShape;
  readonly change: (shape: FloorShape, dice: Dice) => FloorShape;
  readonly fault: (before: Numbers, after: Numbers) => string | null;
}

/** With an entrance the piece nearest to it may be another one for a wider machine; with none all count. A cascade's field is of all its machines. */
const soleMachine = (shape: FloorShape): FloorShape => {
  const { restFollowedBy: _gone, ...rest } = shape;
  const zones = shape.zones.map(({ followedBy: _followers, ...zone }) => zone);
  return { ...rest, zones, entrances: [] };
};

function withMachines(shape: FloorShape, change: (one: MachineShape) => MachineShape): FloorShape {
  return { ...shape, machines: shape.machines.map(change) };
}

function fieldNotUp(before: Numbers, after: Numbers): string | null {
  const slackM2 = slackOf(before, SAME_SHARE);
  for (const zone of before.zones) {
    const later = after.zones.find((one) => one.id === zone.id);
    if (!later) return `zone ${zone.id} is gone`;
    if (later.fieldM2 > zone.fieldM2 + slackM2) return `${zone.id}: field ${zone.fieldM2} grew to ${later.fieldM2}`;
  }
  return null;
}

/** Every passage wide and high enough for any machine. */
function openPassages(shape: FloorShape): FloorShape {
  return {
    ...shape,
    slabs: shape.slabs.map((slab) => ({ ...slab, passages: slab.passages.map(() => null) })),
    walls: shape.walls.map((wall) => ({
      ...wall,
      gaps: wall.gaps.map((gap) => ({ ...gap, passage: { ...gap.passage, widthMm: 1e6, heightMm: null } })),
    })),
  };
}

const widerHead: Growth = {
  // With passages open: into a closed one a head works from where its middle has to stop, and a wider one works more of it.
  prepare: (shape) => openPassages(soleMachine(shape)),
  change: (shape, dice) => {
    const by = dice.pick([1e-3, 5, 50, 200]);
    return withMachines(shape, (one) => ({
      ...one,
      headRadiusMm: one.headRadiusMm + by,
      passageMm: one.passageMm + 2 * by,
    }));
  },
  fault: fieldNotUp,
};

const furtherOff: Growth = {
  prepare: soleMachine,
  change: (shape, dice) => {
    const by = dice.pick([1e-3, 5, 50, 200]);
    return withMachines(shape, (one) => {
      const { wall, obstruction, drop, stop } = one.clearanceMm;
      const clearanceMm = { wall: wall + by, obstruction: obstruction + by, drop: drop + by, stop: stop + by };
      return { ...one, clearanceMm, passageMm: one.passageMm + 2 * by };
    });
  },
  fault: fieldNotUp,
};

/** A strip wider than this, in mm, is hand area. */
const WIDEST_STRIP_MM = 400;

const moreLap: Growth = {
  // Without drops, whose bands may grow past the widest strip and become hand area.
  prepare: (shape) =>
    withMachines(shape, (one) => ({
      ...one,
      clearanceMm: {
        wall: Math.min(one.clearanceMm.wall, 100),
        obstruction: Math.min(one.clearanceMm.obstruction, 100),
        drop: Math.min(one.clearanceMm.drop, 100),
        stop: Math.min(one.clearanceMm.stop, 100),
      },
    })),
  change: (shape, dice) => {
    const by = dice.pick([1e-3, 1, 20, WIDEST_STRIP_MM - 250]);
    return withMachines(shape, (one) => ({ ...one, lapMm: one.lapMm + by }));
  },
  fault: (before, after) => {
    const [was, is] = [partsOfFloor(before), partsOfFloor(after)];
    const slackM2 = slackOf(before, SAME_SHARE);
    if (is.stripM2 < was.stripM2 - slackM2) return `strip ${was.stripM2} shrank to ${is.stripM2}`;
    if (is.fieldM2 > was.fieldM2 + slackM2) return `field ${was.fieldM2} grew to ${is.fieldM2}`;
    return null;
  },
};

const oneMoreColumn: Growth = {
  prepare: (shape) => shape,
  change: (shape, dice) => {
    const [[x, y] = [0, 0]] = shape.slabs[0]?.ring ?? [];
    const more = column('more', x + dice.step(-500, 5_000), y + dice.step(-500, 5_000), dice.step(100, 1_500));
    return { ...shape, solids: [...shape.solids, more] };
  },
  fault: (before, after) =>
    after.netM2 > before.netM2 + slackOf(before, SAME_SHARE) ? `net ${before.netM2} grew to ${after.netM2}` : null,
};

/** Zones cut nothing off: areas and lengths of the floor are what they are without. */
const zonesGone: Growth = {
  prepare: (shape) => shape,
  change: (shape) => ({ ...shape, zones: [] }),
  fault: (before, after) =>
    apart('net', before.netM2, after.netM2, slackOf(before, SAME_SHARE)) ??
    sameTogether(
      'line',
      before,
      after,
      (zone) => zone.lengthM,
      (total) => LENGTH_SHARE * total + NOTHING_M,
    ) ??
    sameTogether(
      'finding',
      before,
      after,
      (zone) => zone.findingM2,
      () => slackOf(before, SAME_SHARE),
    ) ??
    apart('faces', facesM(before), facesM(after), FACE_SHARE * facesM(before) + FACE_M),
};

/** The same crew everywhere, with nothing on the floor's plan that bars it. */
function everywhere(shape: FloorShape, machine: MachineShape): FloorShape {
  const bare = openPassages(soleMachine(shape));
  return {
    ...bare,
    zones: bare.zones.map((zone) => ({ ...zone, machine: machine.id })),
    restMachine: machine.id,
    machines: [machine],
  };
}

const NO_CLEARANCE = { wall: 0, obstruction: 0, drop: 0, stop: 0 };

function bareMachine(headRadiusMm: number): MachineShape {
  return { id: 'bare', headRadiusMm, clearanceMm: NO_CLEARANCE, lapMm: 0, passageMm: 2 * headRadiusMm, heightMm: 0 };
}

/** A head of no size that is kept off nothing: all floor is field. */
const pointMachine: Growth = {
  prepare: (shape) => everywhere(shape, bareMachine(0)),
  change: (shape) => shape,
  fault: (before) => apart('field of a point', partsOfFloor(before).fieldM2, before.netM2, slackOf(before, SAME_SHARE)),
};

/** No clearance and no lap: no strip at all. */
const noClearance: Growth = {
  prepare: (shape) => everywhere(shape, bareMachine(250)),
  change: (shape) => shape,
  fault: (before) =>
    partsOfFloor(before).stripM2 === 0 ? null : `strip ${partsOfFloor(before).stripM2} without clearance`,
};

function facesM(measure: Numbers): number {
  return sum(measure.zones, ({ faces }) => faces.wall + faces.obstruction + faces.drop + faces.stop + faces.hidden);
}

function sameTogether(
  what: string,
  before: Numbers,
  after: Numbers,
  of: (zone: ZoneNumbers) => Readonly<Record<string, number>>,
  slack: (total: number) => number,
): string | null {
  const ids = new Set([...before.zones, ...after.zones].flatMap((zone) => Object.keys(of(zone))));
  for (const id of ids) {
    const [was, is] = [sum(before.zones, (zone) => of(zone)[id] ?? 0), sum(after.zones, (zone) => of(zone)[id] ?? 0)];
    const fault = apart(`${what} ${id}`, was, is, slack(was));
    if (fault) return fault;
  }
  return null;
}

export const GROWTHS = {
  widerHead,
  furtherOff,
  moreLap,
  oneMoreColumn,
  zonesGone,
  pointMachine,
  noClearance,
} as const satisfies Record<string, Growth>;
