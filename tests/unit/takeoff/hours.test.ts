import { describe, expect, test } from 'vitest';
import type { Cell } from '../../../src/model/cell.ts';
import type { Doc } from '../../../src/model/doc.ts';
import { chaseSection, isChased, jointSection, openBelow, widthClass } from '../../../src/takeoff/crackClass.ts';
import { defaultMachine } from '../../../src/takeoff/fleet.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import {
  crackCells,
  docOf,
  findingCells,
  FLOOR,
  jobCells,
  record,
  rectangle,
  restCells,
  slabCells,
  withCells,
} from '../../support/jobPlans.ts';

const room = docOf(jobCells(), slabCells(rectangle(12_000, 8_000)));

function of(doc: Doc, code: string): number {
  return takeoff(doc, FLOOR).lines.find((line) => line.code === code)?.quantity.likely ?? 0;
}

function standing(kind: 'post' | 'column'): Cell[] {
  return record('obstruction:b', {
    floor: FLOOR,
    tag: 'B1',
    kind,
    shape: { form: 'rectangle', at: [6_000, 4_000], widthMm: 300, depthMm: 300, turnDeg: 0 },
    under: 'none',
  });
}

describe('edge hours', () => {
  test('a column is edged by the metre, a post by number and not by the metre as well', () => {
    const [plain, column, post] = [room, withCells(room, standing('column')), withCells(room, standing('post'))];
    // 4 x 0.3 m at 15 m/h; 8 minutes for a post base (common practice, no source).
    expect(of(column, 'hours.edge') - of(plain, 'hours.edge')).toBeCloseTo(1.2 / 15, 6);
    expect(of(post, 'hours.edge')).toBeCloseTo(of(plain, 'hours.edge'), 6);
    expect(of(post, 'hours.posts')).toBeCloseTo(8 / 60, 9);
  });

  test('passes lie side by side where the strip is wider than the cup: ceil(strip / (cup x 0.9))', () => {
    const small = defaultMachine('grinder_small');
    if (!small) throw new Error('no machine');
    const wide = { ...small, clearanceMm: { ...small.clearanceMm, wall: 150 } };
    // 150 + 50 = 200 mm of strip, 125 x 0.9 = 112.5 mm of cup: two passes.
    expect(of(withCells(room, record('machine:m', wide)), 'hours.edge')).toBeCloseTo((40 / 15) * 2, 6);
  });

  test('a doorway takes its minutes, a wide one its metres', () => {
    const door = (widthMm: number): Doc =>
      docOf(
        jobCells(),
        slabCells(
          [
            [0, 0],
            [12_000, 0],
            [12_000, 8_000],
            [widthMm, 8_000],
            [0, 8_000],
          ],
          [null, null, null, { kind: 'doorway' }],
        ),
      );
    expect(of(door(900), 'hours.stopLines')).toBeCloseTo(12 / 60, 9);
    expect(of(door(6_000), 'hours.stopLines')).toBeCloseTo(6 / 15, 6);
  });
});

