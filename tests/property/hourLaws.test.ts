import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Cell } from '../../src/model/cell.ts';
import type { Doc } from '../../src/model/doc.ts';
import type { RecordOf } from '../../src/model/records/all.ts';
import { evaluate } from '../../src/takeoff/formula.ts';
import type { Range } from '../../src/takeoff/line.ts';
import { factors } from '../../src/takeoff/rates/factors.ts';
import { takeoff } from '../../src/takeoff/takeoff.ts';
import { everythingJob, obstructionCells } from '../support/hoursJobs.ts';
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
  zoneCells,
} from '../support/jobPlans.ts';
import { totalOf } from '../support/totalOf.ts';

/** Laws of the hours. That more work never takes less time is common practice, no source; the rest is arithmetic. */
const RUNS = { numRuns: 15 };
const CASES = ['low', 'likely', 'high'] as const;
const side = fc.integer({ min: 3_000, max: 25_000 });

function hours(doc: Doc, code: string): Range {
  return totalOf(takeoff(doc, FLOOR), code);
}

function noLess(doc: Doc, more: Doc, codes: readonly string[]): void {
  const [a, b] = [takeoff(doc, FLOOR), takeoff(more, FLOOR)];
  for (const code of codes) {
    for (const which of CASES) {
      expect(totalOf(b, code)[which], `${code} ${which}`).toBeGreaterThanOrEqual(totalOf(a, code)[which] - 1e-6);
    }
  }
}

const clear = { result: 'clear', on: '2030-01-01', by: 'Tester' } as const;

function hall(rest: Partial<RecordOf<'zone'>>, ...cells: readonly Cell[][]): Doc {
  return docOf(
    jobCells({ inSlabLocated: clear }),
    slabCells(rectangle(20_000, 12_000)),
    recipeCells('grind'),
    restCells({ recipe: 'recipe:grind', csp: { min: 2, max: 3 }, ...rest }),
    ...cells,
  );
}

describe('more of anything never takes fewer hours', () => {
  test('floor, with goods, mock-up and every test', () => {
    const all = { csp: { min: 2, max: 3 }, maskWalls: true, mockUpM2: 1, tests: ['csp', 'pull', 'rh'] } as const;
    fc.assert(
      fc.property(side, side, side, (width, depth, more) => {
        const room = (x: number): Doc => docOf(jobCells(), slabCells(rectangle(x, depth)), restCells(all));
        noLess(room(width), room(width + more), ['hours.machineAll', 'hours.handAll', 'hours.besides', 'hours.crew']);
      }),
      RUNS,
    );
  });

  test('goods, mock-up, treads, edge passes, times over', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 12 }), fc.integer({ min: 1, max: 12 }), (few, more) => {
        const many = few + more;
        const goods = (goodsM2: number): Doc => hall({ goodsBy: 'us', goodsM2 });
        const mockUp = (mockUpM2: number): Doc => hall({ mockUpM2 });
        const treads = (count: number): Doc =>
          hall(
            {},
            record('steps:a', {
              floor: FLOOR,
              tag: 'T1',
              ring: rectangle(1_000, 4_000, [21_000, 0]),
              count,
              riseMm: 170,
              goingMm: 280,
            }),
          );
        const passes = (times: number): Doc => withCells(hall({}), set('pass:grind', 'times', times));
        const edges = (times: number): Doc => withCells(hall({}), set('pass:grind', 'edgeTimes', times));
        noLess(goods(few), goods(many), ['hours.goods', 'hours.crew']);
        noLess(mockUp(few), mockUp(many), ['hours.mockUp', 'hours.crew']);
        noLess(treads(few), treads(many), ['hours.steps', 'hours.crew']);
        noLess(passes(few), passes(many), ['hours.machine', 'hours.hepa', 'hours.crew']);
        noLess(edges(few), edges(many), ['hours.edge', 'hours.corners', 'hours.crew']);
      }),
      RUNS,
    );
  });

  test('findings: a larger spot, and one more of them', () => {
    const kinds = fc.constantFrom('oil_light', 'oil_deep', 'paint', 'adhesive', 'hollow', 'tape');
    const size = fc.integer({ min: 100, max: 3_000 });
    fc.assert(
      fc.property(kinds, size, size, (kind, mm, more) => {
        const spot = (id: `finding:${string}`, x: number, of: number): Cell[] =>
          findingCells(id, kind, rectangle(of, of, [x, 4_000]), { asbestosTest: clear, leadTest: clear });
        const one = hall({}, spot('finding:F1', 2_000, mm));
        noLess(one, hall({}, spot('finding:F1', 2_000, mm + more)), ['hours.machine', 'hours.finding.', 'hours.crew']);
        noLess(one, withCells(one, spot('finding:F2', 12_000, more)), [
          'hours.machine',
          'hours.finding.',
          'hours.crew',
        ]);
      }),
      RUNS,
    );
  });

  test('metres of joint, closed and cleared round shot, sawn out, edged with steel', () => {
    fc.assert(
      fc.property(fc.integer({ min: 500, max: 9_000 }), fc.integer({ min: 1, max: 9_000 }), (length, more) => {
        const joint = (metres: number): Doc =>
          withCells(
            hall(
              {},
              ...['a', 'b'].map((id, i) =>
                record(`joint:${id}`, {
                  floor: FLOOR,
                  tag: `J${i + 1}`,
                  path: [
                    [500, 3_000 + 3_000 * i],
                    [500 + metres, 3_000 + 3_000 * i],
                  ],
                  kind: 'control',
                  treat: 'filled',
                  oldFiller: i === 1,
                  steelAngle: i === 1,
                }),
              ),
            ),
            set('pass:grind', 'method', 'shot_small'),
          );
        const codes = [
          'hours.jointsProtect',
          'hours.jointsClear',
          'hours.jointClean',
          'hours.steelAngle',
          'hours.crew',
        ];
        expect(codes.every((code) => hours(joint(length), code).likely > 0)).toBe(true);
        noLess(joint(length), joint(length + more), codes);
      }),
      RUNS,
    );
  });

  test('posts and drains, from those priced by the piece to those priced by the metre', () => {
    const kind = fc.constantFrom('post', 'drain');
    fc.assert(
      fc.property(kind, fc.integer({ min: 100, max: 1_500 }), fc.integer({ min: 1, max: 500 }), (what, mm, more) => {
        const standing = (of: number): Doc => hall({}, obstructionCells('obstruction:a', what, [8_000, 5_000], of));
        const both = (doc: Doc): number => hours(doc, 'hours.edge').likely + hours(doc, `hours.${what}s`).likely;
        expect(both(standing(mm + more))).toBeGreaterThanOrEqual(both(standing(mm)) - 1e-6);
      }),
      RUNS,
    );
  });
});

