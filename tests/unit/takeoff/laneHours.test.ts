import { describe, expect, test } from 'vitest';
import type { Doc } from '../../../src/model/doc.ts';
import type { LanePlan } from '../../../src/geometry/lanes/lane.ts';
import { lanePlan } from '../../../src/geometry/lanes/lanePlan.ts';
import { defaultMachine } from '../../../src/takeoff/fleet.ts';
import { evaluate } from '../../../src/takeoff/formula.ts';
import { laneAsks, laneHours, type LaneAsk } from '../../../src/takeoff/laneHours.ts';
import type { Line } from '../../../src/takeoff/line.ts';
import type { Takeoff } from '../../../src/takeoff/port.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import {
  docOf,
  findingCells,
  FLOOR,
  jobCells,
  record,
  recipeCells,
  rectangle,
  restCells,
  set,
  slabCells,
  withCells,
} from '../../support/jobPlans.ts';

/** A hall of about 21 x 21 m: the open room that rates speak of. Strip 100 mm, so the field is 0.2 m less. */
const hall = docOf(jobCells(), slabCells(rectangle(21_200, 21_200)));

interface Opinion {
  readonly all: Takeoff;
  readonly ask: LaneAsk;
  readonly plan: LanePlan;
  readonly lanes: Line;
  readonly rate: Line;
}

function opinionOf(doc: Doc): Opinion {
  const all = takeoff(doc, FLOOR);
  const [ask] = laneAsks(doc, all, 'rest');
  const plan = ask ? lanePlan(ask.field, ask.job) : null;
  const lanes = ask && plan ? laneHours(doc, all, ask, plan) : null;
  const rate = all.lines.find((line) => line.key === ask?.hours);
  if (!ask || !plan || !lanes || !rate) throw new Error('no lanes');
  return { all, ask, plan, lanes, rate };
}

describe('hours by lanes', () => {
  test('of an open hall are those of the rate, but for the first turn and the move to it', () => {
    const { plan, lanes, rate, ask } = opinionOf(hall);
    // 21 m / (0.5 m x 0.9) = 46.7: 47 lanes of 21 m, 46 turns, one run.
    expect(ask.job.usefulWidthMm).toBeCloseTo(450, 9);
    expect(plan).toMatchObject({ lanes: 47, turns: 46, runs: 1 });
    const field = 21 * 21;
    // Twice over, 25 m2/h on medium concrete; turns 0.3 min, moves 1 min: common practice, no source.
    const byHand = 2 * ((47 * 21 * 0.45) / 25 + ((46 - 47) * 0.3) / 60 + 1 / 60);
    expect(lanes.quantity.likely).toBeCloseTo(byHand, 6);
    expect(rate.quantity.likely).toBeCloseTo((2 * field) / 25, 1);
    expect(lanes.quantity.likely / rate.quantity.likely).toBeCloseTo(1, 1);
  });

  test('travel as fast as the rate says once its own turns are taken out', () => {
    const { ask } = opinionOf(hall);
    const { speedMmPerS, turnS } = ask.job;
    // A lane of 21 m and its turn finish 21 x 0.45 m2.
    const secondsALane = 21_000 / speedMmPerS + turnS;
    expect((21 * 0.45 * 3600) / secondsALane).toBeCloseTo(25, 9);
  });

  test('come out of their own terms, case by case, and name only what they use', () => {
    const { lanes } = opinionOf(hall);
    expect(evaluate(lanes.working.formula, lanes.working.terms)).toEqual(lanes.quantity);
    expect(lanes.quantity.low).toBeLessThan(lanes.quantity.likely);
    expect(lanes.quantity.likely).toBeLessThan(lanes.quantity.high);
    const used = JSON.stringify(lanes.working.formula);
    for (const { name } of lanes.working.terms) expect(used).toContain(JSON.stringify(name));
  });

  test('columns make runs, turns and moves, and so more hours', () => {
    const columns = Array.from({ length: 16 }, (_, i) =>
      record(`obstruction:b${i}`, {
        floor: FLOOR,
        tag: `B${i}`,
        kind: 'column',
        shape: {
          form: 'rectangle',
          at: [4_000 + (i % 4) * 4_400, 4_000 + Math.floor(i / 4) * 4_400],
          widthMm: 400,
          depthMm: 400,
          turnDeg: 0,
        },
        under: 'none',
      }),
    );
    const [open, full] = [opinionOf(hall), opinionOf(withCells(hall, ...columns))];
    expect(full.plan.runs).toBeGreaterThan(20);
    expect(full.lanes.quantity.likely - open.lanes.quantity.likely).toBeGreaterThan(0.3);
  });

  test('hard concrete and a finding slow them as they slow the rate', () => {
    const hard = opinionOf(withCells(hall, restCells({ hardness: 'hard' })));
    const soft = opinionOf(hall);
    expect(hard.ask.job.speedMmPerS).toBeLessThan(soft.ask.job.speedMmPerS);
    const clear = { result: 'clear', on: '2030-01-01', by: 'Tester' } as const;
    const paint = findingCells('finding:F1', 'paint', rectangle(2_000, 2_000, [4_000, 3_000]), {
      thicknessMm: 0.4,
      leadTest: clear,
    });
    const painted = opinionOf(withCells(hall, paint));
    // 4 m2 at half the rate, twice over.
    expect(painted.lanes.quantity.likely - soft.lanes.quantity.likely).toBeCloseTo((2 * 4) / 25, 6);
  });

  test('a ride-on backs out of an aisle that its turning circle does not fit', () => {
    const ride = defaultMachine('grinder_ride');
    if (!ride) throw new Error('no machine');
    const aisle = docOf(
      jobCells(),
      slabCells(rectangle(30_000, 2_600)),
      record('machine:ride', ride),
      recipeCells('a', { method: 'grinder_ride', machine: 'machine:ride' }),
      restCells({ recipe: 'recipe:a' }),
    );
    const { plan, lanes } = opinionOf(aisle);
    expect(plan.turns).toBeGreaterThan(0);
    expect(plan.backingTurns).toBe(plan.turns);
    expect(lanes.working.terms.map(({ name }) => name)).toContain('turns again, where it backs out');
  });

  test('are in no sum: the takeoff has no line of them', () => {
    expect(takeoff(hall, FLOOR).lines.filter(({ code }) => code === 'hours.lanes')).toEqual([]);
  });
});

