import { expect, test } from 'vitest';
import { refusalOf } from '../../../src/edit/run.ts';
import type { CommandCall, Json, RecordId } from '../../../src/model/cell.ts';
import { recordOf, type Doc } from '../../../src/model/doc.ts';
import { FLOOR, openingOn, planWith, room, wall } from '../../support/handPlan.ts';

const call = (name: string, args: Json): CommandCall => ({ name, args });
const ringOf = (doc: Doc) => recordOf(doc, 'slab', 'slab:a')?.outline.map(({ x, y }) => [x, y]);
const kindsOf = (doc: Doc) => recordOf(doc, 'slab', 'slab:a')?.outline.map(({ edge }) => edge.kind);
const plan = planWith([room, wall, call('setEdge', { id: 'slab:a', edges: [1], kind: 'open' })]);

test('moving a corner keeps every edge as it was', () => {
  const doc = planWith([call('moveCorner', { id: 'slab:a', corner: 2, to: [7000, 5000] })], plan);
  expect(ringOf(doc)).toEqual([
    [0, 0],
    [6000, 0],
    [7000, 5000],
    [0, 4000],
  ]);
  expect(kindsOf(doc)).toEqual(['wall', 'open', 'wall', 'wall']);
});

test('a new corner splits an edge; both halves are of its kind', () => {
  const doc = planWith([call('addCorner', { id: 'slab:a', edge: 1, at: [6000, 1500] })], plan);
  expect(ringOf(doc)).toEqual([
    [0, 0],
    [6000, 0],
    [6000, 1500],
    [6000, 4000],
    [0, 4000],
  ]);
  expect(kindsOf(doc)).toEqual(['wall', 'open', 'open', 'wall', 'wall']);
});

test('a corner taken out leaves the edge before it', () => {
  const doc = planWith([call('removeCorner', { id: 'slab:a', corner: 2 })], plan);
  expect(ringOf(doc)).toEqual([
    [0, 0],
    [6000, 0],
    [0, 4000],
  ]);
  expect(kindsOf(doc)).toEqual(['wall', 'open', 'wall']);
  expect(refusalOf(doc, call('removeCorner', { id: 'slab:a', corner: 0 }))).toBe('tooFewCorners');
});

test('the last edge closes to the first corner', () => {
  const doc = planWith([call('addCorner', { id: 'slab:a', edge: 3, at: [-500, 2000] })], plan);
  expect(ringOf(doc)?.at(-1)).toEqual([-500, 2000]);
});

test('corners that are not there, and corners that follow from sizes, are refused', () => {
  const column = call('placeObstruction', {
    id: 'obstruction:a',
    floor: FLOOR,
    kind: 'column',
    under: 'none',
    shape: { form: 'circle', at: [3000, 2500], diameterMm: 400 },
  });
  const doc = planWith([column], plan);
  expect(refusalOf(doc, call('moveCorner', { id: 'slab:none', corner: 0, to: [0, 0] }))).toBe('unknownRecord');
  expect(refusalOf(doc, call('moveCorner', { id: 'slab:a', corner: 9, to: [0, 0] }))).toBe('unknownCorner');
  expect(refusalOf(doc, call('addCorner', { id: 'slab:a', edge: 9, at: [0, 0] }))).toBe('unknownEdge');
  expect(refusalOf(doc, call('moveCorner', { id: 'obstruction:a', corner: 0, to: [0, 0] }))).toBe('cornersFixed');
  expect(refusalOf(doc, call('addCorner', { id: 'obstruction:a', edge: 0, at: [0, 0] }))).toBe('cornersFixed');
  expect(refusalOf(doc, call('moveCorner', { id: 'slab:a', corner: 0, to: [9000, 2000] }))).toBe('crossesItself');
  expect(refusalOf(doc, call('moveCorner', { id: 'slab:a', corner: 0, to: [6000, 0] }))).toBe('zeroLength');
});