/** Size of room and what stands about belong to a zone: alike, so that only the cut between zones is looked at. */
function withoutScale(): Cell[] {
  return factors
    .filter(({ code }) => /room|obstructions/.test(code))
    .flatMap(({ code, term, unit }, i) =>
      record(`rate:own${i}`, {
        code,
        term,
        unit,
        low: 1,
        likely: 1,
        high: 1,
        source: 'own',
        provenance: 'own',
        fromMemory: false,
      }),
    );
}

describe('a zone that is split with the same recipe', () => {
  const SUMS = [
    'netFloor',
    'field',
    'strip',
    'edge',
    'stopLine',
    'hours.machine',
    'hours.edge',
    'hours.hepa',
    'hours.vacuum',
    'hours.finding.',
    'hours.jointFill',
    'hours.crackChase',
    'hours.machineAll',
    'hours.zonePerson',
  ];

  test('takes the same, but for moves and tests that are counted by the zone', () => {
    fc.assert(
      fc.property(fc.integer({ min: 3_000, max: 17_000 }), (at) => {
        const alike = { recipe: 'recipe:grind', csp: { min: 2, max: 3 }, tests: [] } as const;
        const whole = withCells(
          hall({ tests: [] }),
          withoutScale(),
          findingCells('finding:F1', 'oil_light', rectangle(6_000, 3_000, [6_000, 5_000])),
          findingCells('finding:F2', 'hollow', rectangle(400, 400, [9_000, 2_000])),
          findingCells('finding:F3', 'paint', rectangle(5_000, 5_000, [8_000, 0]), { leadTest: clear }),
          record('joint:a', {
            floor: FLOOR,
            tag: 'J1',
            path: [
              [0, 9_000],
              [20_000, 9_000],
            ],
            kind: 'control',
            treat: 'filled',
          }),
          record('crack:a', {
            floor: FLOOR,
            tag: 'C1',
            path: [
              [1_000, 3_000],
              [19_000, 3_500],
            ],
            widthMm: 1,
            depthMm: null,
            behaviour: 'static',
          }),
        );
        const split = withCells(whole, zoneCells('zone:left', rectangle(at, 12_000), alike));
        const [a, b] = [takeoff(whole, FLOOR), takeoff(split, FLOOR)];
        expect(b.lines.filter(({ code }) => code === 'netFloor').length).toBe(2);
        for (const code of SUMS) {
          for (const which of CASES) {
            const [before, after] = [totalOf(a, code)[which], totalOf(b, code)[which]];
            expect(Math.abs(after - before), `${code} ${which}: ${before} ${after}`).toBeLessThan(1e-3);
          }
        }
        // Side by side on one visit is never longer than zone after zone, nor than the sum of all hours.
        for (const which of CASES) {
          const visit = totalOf(b, 'hours.work')[which] + totalOf(b, 'hours.besidesCrew')[which];
          expect(visit).toBeLessThanOrEqual(totalOf(b, 'hours.zoneSpan')[which] + 1e-9);
          expect(totalOf(b, 'hours.zoneSpan')[which]).toBeLessThanOrEqual(totalOf(b, 'hours.zonePerson')[which] + 1e-9);
        }
        // One move more, and the days that it may cost.
        expect(totalOf(b, 'hours.moves').likely - totalOf(a, 'hours.moves').likely).toBeCloseTo(10 / 60, 9);
      }),
      { numRuns: 12 },
    );
  });
});

