import { expect, test } from 'vitest';
import { floorItems } from '../../../src/app/survey/floorItems.ts';
import { litOf } from '../../../src/app/survey/litOf.ts';
import { sillFigure, type Sums } from '../../../src/app/survey/sillItems.ts';
import { codeWords } from '../../../src/exchange/codeWords.ts';
import { whyKey, whyLine } from '../../../src/app/takeoff/whyLine.ts';
import { figureText } from '../../../src/model/showNumber.ts';
import { totalOf } from '../../support/totalOf.ts';
import { takeoff, takeoffTotals } from '../../../src/takeoff/takeoff.ts';
import { docOf, FLOOR, jobCells, record, rectangle, slabCells } from '../../support/jobPlans.ts';
import { richJob } from '../../support/richJob.ts';

const doorway = { kind: 'doorway', beyond: 'stop', tag: 'D1' } as const;
const doc = docOf(
  jobCells(),
  slabCells(rectangle(6000, 5000), [doorway]),
  record('wall:a', {
    floor: FLOOR,
    tag: 'W1',
    path: [
      [1000, 0],
      [1000, 3000],
    ],
    thicknessMm: 200,
  }),
  record('opening:a', { wall: 'wall:a', tag: 'D2', atMm: 500, widthMm: 900, heightMm: 2100 }),
  record('obstruction:a', {
    floor: FLOOR,
    tag: 'B1',
    kind: 'column',
    shape: { form: 'circle', at: [4000, 2000], diameterMm: 400 },
    under: 'none',
  }),
  record('crack:a', {
    floor: FLOOR,
    tag: 'C1',
    path: [
      [3000, 1000],
      [3000, 3000],
    ],
    widthMm: 0.6,
    depthMm: null,
    behaviour: 'static',
  }),
  record('note:a', { floor: FLOOR, tag: 'N1', at: [500, 500], text: 'Ask for the key' }),
  record('crack:other', {
    floor: 'floor:upper',
    tag: 'C1',
    path: [
      [0, 0],
      [9, 9],
    ],
    widthMm: null,
    depthMm: null,
    behaviour: 'notJudged',
  }),
);

test('the list says every item of the floor in words and with its size, doorways among the openings', () => {
  const lines = floorItems(doc, FLOOR, 'metric').map(({ tag, words, figure }) => [
    tag,
    words,
    figure && figureText(figure),
  ]);
  expect(lines).toEqual([
    ['S1', 'Slab outline', '30.00 m2'],
    ['W1', 'Wall 0.20 thick', '3.00 m'],
    ['D2', 'Opening 0.90 x 2.10', '0.90 m'],
    ['D1', 'Doorway, stops', '6.00 m'],
    ['B1', 'Column 0.40 round', '0.13 m2'],
    ['C1', 'Crack 0.6 mm, static', '2.00 m'],
    ['N1', 'Ask for the key', null],
  ]);
});

test('in feet the same list speaks of feet', () => {
  const [slab, wall] = floorItems(doc, FLOOR, 'imperial');
  expect(slab?.figure).toEqual({ figure: '323', unit: 'ft2' });
  expect(wall?.words).toBe('Wall 7 7/8" thick');
});

const sumsOf = (plan: typeof doc): Sums => ({
  doc: plan,
  floor: FLOOR,
  units: 'metric',
  takeoff: takeoff(plan, FLOOR),
  totals: takeoffTotals(plan, FLOOR),
  currency: 'USD',
});

test('the sill adds up what the takeoff says, and leads to the line that answers why', () => {
  const said = takeoff(doc, FLOOR);
  const sums = sumsOf(doc);
  const net = sillFigure('net', sums);
  expect(Number(net.figure?.figure)).toBeCloseTo(said.measure.netM2, 2);
  const line = said.lines.find((each) => each.key === net.why);
  expect(line?.code).toBe('netFloorAll');
  expect(line && litOf(line).parts).toEqual(['net']);
  expect(sillFigure('cracks', sums)).toMatchObject({ label: 'Cracks, 1', figure: { figure: '2.00', unit: 'm' } });
  expect(sillFigure('page', sums)).toMatchObject({ label: 'No plan page', figure: null });
});

