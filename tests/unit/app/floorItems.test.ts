import { expect, test } from 'vitest';
import { floorItems } from '../../../src/app/survey/floorItems.ts';
import { litOf } from '../../../src/app/survey/litOf.ts';
import { sillFigure } from '../../../src/app/survey/sillItems.ts';
import { figureText } from '../../../src/model/showNumber.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import { docOf, FLOOR, jobCells, record, rectangle, slabCells } from '../../support/jobPlans.ts';

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

test('the sill adds up what the takeoff says, and leads to the line that answers why', () => {
  const said = takeoff(doc, FLOOR);
  const sums = { doc, floor: FLOOR, units: 'metric', takeoff: said, currency: 'USD' } as const;
  const net = sillFigure('net', sums);
  expect(Number(net.figure?.figure)).toBeCloseTo(said.measure.netM2, 2);
  const line = said.lines.find((each) => each.key === net.why);
  expect(line?.code).toBe('netFloorAll');
  expect(line && litOf(line).parts).toEqual(['net']);
  expect(sillFigure('cracks', sums)).toMatchObject({ label: 'Cracks, 1', figure: { figure: '2.00', unit: 'm' } });
  expect(sillFigure('page', sums)).toMatchObject({ label: 'No plan page', figure: null });
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
  const sums = {
    doc: untrued,
    floor: FLOOR,
    units: 'metric',
    takeoff: takeoff(untrued, FLOOR),
    currency: 'USD',
  } as const;
  for (const name of ['net', 'edge', 'cracks', 'page', 'hours'] as const)
    expect(sillFigure(name, sums).figure).toBeNull();
});