describe('machine hours', () => {
  test('a finding slows its own area only', () => {
    const clear = { result: 'clear', on: '2030-01-01', by: 'Tester' } as const;
    const paint = findingCells('finding:F1', 'paint', rectangle(2_000, 2_000, [4_000, 3_000]), {
      thicknessMm: 0.4,
      leadTest: clear,
    });
    const [bare, painted] = [of(room, 'hours.machine'), of(withCells(room, paint), 'hours.machine')];
    const field = of(room, 'field');
    // 4 m2 at half the rate count as 8.
    expect(painted / bare).toBeCloseTo((field + 4) / field, 9);
    expect(of(withCells(room, paint), 'hours.finding.paint')).toBe(0);
  });

  test('hard concrete takes longer by its factor', () => {
    expect(of(withCells(room, restCells({ hardness: 'hard' })), 'hours.machine')).toBeCloseTo(
      of(room, 'hours.machine') / 0.6,
      9,
    );
  });

  test('outdoors there is no vacuum between passes; at night all hours of the zone grow', () => {
    expect(of(room, 'hours.hepa')).toBeGreaterThan(0);
    expect(of(withCells(room, restCells({ place: 'outdoor' })), 'hours.hepa')).toBe(0);
    expect(of(withCells(room, restCells({ time: 'night' })), 'hours.zone')).toBeCloseTo(
      of(room, 'hours.zone') * 1.1,
      9,
    );
  });

  test('the daily starts fit into the days: crew hours are never more than days x hours a day', () => {
    for (let widthMm = 4_000; widthMm <= 60_000; widthMm += 1_500) {
      const doc = docOf(jobCells(), slabCells(rectangle(widthMm, 10_000)));
      const { lines } = takeoff(doc, FLOOR);
      const [days, crew] = ['days', 'hours.crew'].map((code) => lines.find((line) => line.code === code)?.quantity);
      for (const which of ['low', 'likely', 'high'] as const) {
        expect(crew?.[which], `${widthMm} ${which}`).toBeLessThanOrEqual((days?.[which] ?? 0) * 8 + 1e-9);
        expect(days?.[which]).toBeGreaterThanOrEqual(1);
      }
    }
  });

  test('a small job takes at least half a crew day', () => {
    const tiny = docOf(jobCells(), slabCells(rectangle(1_500, 1_500)));
    const labour = takeoff(tiny, FLOOR).lines.find((line) => line.code === 'money.labour');
    // 0.5 days x 8 h x 2 persons x 32 x 1.3, in cents.
    expect(labour?.quantity.low).toBeCloseTo(0.5 * 8 * 2 * 3_200 * 1.3, 6);
  });
});

describe('cracks and joints', () => {
  test('classes by width: hairline under 0.3 mm, wide over 6 mm, never judged by it', () => {
    expect([0.1, 0.3, 6, 6.1].map(widthClass)).toEqual(['hairline', 'ordinary', 'ordinary', 'wide']);
    expect(widthClass(null)).toBe('notMeasured');
  });

  test('static and not judged are chased; hairline, working and structural are not', () => {
    expect(isChased({ behaviour: 'static', widthMm: 2 })).toBe(true);
    expect(isChased({ behaviour: 'notJudged', widthMm: null })).toBe(true);
    expect(isChased({ behaviour: 'static', widthMm: 0.2 })).toBe(false);
    expect(isChased({ behaviour: 'working', widthMm: 2 })).toBe(false);
    expect(isChased({ behaviour: 'structural', widthMm: 2 })).toBe(false);
  });

  test('chase 6 x 12 mm; wide cracks 3 mm more on each side; what stays open under the chase is filled too', () => {
    expect(chaseSection({ widthMm: 2 })).toEqual({ width: 6, depth: 12 });
    expect(chaseSection({ widthMm: 10 })).toEqual({ width: 16, depth: 19 });
    expect(openBelow({ widthMm: 2, depthMm: null })).toEqual({ width: 2, depth: 0 });
    expect(openBelow({ widthMm: 2, depthMm: 50 })).toEqual({ width: 2, depth: 38 });
  });

  test('a working crack never appears in the rigid filler (UFC 3-270-03 table 3.1 note 4)', () => {
    const line = [
      [1_000, 1_000],
      [5_000, 1_000],
    ] as const;
    const still = withCells(room, crackCells('crack:C1', line));
    const working = withCells(room, crackCells('crack:C1', line, { behaviour: 'working' }));
    expect(of(still, 'crackFiller')).toBeCloseTo((6 * 12 * 4) / 1000, 9);
    expect(of(working, 'crackFiller')).toBe(0);
    expect(of(working, 'hours.crackChase')).toBe(0);
    expect(of(working, 'crack.working.ordinary')).toBeCloseTo(4, 9);
  });

  test('an isolation joint is never filled', () => {
    const joint = { floor: FLOOR, tag: 'J1', path: [], kind: 'isolation', treat: 'filled' } as const;
    expect(jointSection(joint)).toBeNull();
    expect(jointSection({ ...joint, kind: 'control' })).toEqual({ width: 4.5, depth: 25 });
    expect(jointSection({ ...joint, kind: 'construction', widthMm: 8, depthMm: 30 })).toEqual({ width: 8, depth: 30 });
    expect(jointSection({ ...joint, kind: 'control', treat: 'carried' })).toBeNull();
  });
});
