import { describe, expect, test } from 'vitest';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import type { Doc } from '../../../src/model/doc.ts';
import type { Line } from '../../../src/takeoff/line.ts';
import {
  crackCells,
  docOf,
  findingCells,
  FLOOR,
  jobCells,
  record,
  rectangle,
  set,
  slabCells,
  withCells,
  zoneCells,
} from '../../support/jobPlans.ts';

function quantity(lines: readonly Line[], key: string): number {
  const line = lines.find((each) => each.key === key);
  if (!line) throw new Error(`no line ${key} among ${lines.map((each) => each.key).join(' ')}`);
  return line.quantity.likely;
}

describe('quantities of a room of 12 x 8 m with the first fleet', () => {
  const doc = docOf(jobCells(), slabCells(rectangle(12_000, 8_000)));
  const { lines, blocked, measure } = takeoff(doc, FLOOR);

  test('is measured without a zone, a recipe or a machine drawn', () => {
    expect(blocked).toBeNull();
    expect(measure.faults).toEqual([]);
    expect(quantity(lines, 'netFloor|rest')).toBeCloseTo(96, 6);
    expect(quantity(lines, 'netFloorAll|floor')).toBeCloseTo(96, 6);
  });

  test('strip is 2(W + H) w - 4 w2 with w = 50 mm clearance and 50 mm lap (closed form)', () => {
    expect(quantity(lines, 'strip|rest')).toBeCloseTo(40 * 0.1 - 4 * 0.01, 4);
    expect(quantity(lines, 'edge|rest')).toBeCloseTo(40, 6);
    expect(quantity(lines, 'innerCorners|rest')).toBe(4);
  });
});

describe('edges by kind', () => {
  test('doorway stops, open runs, upstand metres and area follow the edges', () => {
    const upstand = { kind: 'stemWall', heightMm: 150, treat: 'prepare' } as const;
    const doc = docOf(
      jobCells(),
      slabCells(rectangle(6_000, 6_000), [
        { kind: 'wall', upstand },
        { kind: 'doorway' },
        { kind: 'wall', upstand },
        { kind: 'open' },
      ]),
    );
    const { lines } = takeoff(doc, FLOOR);
    expect(quantity(lines, 'edge.wall|rest')).toBeCloseTo(12, 6);
    expect(quantity(lines, 'stopLine|rest')).toBeCloseTo(6, 6);
    expect(quantity(lines, 'upstandMetres.prepare|rest')).toBeCloseTo(12, 6);
    expect(quantity(lines, 'upstandArea.prepare|rest')).toBeCloseTo(1.8, 6);
  });
});

describe('items of a zone', () => {
  const doc = docOf(
    jobCells(),
    slabCells(rectangle(10_000, 10_000)),
    zoneCells('zone:1', rectangle(5_000, 10_000)),
    record('obstruction:b1', {
      floor: FLOOR,
      tag: 'B1',
      kind: 'column',
      shape: { form: 'circle', at: [2_500, 5_000], diameterMm: 400 },
      under: 'none',
    }),
    record('obstruction:b2', {
      floor: FLOOR,
      tag: 'B2',
      kind: 'island',
      shape: { form: 'rectangle', at: [7_500, 5_000], widthMm: 2_000, depthMm: 1_000, turnDeg: 90 },
      under: 'byHand',
    }),
    crackCells('crack:C1', [
      [1_000, 1_000],
      [9_000, 1_000],
    ]),
    crackCells(
      'crack:C2',
      [
        [1_000, 2_000],
        [4_000, 2_000],
      ],
      { behaviour: 'working' },
    ),
    findingCells('finding:F1', 'oil_light', rectangle(1_000, 1_000, [1_000, 8_000])),
  );
  const { lines } = takeoff(doc, FLOOR);

  test('a circle takes exactly its area off', () => {
    expect(quantity(lines, 'deduction|floor|obstruction:b1')).toBeCloseTo(Math.PI * 0.04, 5);
  });

  test('floor that stays under an obstruction is counted apart as hand area', () => {
    expect(quantity(lines, 'handUnder|rest')).toBeCloseTo(2, 6);
    expect(quantity(lines, 'netFloorAll|floor')).toBeCloseTo(100 - 2 - Math.PI * 0.04, 5);
  });

  test('a crack over two zones is shared out by its length', () => {
    expect(quantity(lines, 'crack.static.ordinary|zone:1')).toBeCloseTo(4, 6);
    expect(quantity(lines, 'crack.static.ordinary|rest')).toBeCloseTo(4, 6);
    expect(quantity(lines, 'crack.working.ordinary|zone:1')).toBeCloseTo(3, 6);
  });

  test('findings count by kind', () => {
    expect(quantity(lines, 'finding.oil_light|zone:1')).toBeCloseTo(1, 6);
  });
});

describe('what blocks a floor', () => {
  test('a page that is shown and not trued gives no quantities', () => {
    const page = record('page:1', {
      floor: FLOOR,
      name: 'scan',
      image: 'aa',
      widthPx: 100,
      heightPx: 100,
      origin: [0, 0],
      guessMmPerPx: 10,
      dimensions: [],
    });
    const doc = docOf(jobCells(), slabCells(rectangle(5_000, 5_000)), page);
    expect(takeoff(doc, FLOOR)).toMatchObject({ blocked: 'pageNotTrued', lines: [] });
    const trued = (to: readonly [number, number]): Doc =>
      withCells(doc, set('page:1', 'dimensions', [{ from: [10, 10], to, lengthMm: 5_000, by: 'mouse' }]));
    expect(takeoff(trued([90, 10]), FLOOR).blocked).toBeNull();
    // A slip of the hand, both ends on one pixel, is a dimension that trues nothing.
    expect(takeoff(trued([10, 10]), FLOOR)).toMatchObject({ blocked: 'pageNotTrued', lines: [] });
  });

  test('no slab, no floor', () => {
    expect(takeoff(docOf(jobCells()), FLOOR).blocked).toBe('noSlab');
    expect(takeoff(docOf(jobCells()), 'floor:none').blocked).toBe('noFloor');
  });
});
