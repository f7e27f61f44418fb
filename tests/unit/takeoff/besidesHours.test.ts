import { describe, expect, test } from 'vitest';
import type { Cell } from '../../../src/model/cell.ts';
import type { Doc } from '../../../src/model/doc.ts';
import type { RecordOf } from '../../../src/model/records/all.ts';
import type { Line } from '../../../src/takeoff/line.ts';
import { sharedMetres } from '../../../src/takeoff/lapLines.ts';
import { edgeToolsFor } from '../../../src/takeoff/profile.ts';
import { testsNeeded } from '../../../src/takeoff/rates/testCounts.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import { testCount } from '../../../src/takeoff/testCount.ts';
import { evaluate } from '../../../src/takeoff/formula.ts';
import { obstructionCells } from '../../support/hoursJobs.ts';
import {
  crackCells,
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
  zoneCells,
} from '../../support/jobPlans.ts';

/** Rates of labour and factors: common practice, no source; the arithmetic is what is checked. */
const clear = { result: 'clear', on: '2030-01-01', by: 'Tester' } as const;

function room(rest: Partial<RecordOf<'zone'>> = {}, ...cells: readonly Cell[][]): Doc {
  return docOf(jobCells(), slabCells(rectangle(12_000, 8_000)), restCells({ tests: [], ...rest }), ...cells);
}

function line(doc: Doc, code: string): Line | undefined {
  return takeoff(doc, FLOOR).lines.find((each) => each.code === code);
}

function of(doc: Doc, code: string): number {
  return line(doc, code)?.quantity.likely ?? 0;
}

function joint(fields: Partial<RecordOf<'joint'>>, id: `joint:${string}` = 'joint:a'): Cell[] {
  return record(id, {
    floor: FLOOR,
    tag: 'J1',
    path: [
      [0, 4_000],
      [12_000, 4_000],
    ],
    kind: 'control',
    treat: 'carried',
    ...fields,
  });
}

/** Cup wheels along a steel angle of 12 m that is ground as often as the edge, twice. */
function cupsOnSteel(): number {
  const steel = joint({ steelAngle: true });
  const { lines } = takeoff(room({ recipe: 'recipe:a' }, recipeCells('a', { edgeTimes: 2 }), steel), FLOOR);
  return lines.find(({ key }) => key === 'cupWear|rest|lines')?.quantity.likely ?? 0;
}

describe('before and after the floor', () => {
  test('goods: what is drawn as cleared before and what is typed, 1.5 min each m2, only if we move them', () => {
    const crate = obstructionCells('obstruction:a', 'equipment', [4_000, 3_000], 2_000, { under: 'clearedBefore' });
    expect(of(room({}, crate), 'hours.goods')).toBe(0);
    expect(of(room({ goodsBy: 'us', goodsM2: 6 }, crate), 'hours.goods')).toBeCloseTo((10 * 1.5) / 60, 9);
  });

  test('masking: 40 m of wall at 20 m/h', () => {
    expect(of(room({ maskWalls: true }), 'hours.protect')).toBeCloseTo(2, 9);
  });

  test('a mock-up takes its own area with all passes: 2 m2 x 2 / (25 x 0.6)', () => {
    expect(of(room({ mockUpM2: 2, hardness: 'hard' }), 'hours.mockUp')).toBeCloseTo(4 / 15, 9);
  });

  test('the whole crew is at it, nothing runs beside it', () => {
    const doc = room({ maskWalls: true });
    expect(of(doc, 'hours.besidesCrew')).toBeCloseTo(1, 9);
    expect(of(doc, 'hours.work')).toBeCloseTo(of(room(), 'hours.work'), 9);
    expect(of(doc, 'hours.crew')).toBeCloseTo(of(room(), 'hours.crew') + 1, 9);
    expect(of(doc, 'hours.zone')).toBeCloseTo(of(room(), 'hours.zone') + 2, 9);
  });
});