test('a rectangular obstruction is made larger by its corner; the opposite one and the turn stay', () => {
  const box = call('placeObstruction', {
    id: 'obstruction:a',
    floor: FLOOR,
    kind: 'equipment',
    under: 'none',
    shape: { form: 'rectangle', at: [2000, 2000], widthMm: 1000, depthMm: 400, turnDeg: 0 },
  });
  const doc = planWith([box, call('moveCorner', { id: 'obstruction:a', corner: 2, to: [3000, 2600] })], plan);
  expect(recordOf(doc, 'obstruction', 'obstruction:a')?.shape).toEqual({
    form: 'rectangle',
    at: [2250, 2200],
    widthMm: 1500,
    depthMm: 800,
    turnDeg: 0,
  });
});

test('an edge carried parallel slides along its neighbours', () => {
  const doc = planWith([
    call('drawSlab', {
      id: 'slab:b',
      floor: FLOOR,
      ring: [
        [0, 0],
        [4000, 0],
        [3000, 2000],
        [1000, 2000],
      ],
    }),
    call('moveEdge', { id: 'slab:b', edge: 2, byMm: 1000 }),
  ]);
  // Edge 2 runs to the left; to the right of that is up: the short side goes up by 1 m and grows to 3 m.
  expect(recordOf(doc, 'slab', 'slab:b')?.outline.map(({ x, y }) => [x, y])).toEqual([
    [0, 0],
    [4000, 0],
    [3500, 1000],
    [500, 1000],
  ]);
});

test('a wall with a doorway in it is carried as one straight run', () => {
  const doc = planWith([openingOn('slab:a', 0, 1000), call('moveEdge', { id: 'slab:a', edge: 0, byMm: -500 })], plan);
  expect(ringOf(doc)).toEqual([
    [0, -500],
    [1000, -500],
    [1900, -500],
    [6000, -500],
    [6000, 4000],
    [0, 4000],
  ]);
});

const openings = (doc: Doc) => recordOf(doc, 'opening', 'opening:a')?.atMm;
const doored = planWith([openingOn('wall:a', 1, 600)], plan);

test('openings stay where they are when a corner before them moves, is added or goes', () => {
  const on = (made: CommandCall): Doc => planWith([made], doored);
  expect(openings(doored)).toBe(3600);
  expect(openings(on(call('moveCorner', { id: 'wall:a', corner: 0, to: [2000, 1000] })))).toBe(2600);
  expect(openings(on(call('addCorner', { id: 'wall:a', edge: 0, at: [2000, 1300] })))).toBeCloseTo(
    Math.hypot(1000, 300) + Math.hypot(2000, 300) + 600,
    2,
  );
  expect(openings(on(call('addCorner', { id: 'wall:a', edge: 1, at: [4000, 1500] })))).toBe(3600);
  const straight = on(call('addCorner', { id: 'wall:a', edge: 0, at: [2000, 1000] }));
  expect(openings(planWith([call('removeCorner', { id: 'wall:a', corner: 1 })], straight))).toBe(3600);
});

test('a wall that would become too short for its opening is refused', () => {
  expect(refusalOf(doored, call('moveCorner', { id: 'wall:a', corner: 2, to: [4000, 2400] }))).toBe('openingPastWall');
  expect(refusalOf(doored, call('addCorner', { id: 'wall:a', edge: 1, at: [4000, 2000] }))).toBe('openingOverCorner');
  const inFirst = planWith([openingOn('wall:a', 0, 2000)], plan);
  expect(refusalOf(inFirst, call('moveCorner', { id: 'wall:a', corner: 0, to: [1500, 1000] }))).toBe(
    'openingOverCorner',
  );
});

test('records move together; an opening slides along its wall, and goes with it when both are moved', () => {
  const by = (ids: readonly RecordId[]): Doc => planWith([call('moveRecords', { ids, by: [250, 100] })], doored);
  expect(openings(by(['opening:a']))).toBe(3700);
  const both = by(['opening:a', 'wall:a']);
  expect(openings(both)).toBe(3600);
  expect(recordOf(both, 'wall', 'wall:a')?.path[0]).toEqual([1250, 1100]);
  expect(refusalOf(doored, call('moveRecords', { ids: ['opening:a'], by: [0, 900] }))).toBe('openingPastWall');
  expect(refusalOf(doored, call('moveRecords', { ids: [], by: [0, 900] }))).toBe('unknownRecord');
});
