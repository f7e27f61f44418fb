import { type FloorShape, type MachineShape, type Point, REST, type ZoneShape } from '../../src/geometry/floorShape.ts';
import { turned } from '../support/floors.ts';
import { mapped } from '../support/randomFloors.ts';
import { type Dice, diceOf } from './dice.ts';
import type { Drawn } from './drawn.ts';
import { FAMILIES, type FamilyName } from './families.ts';
import { latticeBox, line, patches } from './shapes.ts';

/**
 * The plan of a family and a seed: always the same one, so a failure is one line to write down. Some are on the plan's
 * grid, some turned, far from the origin or shaken: raw floats, as the engine must take them.
 */
export function planOf(family: FamilyName, seed: number): FloorShape {
  const dice = diceOf(family, seed);
  const drawn = FAMILIES[family](dice);
  const shape = staffed(dice, furnished(dice, drawn));
  const place = placement(dice);
  return place ? mapped(shape, place) : shape;
}

/** What the family did not draw, now and then. */
function furnished(dice: Dice, drawn: Drawn): Drawn {
  const some = dice.chance(0.4);
  return {
    ...drawn,
    zones:
      drawn.zones ??
      (some
        ? patches(
            'z',
            dice.many(1, 2, () => latticeBox(dice, 1_000, 8_000)),
          )
        : []),
    findings:
      drawn.findings ??
      (some
        ? patches(
            'f',
            dice.many(0, 2, () => latticeBox(dice, 500, 4_000)),
          )
        : []),
    lines: drawn.lines ?? (some ? dice.many(1, 3, (i) => ({ id: `c${i}`, path: line(dice) })) : []),
    entrances:
      drawn.entrances ??
      (dice.chance(0.3)
        ? [{ id: 'e0', at: [dice.step(100, 3_000), dice.step(100, 3_000)], widthMm: null, heightMm: null }]
        : []),
  };
}

/** One to three machines, biggest first, and who works where. */
function staffed(dice: Dice, drawn: Drawn): FloorShape {
  const machines = dice
    .many(1, dice.pick([1, 1, 2, 3]), (i) => machineOf(dice, `m${i}`))
    .toSorted((a, b) => b.headRadiusMm - a.headRadiusMm);
  const ids = machines.map((machine) => machine.id);
  const crew = (): Pick<ZoneShape, 'machine' | 'followedBy'> => {
    if (dice.chance(0.15)) return { machine: null };
    const first = dice.chance(0.7) ? 0 : dice.whole(0, ids.length - 1);
    const after = dice.chance(0.5) ? ids.slice(first + 1) : [];
    return { machine: ids[first] ?? null, ...(after.length > 0 ? { followedBy: after } : {}) };
  };
  const rest = crew();
  return {
    walls: [],
    solids: [],
    outOfScope: [],
    findings: [],
    lines: [],
    entrances: [],
    restMachine: rest.machine,
    ...(rest.followedBy ? { restFollowedBy: rest.followedBy } : {}),
    ...drawn,
    machines,
    zones: (drawn.zones ?? []).map((zone) => ({ ...zone, ...crew() })),
  };
}

function machineOf(dice: Dice, id: string): MachineShape {
  const isOdd = dice.chance(0.12);
  const headRadiusMm = isOdd
    ? dice.pick([0, 1e-6, 0.01, 1, 3_000, 20_000])
    : dice.pick([62.5, 125, 200, 250, 300, 400]);
  const all = isOdd ? dice.pick([0, 1e-6, 700]) : dice.pick([0, 25, 50, 50, 75, 100]);
  const own = (usual: number): number => (dice.chance(0.6) ? all : usual);
  const clearanceMm = {
    wall: all,
    obstruction: own(dice.pick([25, 60])),
    drop: own(dice.pick([150, 300, 600])),
    stop: all,
  };
  const needs = 2 * (headRadiusMm + clearanceMm.wall);
  return {
    id,
    headRadiusMm,
    clearanceMm,
    lapMm: dice.pick([0, 0, 25, 50, 100]),
    passageMm: dice.chance(0.3) ? Math.max(needs, dice.step(300, 1_200)) : needs,
    heightMm: dice.pick([900, 1_200]),
    ...(dice.chance(0.3) ? { turningRadiusMm: dice.step(300, 2_000) } : {}),
  };
}

/** Where the plan is put, or null for just as drawn. */
function placement(dice: Dice): ((at: Point) => Point) | null {
  const kind = dice.whole(0, 9);
  const angle = dice.pick([Math.PI / 4, Math.PI / 6, dice.between(0, 7), dice.tiny(-9, -3)]);
  const away: Point = [dice.tiny(6, 7), dice.tiny(6, 7)];
  if (kind === 0) return (at) => turned(at, angle);
  if (kind === 1) return ([x, y]) => [x + away[0], y + away[1]];
  if (kind === 2) return ([x, y]) => [x + dice.between(-1e-9, 1e-9), y + dice.between(-1e-9, 1e-9)];
  if (kind === 3) return ([x, y]) => [x * 1.0137 + 0.1, y * 1.0171 - 0.7];
  if (kind === 4) {
    return (at) => {
      const [x, y] = turned(at, angle);
      return [x + away[0], y + away[1]];
    };
  }
  return null;
}

/** Every id that a fault may name. */
export function recordsOf(shape: FloorShape): ReadonlySet<string> {
  return new Set([
    REST,
    ...shape.slabs.flatMap(({ id, passages }) => [id, ...passages.flatMap((passage) => passage?.id ?? [])]),
    ...shape.walls.flatMap(({ id, gaps }) => [id, ...gaps.map(({ passage }) => passage.id)]),
    ...[
      shape.solids,
      shape.outOfScope,
      shape.zones,
      shape.findings,
      shape.lines,
      shape.machines,
      shape.entrances,
    ].flatMap((list) => list.map(({ id }) => id)),
  ]);
}