describe('tests and readings', () => {
  test.each([
    ['metric', 95, 3],
    ['metric', 100, 3],
    ['metric', 101, 4],
    ['metric', 500, 7],
    ['imperial', 400 * 0.09290304, 3],
    ['imperial', 1000 * 0.09290304, 3],
    ['imperial', 1001 * 0.09290304, 4],
    ['imperial', 2000 * 0.09290304, 4],
    ['imperial', 5400 * 0.09290304, 8],
    ['imperial', 95, 4],
  ] as const)('E06 (ASTM F2170, read second-hand): %s, %d m2: %d probes', (units, areaM2, probes) => {
    const { formula, terms } = testCount('f2170', areaM2, units);
    expect(evaluate(formula, terms).likely).toBe(probes);
  });

  test('count as the table of test counts does', () => {
    for (const units of ['metric', 'imperial'] as const) {
      for (let areaM2 = 1; areaM2 < 2_000; areaM2 += 7.3) {
        const floor = { areaM2, areaFt2: areaM2 / 0.09290304, units, zones: 1, edgeRuns: 0, methodChanges: 0 };
        for (const rule of ['f2170', 'pull', 'csp'] as const) {
          const { formula, terms } = testCount(rule, areaM2, units);
          expect(evaluate(formula, terms).likely, `${rule} ${units} ${areaM2}`).toBe(testsNeeded(rule, floor));
        }
      }
    }
  });

  test('probes are counted over the floor, however it is zoned; 15 min each', () => {
    const whole = room({ tests: ['rh'] });
    const split = withCells(whole, zoneCells('zone:a', rectangle(5_000, 8_000), { tests: ['rh'] }));
    expect([of(whole, 'tests.rh'), of(split, 'tests.rh')]).toEqual([3, 3]);
    expect(of(split, 'hours.probes')).toBeCloseTo(0.75, 9);
  });

  test('comparisons by default where a profile is asked for: 3, and 1 for the run of edge, 3 min each', () => {
    const doc = docOf(jobCells(), slabCells(rectangle(12_000, 8_000)), restCells({ csp: { min: 2, max: 3 } }));
    expect(of(doc, 'tests.csp')).toBe(4);
    expect(of(doc, 'hours.tests')).toBeCloseTo(12 / 60, 9);
    expect(of(docOf(jobCells(), slabCells(rectangle(12_000, 8_000))), 'tests.csp')).toBe(0);
  });

  test('E34 (common practice): a probe is read on day 2, and lengthens no work; waits are days and no hours', () => {
    const doc = room({ tests: ['rh'] });
    expect(of(doc, 'wait.rh')).toBe(1);
    expect(of(doc, 'calendarDays')).toBe(Math.max(2, of(doc, 'days')));
    const pull = room({ tests: ['pull'] });
    expect(line(pull, 'calendarDays')?.quantity.high).toBe((line(pull, 'days')?.quantity.high ?? 0) + 1);
  });
});

describe('joints round shot blasting', () => {
  const shot = recipeCells('shot', { method: 'shot_small', times: 1 });

  test('are closed at 60 m/h and cleared at 80 m/h, by the metres in the machine field', () => {
    const doc = room({ recipe: 'recipe:shot' }, shot, joint({}));
    // Strip of 100 mm at both ends: 11.8 m of 12.
    expect(of(doc, 'hours.jointsProtect')).toBeCloseTo(11.8 / 60, 6);
    expect(of(doc, 'hours.jointsClear')).toBeCloseTo(11.8 / 80, 6);
  });

  test('not where nothing is shot, and not where old filler closes them', () => {
    expect(of(room({}, joint({})), 'hours.jointsProtect')).toBe(0);
    expect(of(room({ recipe: 'recipe:shot' }, shot, joint({ oldFiller: true })), 'hours.jointsClear')).toBe(0);
  });

  test('old filler is sawn out before a joint is filled: 12 m at 25 m/h; not before the slab is known', () => {
    const doc = room({}, joint({ treat: 'filled', oldFiller: true }));
    expect(of(doc, 'hours.jointClean')).toBeCloseTo(12 / 25, 9);
    const unknown = withCells(doc, set('job:test', 'inSlab', { answer: 'yes' }));
    expect(of(unknown, 'hours.jointClean') + of(unknown, 'hours.jointFill')).toBe(0);
    expect(takeoff(unknown, FLOOR).holds.flatMap(({ records }) => records)).toContain('joint:a');
  });

  test('a joint that is carried through: a reservoir at 18 m/h where it is narrow, rod and sealant at 18 m/h', () => {
    const narrow = room({}, joint({ widthMm: 3 }));
    expect(of(narrow, 'hours.reservoir')).toBeCloseTo(12 / 18, 9);
    expect(of(narrow, 'hours.seal')).toBeCloseTo(12 / 18, 9);
    const wide = room({}, joint({ kind: 'isolation', widthMm: 15 }));
    expect([of(wide, 'hours.reservoir'), of(wide, 'hours.seal')]).toEqual([0, 12 / 18]);
  });

  test('what is sawn open for a sealant waits for what lies in the slab, and the hold names it', () => {
    const path = [
      [1_000, 2_000],
      [9_000, 2_000],
    ] as const;
    const unknown = withCells(
      room({}, joint({ widthMm: 3 }), joint({ kind: 'isolation', widthMm: 15 }, 'joint:b')),
      crackCells('crack:C1', path, { behaviour: 'working' }),
      set('job:test', 'inSlab', { answer: 'yes' }),
    );
    const { holds, lines } = takeoff(unknown, FLOOR);
    expect(holds.flatMap(({ records }) => records)).toEqual(['crack:C1', 'joint:a']);
    const held = lines.filter((each) => each.held === 'inSlab').map(({ code }) => code);
    expect(held).toEqual(['crack.working.ordinary', 'joint.control.carried']);
    expect(of(unknown, 'hours.reservoir')).toBe(0);
    // The isolation joint is not sawn: 12 m of it are sealed.
    expect(of(unknown, 'hours.seal')).toBeCloseTo(12 / 18, 9);
  });

  test('steel angle: 12 m at 10 m/h', () => {
    expect(of(room({}, joint({ steelAngle: true })), 'hours.steelAngle')).toBeCloseTo(1.2, 9);
    expect(cupsOnSteel()).toBeCloseTo((12 * 2) / 700, 9);
  });
});