describe('phases', () => {
  const night = (id: `phase:${string}`, order: string): Cell[] => record(id, { name: id, floor: FLOOR, order });

  test('each has set-up, moves and tear-down; what zones take is the same; low to high', () => {
    fc.assert(
      fc.property(fc.integer({ min: 3_000, max: 17_000 }), fc.boolean(), (at, inOne) => {
        const left = zoneCells('zone:left', rectangle(at, 12_000), { recipe: 'recipe:grind', csp: { min: 2, max: 3 } });
        const plain = hall({}, left);
        const doc = withCells(
          plain,
          night('phase:a', '1'),
          night('phase:b', '2'),
          set('zone:left', 'phase', 'phase:a'),
          set('zone:rest', 'phase', inOne ? 'phase:a' : 'phase:b'),
        );
        const [before, after] = [takeoff(plain, FLOOR), takeoff(doc, FLOOR)];
        const visits = inOne ? 1 : 2;
        for (const which of CASES) {
          expect(totalOf(after, 'hours.machineAll')[which]).toBeCloseTo(totalOf(before, 'hours.machineAll')[which], 9);
          for (const code of ['hours.setUp', 'hours.tearDown']) {
            expect(totalOf(after, code)[which]).toBeCloseTo(totalOf(before, code)[which] * visits, 9);
          }
          expect(totalOf(after, 'hours.crew')[which]).toBeGreaterThanOrEqual(
            totalOf(before, 'hours.crew')[which] - 1e-9,
          );
        }
        // Both sides of the lap line lie on one cut: 12 m, counted once, with the later phase.
        expect(totalOf(after, 'lapLine').likely).toBeCloseTo(inOne ? 0 : 12, 6);
        const own = after.lines.filter((line) => line.zone !== null);
        expect(own.every((line) => line.phase === (line.zone === 'zone:left' || inOne ? 'phase:a' : 'phase:b'))).toBe(
          true,
        );
        const parts = after.lines.filter(({ code }) => code === 'hours.crewPhase');
        expect(parts.length).toBe(inOne ? 0 : 2);
      }),
      { numRuns: 12 },
    );
  });

  test('a phase that is taken out is no phase: its zones are worked with the rest', () => {
    const doc = withCells(everythingJob(), night('phase:a', '1'), set('zone:hall', 'phase', 'phase:a'));
    const gone = withCells(doc, set('phase:a', 'gone', true));
    expect(hours(gone, 'hours.crew')).toEqual(hours(everythingJob(), 'hours.crew'));
    expect(hours(doc, 'hours.crew').likely).toBeGreaterThan(hours(gone, 'hours.crew').likely);
  });
});

test('units change nothing but the number of RH probes: 100 m2 are not 1,000 ft2', () => {
  const inFeet = withCells(everythingJob(), set('job:test', 'units', 'imperial'));
  const feet = new Map(takeoff(inFeet, FLOOR).lines.map((line) => [line.key, line.quantity]));
  const OF_PROBES = /probes|tests\.rh|besidesCrew|hours\.crew|hours\.person|dailyStart|days|Days/;
  const alike = takeoff(everythingJob(), FLOOR).lines.filter(
    ({ key, trade }) => ['floor', 'edge', 'line', 'spot', 'hours'].includes(trade) && !OF_PROBES.test(key),
  );
  expect(alike.length).toBeGreaterThan(80);
  expect(alike.map(({ key }) => feet.get(key))).toEqual(alike.map(({ quantity }) => quantity));
});

test('in a job with everything each line is low to high and comes out of its terms', () => {
  for (const doc of [everythingJob(), withCells(everythingJob(), set('job:test', 'inSlabLocated', undefined))]) {
    for (const { key, code, quantity, working } of takeoff(doc, FLOOR).lines) {
      expect(quantity.low, key).toBeLessThanOrEqual(quantity.likely + 1e-9);
      expect(quantity.likely, key).toBeLessThanOrEqual(quantity.high + 1e-9);
      const names = working.terms.map(({ name }) => name);
      expect(new Set(names).size, key).toBe(names.length);
      const again = evaluate(working.formula, working.terms).likely;
      if (code !== 'field') expect(again, key).toBeCloseTo(quantity.likely, 6);
    }
  }
});
