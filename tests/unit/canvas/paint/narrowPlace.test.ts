import { expect, test } from 'vitest';
import { askedSpotPrims, narrowLineOf, narrowLinePrims } from '../../../../src/canvas/paint/narrowPlace.ts';
import { litPrims } from '../../../../src/canvas/paint/lit.ts';
import type { Prim } from '../../../../src/canvas/paint/prim.ts';
import { followerPrims, reachPrims } from '../../../../src/canvas/paint/reach.ts';
import { planView } from '../../../../src/canvas/paint/view.ts';
import { tightAt } from '../../../../src/canvas/tightAt.ts';
import type { Point, Region, TightPiece, ZoneMeasure } from '../../../../src/geometry/floorShape.ts';
import { measureFloor } from '../../../../src/geometry/measureFloor.ts';
import { planShape } from '../../../../src/takeoff/planShape.ts';
import { docOf, FLOOR, jobCells, record, rectangle, slabCells, zoneCells } from '../../../support/jobPlans.ts';

const LOOK = { pxPerMm: 0.05, picked: false, print: false };
const doc = docOf(
  jobCells(),
  slabCells(rectangle(10_000, 8_000), [{ kind: 'doorway' }]),
  record('wall:a', {
    floor: FLOOR,
    tag: 'W1',
    path: [
      [6_000, 0],
      [6_000, 8_000],
    ],
    thicknessMm: 200,
  }),
  record('opening:a', { wall: 'wall:a', tag: 'D2', atMm: 3_000, widthMm: 700, heightMm: 2_100 }),
  zoneCells('zone:1', rectangle(10_000, 8_000)),
);
const measure = measureFloor(planShape(doc, FLOOR));
const view = planView(doc, FLOOR, { measure });

function region(x: number, y: number, width: number, height: number): Region {
  return [[rectangle(width, height, [x, y])]];
}

function piece(more: Partial<TightPiece>): TightPiece {
  return {
    kind: 'gap',
    areaM2: 1,
    region: region(0, 0, 500, 500),
    at: [250, 250],
    zone: 'zone:1',
    blockedBy: null,
    ...more,
  };
}

function zoneWith(more: Partial<ZoneMeasure>): ZoneMeasure {
  const zone = measure.zones.find(({ id }) => id === 'zone:1');
  if (!zone) throw new Error('no zone');
  return { ...zone, ...more };
}

test('fields of machines that follow have bars, one more for each; the first has none and alone nothing changes', () => {
  const fields = [3, 2, 1, 1, 1].map((width, i) => ({
    machine: `machine:${i}`,
    areaM2: 1,
    region: region(i * 4_000, 0, width * 1_000, 1_000),
  }));
  const textures = followerPrims(zoneWith({ fields })).flatMap((prim) => (prim.kind === 'area' ? [prim.texture] : []));
  expect(textures).toEqual(['bar', 'twoBars', 'threeBars', 'threeBars']);
  const [one] = fields;
  if (!one) throw new Error('no field');
  const single = zoneWith({ fields: [{ ...one, region: zoneWith({}).field }] });
  expect(followerPrims(single)).toEqual([]);
  expect(reachPrims(single, 3)).toEqual(reachPrims(zoneWith({}), 3));
});

test('the field of one machine can be lit alone', () => {
  const fields = ['machine:a', 'machine:b'].map((machine, i) => ({ machine, areaM2: 1, region: region(i, 0, 10, 10) }));
  const cascade = { ...view, measure: { ...measure, zones: [zoneWith({ fields })] } };
  const lit = litPrims(cascade, { zone: 'zone:1', parts: ['field'], records: [], machine: 'machine:b' });
  expect(lit).toEqual([{ kind: 'area', region: fields[1]?.region, fill: 'chalk' }]);
});

test('a narrow place is a line from face to face with a bar across each end, of one size on the screen', () => {
  const paths = narrowLinePrims(
    [
      [0, 0],
      [640, 0],
    ],
    LOOK,
  ).map((prim) => (prim.kind === 'line' ? prim.path : []));
  expect(paths).toEqual([
    [
      [0, 0],
      [640, 0],
    ],
    [
      [0, -120],
      [0, 120],
    ],
    [
      [640, -120],
      [640, 120],
    ],
  ]);
});

test('the line of a piece is its gap, else the passage as it is drawn; a low one has none', () => {
  const gap = { machine: 'm', widthMm: 640, needsMm: 800, from: [0, 0], to: [640, 0] } as const;
  expect(narrowLineOf(view, piece({ gap }))).toEqual([gap.from, gap.to]);
  const by = (id: string, what: 'width' | 'height') =>
    piece({ kind: 'cutOff', blockedBy: { passage: { id, widthMm: 700, heightMm: 2_100 }, needsMm: 800, what } });
  expect(narrowLineOf(view, by('opening:a', 'width'))).toEqual([
    [6_000, 3_000],
    [6_000, 3_700],
  ]);
  expect(narrowLineOf(view, by('slab:a#0', 'width'))).toEqual([
    [0, 0],
    [10_000, 0],
  ]);
  expect(narrowLineOf(view, by('opening:a', 'height'))).toBeNull();
  expect(narrowLineOf(view, by('entrance:none', 'width'))).toBeNull();
  expect(narrowLineOf(view, piece({}))).toBeNull();
});

test('the plate stands towards the middle of the floor, its lines short enough to stay on the plan', () => {
  const plateAt = (at: Point): Extract<Prim, { kind: 'text' }> | undefined =>
    askedSpotPrims({ at, line: null, says: ['Kept back: the machine stays 0.60 m from the drop.'] }, view, LOOK).find(
      (prim) => prim.kind === 'text',
    );
  const signs = (at: Point) => plateAt(at)?.offsetPx?.map(Math.sign);
  expect(signs([100, 100])).toEqual([1, 1]);
  expect(signs([9_900, 7_900])).toEqual([-1, -1]);
  expect(plateAt([100, 100])?.more?.length).toBeGreaterThan(0);
  expect(askedSpotPrims({ at: [0, 0], line: null, says: [] }, view, LOOK)).toEqual([]);
});

test('a tap meets the piece under it, one with a reason from a little beside, and a corner rest only when it is hit', () => {
  const gap = { machine: 'm', widthMm: 500, needsMm: 800, from: [0, 0], to: [500, 0] } as const;
  const narrow = piece({ gap });
  const rest = piece({ region: region(2_000, 0, 100, 100), areaM2: 0.01 });
  const zone = zoneWith({ tight: [narrow, rest] });
  expect(tightAt(zone, [250, 250], 100)).toBe(narrow);
  expect(tightAt(zone, [580, 250], 100)).toBe(narrow);
  expect(tightAt(zone, [700, 250], 100)).toBeNull();
  expect(tightAt(zone, [2_050, 50], 100)).toBe(rest);
  expect(tightAt(zone, [2_150, 50], 100)).toBeNull();
});