describe('steps', () => {
  const flight = (ring: ReturnType<typeof rectangle>): Cell[] =>
    record('steps:a', { floor: FLOOR, tag: 'T1', ring, count: 5, riseMm: 170, goingMm: 280 });

  test('12 min a tread; a wide flight by its treads and risers at 8 m2/h', () => {
    expect(of(room({}, flight(rectangle(1_000, 1_400, [12_000, 2_000]))), 'hours.steps')).toBeCloseTo(1, 9);
    const areaM2 = 6 * 1.4 * (1 + 170 / 280);
    expect(of(room({}, flight(rectangle(6_000, 1_400, [3_000, 8_000]))), 'hours.steps')).toBeCloseTo(areaM2 / 8, 9);
  });

  test('on the slab they are off the net floor, and no machine works them', () => {
    const doc = room({}, flight(rectangle(1_000, 1_400, [6_000, 3_000])));
    expect(of(doc, 'netFloor')).toBeCloseTo(96 - 1.4, 9);
    expect(of(doc, 'edge.obstruction')).toBeCloseTo(4.8, 6);
  });

  test('beside the slab they belong to the zone that is nearest', () => {
    const doc = withCells(
      room({}, flight(rectangle(1_000, 1_400, [-1_000, 2_000]))),
      zoneCells('zone:left', rectangle(4_000, 8_000)),
    );
    expect(line(doc, 'hours.steps')?.zone).toBe('zone:left');
  });
});

describe('edges', () => {
  test('a termination groove: metres of stop line at 20 m/h; not before the slab is known', () => {
    const door = docOf(
      jobCells(),
      slabCells(rectangle(12_000, 8_000), [null, null, { kind: 'open', beyond: 'stop' }]),
      restCells({ groove: true }),
    );
    expect(of(door, 'hours.groove')).toBeCloseTo(of(door, 'stopLine') / 20, 9);
    const unknown = withCells(door, set('job:test', 'inSlab', { answer: 'unknown' }));
    expect(line(unknown, 'groove')?.held).toBe('inSlab');
    expect(of(unknown, 'hours.groove')).toBe(0);
  });

  test('a cove base that stays: its metres at 8 m/h and not at 15', () => {
    const cove = { kind: 'coveBase', heightMm: 100, treat: 'keep' } as const;
    const doc = docOf(jobCells(), slabCells(rectangle(12_000, 8_000), [{ kind: 'wall', upstand: cove }]));
    expect(of(doc, 'hours.edgeCove')).toBeCloseTo(12 / 8, 6);
    expect(of(doc, 'hours.edge')).toBeCloseTo(28 / 15, 6);
  });

  test('a long drain takes its metres, a small one its ten minutes', () => {
    const small = room({}, obstructionCells('obstruction:a', 'drain', [6_000, 4_000], 300));
    expect(of(small, 'hours.drains')).toBeCloseTo(10 / 60, 9);
    const channel = withCells(small, [
      ['obstruction:a', 'shape', { form: 'rectangle', at: [6_000, 4_000], widthMm: 6_000, depthMm: 200, turnDeg: 0 }],
    ]);
    expect(of(channel, 'hours.drains')).toBe(0);
    expect(of(channel, 'hours.edge') - of(room(), 'hours.edge')).toBeCloseTo(12.4 / 15, 6);
  });

  test('the plan says which edge tools reach a profile', () => {
    expect(edgeToolsFor({ min: 2, max: 3 }).map(({ id }) => id)).toContain('hand_grinder');
    const rough = edgeToolsFor({ min: 5, max: 6 }).map(({ id }) => id);
    expect(rough).toContain('hand_peener');
    expect(rough).not.toContain('hand_grinder');
  });
});

