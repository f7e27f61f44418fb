import { expect, test } from 'vitest';
import { refusalOf, runCommand } from '../../../src/edit/run.ts';
import type { CommandCall } from '../../../src/model/cell.ts';
import { recordOf, recordsOf } from '../../../src/model/doc.ts';
import { planStore } from '../../../src/model/store.ts';
import { emptyPlan, FLOOR, planWith, room } from '../../support/handPlan.ts';

const draw = (name: string, args: object): CommandCall => ({ name, args: { floor: FLOOR, ...args } });
const ring = [
  [0, 0],
  [1000, 0],
  [1000, 1000],
  [0, 1000],
];
const path = [
  [0, 0],
  [1000, 0],
];
const crack = { path, widthMm: null, depthMm: null, behaviour: 'notJudged' };

const each: readonly (readonly [name: string, id: string, args: object, tag: string])[] = [
  ['drawSlab', 'slab:n', { ring }, 'S1'],
  ['drawWall', 'wall:n', { path, thicknessMm: 200 }, 'W1'],
  ['drawCrack', 'crack:n', crack, 'C1'],
  ['drawJoint', 'joint:n', { path, kind: 'control', treat: 'carried' }, 'J1'],
  ['drawFinding', 'finding:n', { ring, kind: 'oil_light' }, 'F1'],
  ['drawZone', 'zone:n', { ring }, 'Z1'],
  ['drawOutOfScope', 'outOfScope:n', { ring, reason: 'Tiled' }, 'X1'],
  ['drawSteps', 'steps:n', { ring, count: 3, riseMm: 170, goingMm: 280 }, 'ST1'],
  ['drawDimension', 'dimension:n', { from: [0, 0], to: [1000, 0] }, 'L1'],
  ['placeEntrance', 'entrance:n', { at: [0, 0], widthMm: 900, heightMm: null }, 'M1'],
  ['placeReading', 'reading:n', { at: [0, 0], kind: 'ph', value: 8.5, unit: 'pH' }, 'R1'],
  ['placeNote', 'note:n', { at: [0, 0], text: 'Wet here' }, 'N1'],
  [
    'placeObstruction',
    'obstruction:n',
    { kind: 'post', under: 'none', shape: { form: 'circle', at: [0, 0], diameterMm: 90 } },
    'B1',
  ],
];

test.each(each)('%s: writes one whole record with its tag', (name, id, args, tag) => {
  const doc = planWith([draw(name, { id, ...args })]);
  expect(doc.size).toBe(emptyPlan.size + 1);
  expect(doc.get(id as 'slab:n')).toMatchObject({ floor: FLOOR, tag });
});

test.each(each)(
  '%s: refuses a floor that is not there, an id of another kind, an id that is taken',
  (name, id, args) => {
    const elsewhere = { name, args: { floor: 'floor:none', id, ...args } };
    expect(refusalOf(emptyPlan, elsewhere)).toBe('unknownFloor');
    expect(refusalOf(emptyPlan, draw(name, { id: 'photo:n', ...args }))).toBe('wrongKind');
    expect(refusalOf(planWith([draw(name, { id, ...args })]), draw(name, { id, ...args }))).toBe('idTaken');
  },
);

test.each(['drawSlab', 'drawZone', 'drawFinding', 'drawOutOfScope'])('%s: refuses outlines that are none', (name) => {
  const id = `${name.slice(4, 5).toLowerCase()}${name.slice(5)}:n`;
  const withRing = (points: unknown): string | null =>
    refusalOf(emptyPlan, draw(name, { id, kind: 'oil_light', ring: points }));
  expect(
    withRing([
      [0, 0],
      [1000, 0],
    ]),
  ).toBe('tooFewCorners');
  expect(
    withRing([
      [0, 0],
      [1000, 1000],
      [1000, 0],
      [0, 1000],
    ]),
  ).toBe('crossesItself');
  expect(
    withRing([
      [0, 0],
      [1000, 1000],
      [1000, 0],
      [0, 1500],
    ]),
  ).toBe('crossesItself');
  expect(
    withRing([
      [0, 0],
      [1000, 0],
      [2000, 0],
    ]),
  ).toBe('noArea');
  expect(
    withRing([
      [0, 0],
      [1000, 0],
      [1000, 0],
      [0, 1000],
    ]),
  ).toBe('zeroLength');
  expect(
    withRing([
      [0, 0],
      [1000, 0],
      [NaN, 7],
    ]),
  ).toBe('notANumber');
});