test('the sill of Survey counts every edge, whatever a machine reaches; its Why is the sum of the lines', () => {
  const said = takeoff(doc, FLOOR);
  const sums = sumsOf(doc);
  const all = sillFigure('allEdge', sums);
  // Round 6 x 5 m less the doorway, and the wall W1 on both sides and its end less D2 on both sides, and the column.
  expect(Number(all.figure?.figure)).toBeGreaterThan(totalOf(said, 'edge').likely - 0.005);
  expect(figureText(all.figure ?? { figure: '', unit: '' })).toBe(
    `${(whyLine(said, all.why ?? '')?.quantity.likely ?? 0).toFixed(2)} m`,
  );

  // The way in is too narrow for the machine: all edge lies in hand floor now, and is as long as it was.
  const narrow = docOf(
    [...doc].flatMap(([id, fields]) => Object.entries(fields).map(([slot, value]) => [id, slot, value] as const)),
    record('entrance:a', { floor: FLOOR, tag: 'M1', at: [2000, 100], widthMm: 300, heightMm: null }),
  );
  const barred = takeoff(narrow, FLOOR);
  expect(totalOf(barred, 'edge').likely).toBe(0);
  expect(sillFigure('allEdge', sumsOf(narrow)).figure).toEqual(all.figure);
  expect(sillFigure('tight', sumsOf(narrow)).label).toBe('Tight, cut off');
});

test('a sum over lines of several codes is called by what they have in common', () => {
  const said = takeoff(richJob(), 'floor:ground');
  const cracks = said.lines.filter((line) => line.code.startsWith('crack.'));
  expect(new Set(cracks.map(({ code }) => code)).size).toBeGreaterThan(1);
  expect(codeWords(whyLine(said, whyKey(cracks) ?? '')?.code ?? '')).toBe('Cracks');
});

test('a crack counts as far as it lies on the slab, on the sill as in its Why; before there is a slab, as drawn', () => {
  const path = [
    [3000, 4000],
    [3000, 6000],
  ] as const;
  const crack = record('crack:a', { floor: FLOOR, tag: 'C1', path, widthMm: 1, depthMm: null, behaviour: 'static' });
  const shown = (plan: typeof doc) => sillFigure('cracks', sumsOf(plan)).figure?.figure;
  expect(shown(docOf(jobCells(), slabCells(rectangle(6000, 5000)), crack))).toBe('1.00');
  expect(shown(docOf(jobCells(), crack))).toBe('2.00');
});

test('with a page that is not trued no figure is shown', () => {
  const page = record('page:a', {
    floor: FLOOR,
    name: 'Plan',
    image: 'f'.repeat(64),
    widthPx: 1000,
    heightPx: 800,
    origin: [0, 0],
    guessMmPerPx: 20,
    dimensions: [],
  });
  const untrued = docOf(
    [...doc].flatMap(([id, fields]) => Object.entries(fields).map(([slot, value]) => [id, slot, value] as const)),
    page,
  );
  for (const name of ['net', 'edge', 'cracks', 'page', 'hours'] as const)
    expect(sillFigure(name, sumsOf(untrued)).figure).toBeNull();
});

test('what follows the hand at once is what the lines of the takeoff add up to', () => {
  for (const plan of [doc, richJob()]) {
    const said = takeoff(plan, FLOOR);
    const sums = sumsOf(plan);
    const quick = ['net', 'field', 'edge', 'allEdge', 'cracks', 'joints'] as const;
    for (const name of quick) {
      const { figure, why, waits } = sillFigure(name, sums);
      expect(waits, name).toBe(false);
      const line = why === null ? null : whyLine(said, why);
      const shown = Number(figure?.figure.replaceAll(',', ''));
      expect(Math.abs(shown - (line?.quantity.likely ?? shown)), name).toBeLessThan(0.005_01);
    }
    for (const name of ['tight', 'upstands', 'hours', 'price'] as const)
      expect(sillFigure(name, sums).waits, name).toBe(true);
  }
});