describe('findings', () => {
  const coat = (id: `finding:${string}`, kind: string, ring = rectangle(2_000, 2_000, [4_000, 3_000])): Cell[] =>
    findingCells(id, kind, ring, { thicknessMm: 0.4, asbestosTest: clear, leadTest: clear });

  test('where several lie over each other the slowest speaks, once', () => {
    const [paint, glue] = [coat('finding:F1', 'paint'), coat('finding:F2', 'mastic_black')];
    const both = of(room({}, paint, glue), 'hours.machine');
    expect(both).toBeCloseTo(of(room({}, glue), 'hours.machine'), 9);
    expect(both).toBeGreaterThan(of(room({}, paint), 'hours.machine'));
  });

  test('in the strip a finding slows the edge and not the machine', () => {
    // 2 m of the band of 100 mm along a wall: at half the rate as long as 2 m more.
    const strip = coat('finding:F1', 'paint', rectangle(2_000, 100, [4_000, 0]));
    const doc = room({}, strip);
    expect(of(doc, 'hours.machine')).toBeCloseTo(of(room(), 'hours.machine'), 6);
    expect(of(doc, 'hours.edge')).toBeCloseTo(42 / 15, 4);
  });

  test('a rubbery coating that is scarified off slows nothing after it', () => {
    const doc = room({}, coat('finding:F1', 'elastomer'));
    expect(of(doc, 'hours.machine')).toBeCloseTo(of(room(), 'hours.machine'), 9);
    expect(of(doc, 'hours.finding.elastomer')).toBeCloseTo(4 / 16, 9);
  });

  test('a pass of the zone that takes a finding away anyway is not counted again', () => {
    const scarify = recipeCells('plane', { method: 'scarifier_small', times: 1 });
    const doc = room({ recipe: 'recipe:plane' }, scarify, coat('finding:F1', 'elastomer'));
    expect(of(doc, 'hours.finding.elastomer')).toBe(0);
  });

  test('a small spot takes its least time: 40 min to patch, 6 min to clean', () => {
    const spot = rectangle(200, 200, [4_000, 3_000]);
    expect(of(room({}, findingCells('finding:F1', 'hollow', spot)), 'hours.finding.hollow')).toBeCloseTo(40 / 60, 9);
    expect(of(room({}, findingCells('finding:F1', 'oil_light', spot)), 'hours.finding.oil_light')).toBeCloseTo(0.1, 9);
    const large = rectangle(1_000, 1_000, [4_000, 3_000]);
    expect(of(room({}, findingCells('finding:F1', 'hollow', large)), 'hours.finding.hollow')).toBeCloseTo(
      1 / 0.6 + 1 / 8,
      6,
    );
  });

  test('paint in a zone that is only etched is ground off apart; pitting with a depth is filled at 8 m2/h', () => {
    const etch = recipeCells('etch', { method: 'acid_etch', times: 1 });
    const doc = room({ recipe: 'recipe:etch' }, etch, coat('finding:F1', 'paint'));
    expect(of(doc, 'hours.finding.paint')).toBeCloseTo(4 / (25 * 0.5), 9);
    // It slows the grinder, once: it is gone before the etch, and what grinds it wears.
    expect(of(doc, 'hours.machine')).toBeCloseTo(of(room({ recipe: 'recipe:etch' }, etch), 'hours.machine'), 9);
    expect(of(doc, 'diamondWear')).toBeGreaterThan(0);
    const pits = findingCells('finding:F1', 'pitting', rectangle(2_000, 2_000, [4_000, 3_000]), { depthMm: 3 });
    expect(of(room({}, pits), 'hours.pitFill')).toBeCloseTo(4 / 8, 9);
    expect(of(withCells(room({}, pits), set('finding:F1', 'depthMm', undefined)), 'hours.pitFill')).toBe(0);
  });

  test('all factors together leave a tenth of the rate (common practice, no source)', () => {
    const shot = recipeCells('shot', { method: 'shot_small', times: 1 });
    const doc = docOf(
      jobCells(),
      slabCells(rectangle(4_000, 3_000)),
      shot,
      restCells({ recipe: 'recipe:shot', hardness: 'veryHard', csp: { min: 8, max: 8 } }),
    );
    const machine = line(doc, 'hours.machine');
    expect(machine?.quantity.likely).toBeCloseTo(of(doc, 'field') / (45 * 0.1), 6);
  });
});

test('two regions share the length of their common cut, and none where they only meet in a corner', () => {
  const square = (x: number, y: number): [number, number][] => [
    [x, y],
    [x + 10, y],
    [x + 10, y + 10],
    [x, y + 10],
  ];
  expect(sharedMetres([[square(0, 0)]], [[square(10, 4)]])).toBeCloseTo(0.006, 12);
  expect(sharedMetres([[square(0, 0)]], [[square(1_000, 0)]])).toBe(0);
});
