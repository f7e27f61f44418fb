import { expect, test } from 'vitest';
import { carriesFloor } from '../../../src/edit/truePage.ts';
import { isTrued, pageMatrix } from '../../../src/edit/pageMap.ts';
import { refusalOf } from '../../../src/edit/run.ts';
import { mapPoint } from '../../../src/geometry/transform.ts';
import type { CommandCall, Json } from '../../../src/model/cell.ts';
import { recordOf, type Doc } from '../../../src/model/doc.ts';
import { emptyPlan, FLOOR, openingOn, planWith, room, wall } from '../../support/handPlan.ts';

const call = (name: string, args: Json): CommandCall => ({ name, args });
const page = call('placePage', {
  id: 'page:a',
  floor: FLOOR,
  name: 'Plan',
  image: 'hash',
  widthPx: 2000,
  heightPx: 1000,
  guessMmPerPx: 10,
});
/** 600 pixels are 12 m: twice the guess. */
const level = { from: [0, 0], to: [600, 0], lengthMm: 12_000, by: 'mouse' };
const plumb = { from: [0, 0], to: [0, 400], lengthMm: 8080, by: 'mouse' };
const true1 = call('truePage', { id: 'page:a', dimensions: [level] });
const pageOf = (doc: Doc) => {
  const found = recordOf(doc, 'page', 'page:a');
  if (!found) throw new Error('no page');
  return found;
};

const column = call('placeObstruction', {
  id: 'obstruction:a',
  floor: FLOOR,
  kind: 'column',
  under: 'none',
  shape: { form: 'rectangle', at: [3000, 2000], widthMm: 400, depthMm: 200, turnDeg: 90 },
});
const post = call('placeObstruction', {
  id: 'obstruction:b',
  floor: FLOOR,
  kind: 'post',
  under: 'none',
  shape: { form: 'circle', at: [1000, 500], diameterMm: 100 },
});

test('a new page is seen by a guess, and has no quantity', () => {
  const doc = planWith([page]);
  expect(isTrued(pageOf(doc))).toBe(false);
  expect(mapPoint(pageMatrix(pageOf(doc)), [600, 100])).toEqual([6000, 1000]);
  expect(
    refusalOf(doc, call('placePage', { id: 'page:b', floor: FLOOR, name: '', image: '', widthPx: 0, heightPx: 9 })),
  ).toBe('noSize');
  expect(
    refusalOf(
      doc,
      call('placePage', { id: 'page:b', floor: 'floor:none', name: '', image: '', widthPx: 9, heightPx: 9 }),
    ),
  ).toBe('unknownFloor');
});

test('truing carries everything that was traced: places, sizes in the plan; not what was typed across it', () => {
  const doc = planWith([page, room, wall, openingOn('wall:a', 1, 600), column, post, true1]);
  expect(recordOf(doc, 'slab', 'slab:a')?.outline.map(({ x, y }) => [x, y])).toEqual([
    [0, 0],
    [12_000, 0],
    [12_000, 8000],
    [0, 8000],
  ]);
  expect(recordOf(doc, 'wall', 'wall:a')).toMatchObject({
    path: [
      [2000, 2000],
      [8000, 2000],
      [8000, 6000],
    ],
    thicknessMm: 100,
  });
  expect(recordOf(doc, 'opening', 'opening:a')).toMatchObject({ atMm: 7200, widthMm: 1800, heightMm: 2100 });
  expect(recordOf(doc, 'obstruction', 'obstruction:a')?.shape).toMatchObject({
    at: [6000, 4000],
    widthMm: 800,
    depthMm: 400,
    turnDeg: 90,
  });
  expect(recordOf(doc, 'obstruction', 'obstruction:b')?.shape).toMatchObject({ at: [2000, 1000], diameterMm: 200 });
});

test('two scales: sizes grow by the direction they lie in', () => {
  const doc = planWith([
    page,
    column,
    wall,
    openingOn('wall:a', 1, 600),
    call('truePage', { id: 'page:a', dimensions: [level, plumb] }),
  ]);
  // 20 mm a pixel across, 20.2 down; the column's width lies down the page.
  expect(recordOf(doc, 'obstruction', 'obstruction:a')?.shape).toMatchObject({
    at: [6000, 4040],
    widthMm: 808,
    depthMm: 400,
  });
  expect(recordOf(doc, 'opening', 'opening:a')).toMatchObject({ atMm: 6000 + 1212, widthMm: 1818 });
});