describe('a machine that follows', () => {
  const large = defaultMachine('grinder_large');
  const small = defaultMachine('grinder_small');
  if (!large || !small) throw new Error('no machine');
  const followed = docOf(
    jobCells(),
    slabCells(rectangle(12_000, 8_000)),
    record('machine:large', large),
    record('machine:small', small),
    recipeCells('a', { method: 'grinder_large', machine: 'machine:large' }),
    set('recipe:a', 'followedBy', ['machine:small']),
    restCells({ recipe: 'recipe:a' }),
  );

  test('has lanes of its own in its own field, as wide as its own cut, and they answer its own line', () => {
    const all = takeoff(followed, FLOOR);
    const regions = { 'machine:large': rectangle(11_000, 6_000), 'machine:small': rectangle(2_000, 1_000) };
    const fields = Object.entries(regions).map(([machine, ring]) => ({ machine, areaM2: 1, region: [[ring]] }));
    const zones = all.measure.zones.map((zone) => ({ ...zone, fields }));
    const asks = laneAsks(followed, { ...all, measure: { ...all.measure, zones } }, 'rest');
    expect(asks.map(({ hours }) => hours)).toEqual([
      'hours.machine|rest|pass:a',
      'hours.machine|rest|pass:a|machine:small',
    ]);
    // The very outlines of the measure: lanes are remembered by them, for the list and for the plan.
    expect(asks.map(({ field }, i) => field === fields[i]?.region)).toEqual([true, true]);
    expect(asks.map(({ machineName }) => machineName)).toEqual([large.name, small.name]);
    expect(asks.map(({ job }) => job.usefulWidthMm)).toEqual([0.9 * large.cutWidthMm, 0.9 * small.cutWidthMm]);
  });

  test('has none where the engine does not say what it works', () => {
    const all = takeoff(followed, FLOOR);
    const zones = all.measure.zones.map(({ fields: _fields, ...zone }) => zone);
    const asks = laneAsks(followed, { ...all, measure: { ...all.measure, zones } }, 'rest');
    expect(asks.map(({ field }) => field.length > 0)).toEqual([true, false]);
  });
});

describe('no second opinion', () => {
  test('while a hold stands', () => {
    const held = withCells(hall, findingCells('finding:F1', 'paint', rectangle(2_000, 2_000, [4_000, 3_000])));
    const all = takeoff(held, FLOOR);
    expect(all.holds).not.toEqual([]);
    expect(laneAsks(held, all, 'rest')).toEqual([]);
  });

  test('of work by hand, and of a zone that is gone', () => {
    const hand = withCells(
      hall,
      recipeCells('a', { method: 'hand_grinder', machine: null }),
      restCells({ recipe: 'recipe:a' }),
    );
    expect(laneAsks(hand, takeoff(hand, FLOOR), 'rest')).toEqual([]);
    expect(laneAsks(hall, takeoff(hall, FLOOR), 'zone:gone')).toEqual([]);
  });
});