test('lines refuse a single point and a length of nothing', () => {
  const of = (points: unknown): string | null =>
    refusalOf(emptyPlan, draw('drawCrack', { id: 'crack:n', ...crack, path: points }));
  expect(of([[0, 0]])).toBe('tooFewCorners');
  expect(
    of([
      [0, 0],
      [0.0001, 0],
    ]),
  ).toBe('zeroLength');
  expect(refusalOf(emptyPlan, draw('drawWall', { id: 'wall:n', path, thicknessMm: 0 }))).toBe('badValue');
  expect(refusalOf(emptyPlan, draw('drawDimension', { id: 'dimension:n', from: [1, 1], to: [1, 1] }))).toBe(
    'zeroLength',
  );
});

test('coordinates land on the grid of 1/320 mm', () => {
  const doc = planWith([
    draw('drawSlab', {
      id: 'slab:n',
      ring: [
        [0.001, 0],
        [1000.0016, 0],
        [1000, 1000.4],
      ],
    }),
  ]);
  expect(recordOf(doc, 'slab', 'slab:n')?.outline.map(({ x, y }) => [x, y])).toEqual([
    [0, 0],
    [1000.003125, 0],
    [1000, 1000.4],
  ]);
});

test('edges are walls until something else is said; open ones run on, doorways stop', () => {
  const edges = [{ kind: 'open' }, { kind: 'doorway', heightMm: 2100 }, { kind: 'open', beyond: 'stop' }];
  const doc = planWith([draw('drawSlab', { id: 'slab:n', ring, edges })]);
  expect(recordOf(doc, 'slab', 'slab:n')?.outline.map(({ edge }) => edge)).toEqual([
    { kind: 'open', beyond: 'run' },
    { kind: 'doorway', beyond: 'stop', heightMm: 2100 },
    { kind: 'open', beyond: 'stop' },
    { kind: 'wall' },
  ]);
});

test('a tag is the next one of its floor and kind, and never given twice', () => {
  const other = { name: 'newFloor', args: { id: 'floor:upper', name: 'Upper' } };
  const doc = planWith([
    draw('drawCrack', { id: 'crack:a', ...crack }),
    draw('drawCrack', { id: 'crack:b', ...crack }),
    { name: 'removeRecords', args: { ids: ['crack:b'] } },
    draw('drawCrack', { id: 'crack:c', ...crack }),
    other,
    { name: 'drawCrack', args: { floor: 'floor:upper', id: 'crack:d', ...crack } },
  ]);
  expect(recordsOf(doc, 'crack').map(({ id, tag }) => [id, tag])).toEqual([
    ['crack:a', 'C1'],
    ['crack:c', 'C3'],
    ['crack:d', 'C1'],
  ]);
});

test('a floor has one zone for the rest of the slab', () => {
  const rest = draw('drawZone', { id: 'zone:rest', ring: null });
  const doc = planWith([room, rest]);
  expect(recordOf(doc, 'zone', 'zone:rest')).toMatchObject({ covers: 'rest', tag: 'Z1' });
  expect(refusalOf(doc, draw('drawZone', { id: 'zone:b', ring: null }))).toBe('restTaken');
});

test('a refusal leaves the store untouched: no change, no undo step', () => {
  const store = planStore({ doc: emptyPlan });
  expect(runCommand(store, draw('drawSlab', { id: 'slab:n', ring: [] }))).toEqual({ refused: 'tooFewCorners' });
  expect(runCommand(store, { name: 'drawNothing', args: {} })).toEqual({ refused: 'unknownCommand' });
  expect(runCommand(store, { name: 'toString', args: {} })).toEqual({ refused: 'unknownCommand' });
  expect(store.getState()).toBe(emptyPlan);
  expect(store.steps().undo).toEqual([]);
});