test('locked items follow their page as well', () => {
  const locked = planWith([page, room, call('setField', { id: 'slab:a', slot: 'locked', value: true }), true1]);
  expect(recordOf(locked, 'slab', 'slab:a')?.outline[2]).toMatchObject({ x: 12_000, y: 8000 });
});

test('what stood there before the page came is right already, and stays', () => {
  const doc = planWith([room, page, true1]);
  expect(recordOf(doc, 'slab', 'slab:a')?.outline[2]).toMatchObject({ x: 6000, y: 4000 });
  expect(isTrued(pageOf(doc))).toBe(true);
});

test('a second page beside a trued one does not carry the floor', () => {
  const second = call('placePage', {
    id: 'page:b',
    floor: FLOOR,
    name: 'Detail',
    image: 'h',
    widthPx: 100,
    heightPx: 100,
  });
  const doc = planWith([page, true1, second]);
  const detail = recordOf(doc, 'page', 'page:b');
  expect(detail && carriesFloor(doc, detail)).toBe(false);
});

test('truing again slides the page under the plan, unless the plan shall follow', () => {
  const traced = planWith([page, room, true1]);
  const again = { id: 'page:a', dimensions: [{ ...level, from: [100, 100], to: [700, 100], lengthMm: 6000 }] };
  const stays = planWith([call('truePage', again)], traced);
  expect(recordOf(stays, 'slab', 'slab:a')?.outline[2]).toMatchObject({ x: 12_000, y: 8000 });
  expect(mapPoint(pageMatrix(pageOf(stays)), [100, 100])).toEqual([2000, 2000]);
  const follows = planWith([call('truePage', { ...again, follow: true })], traced);
  expect(recordOf(follows, 'slab', 'slab:a')?.outline[2]).toMatchObject({ x: 7000, y: 5000 });
});

test('a page that loses its last length keeps its size as a guess, and is not trued', () => {
  const doc = planWith([page, room, true1, call('truePage', { id: 'page:a', dimensions: [] })]);
  expect(isTrued(pageOf(doc))).toBe(false);
  expect(pageOf(doc).guessMmPerPx).toBeCloseTo(20, 9);
  expect(recordOf(doc, 'slab', 'slab:a')?.outline[2]).toMatchObject({ x: 12_000, y: 8000 });
});

test('lengths that make no sense are refused', () => {
  const doc = planWith([page]);
  const of = (dimensions: Json, levelLine: Json = null): string | null =>
    refusalOf(doc, call('truePage', { id: 'page:a', dimensions, levelLine }));
  expect(of([{ ...level, lengthMm: 0 }])).toBe('noSize');
  expect(of([{ ...level, to: [1, 0] }])).toBe('picksTooNear');
  expect(of([level, { ...plumb, to: [600, 600], lengthMm: 100 }])).toBe('dimensionsDisagree');
  expect(of([level], { from: [5, 5], to: [5, 5] })).toBe('picksTooNear');
  expect(refusalOf(emptyPlan, true1)).toBe('unknownRecord');
});

test('a revision of the same size stays trued; of another size it lies where the old one lay and is a guess', () => {
  const trued = planWith([page, room, true1]);
  const next = { id: 'page:a', name: 'Plan, revision B', image: 'other' };
  const same = planWith([call('replacePage', { ...next, widthPx: 2000, heightPx: 1000 })], trued);
  expect(pageOf(same)).toMatchObject({ image: 'other', dimensions: [level] });
  const finer = planWith([call('replacePage', { ...next, widthPx: 4000, heightPx: 2000 })], trued);
  expect(isTrued(pageOf(finer))).toBe(false);
  expect(mapPoint(pageMatrix(pageOf(finer)), [1200, 0])[0]).toBeCloseTo(12_000, 6);
  const again = planWith([call('truePage', { id: 'page:a', dimensions: [{ ...level, to: [1210, 0] }] })], finer);
  expect(recordOf(again, 'slab', 'slab:a')?.outline[2]).toMatchObject({ x: 12_000, y: 8000 });
});
