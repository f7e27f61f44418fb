import { expect, test } from 'vitest';
import { trueTool } from '../../../src/canvas/tools/trueTool.ts';
import { isTrued, pageMatrix } from '../../../src/edit/pageMap.ts';
import { mapPoint } from '../../../src/geometry/transform.ts';
import { recordOf, recordsOf } from '../../../src/model/doc.ts';
import { FLOOR, planWith } from '../../support/handPlan.ts';
import { play } from '../../support/play.ts';

/** 2000 by 1000 pixels, guessed at 10 mm a pixel: pixel 100,200 lies at 1000,2000. */
const page = {
  name: 'placePage',
  args: { id: 'page:a', floor: FLOOR, name: 'Plan', image: 'hash', widthPx: 2000, heightPx: 1000, guessMmPerPx: 10 },
};
const slab = {
  name: 'drawSlab',
  args: {
    id: 'slab:a',
    floor: FLOOR,
    ring: [
      [1000, 1000],
      [7000, 1000],
      [7000, 5000],
      [1000, 5000],
    ],
  },
};
const plan = planWith([page, slab]);
const settings = { page: 'page:a' };

test('two ends and a length: the page is trued and carries what was traced', () => {
  const { doc, refused, undo } = play(trueTool, plan, 'tap 1000,1000  tap 7000,1000  type 12000', { settings });
  expect(refused).toEqual([]);
  const trued = recordOf(doc, 'page', 'page:a');
  expect(trued && isTrued(trued)).toBe(true);
  expect(trued?.dimensions).toEqual([{ from: [100, 100], to: [700, 100], lengthMm: 12_000, by: 'mouse' }]);
  // The first end stays where it was, 20 mm a pixel from there.
  expect(recordsOf(doc, 'slab')[0]?.outline.map(({ x, y }) => [x, y])).toEqual([
    [1000, 1000],
    [13_000, 1000],
    [13_000, 9000],
    [1000, 9000],
  ]);
  expect(undo()).toEqual(plan);
});

test('a second length across shows a stretch; what is drawn stays unless it is told to follow', () => {
  const sentence = 'tap 1000,1000  tap 7000,1000  type 12000  tap 1000,1000  tap 1000,9000  type 8080';
  const stays = play(trueTool, plan, sentence, { settings });
  expect(stays.refused).toEqual([]);
  expect(recordsOf(stays.doc, 'slab')[0]?.outline[2]).toMatchObject({ x: 13_000, y: 9000 });
  const follows = play(trueTool, plan, sentence, { settings: { ...settings, follow: true } });
  expect(recordsOf(follows.doc, 'slab')[0]?.outline[2]).toMatchObject({ x: 13_000, y: 9080 });
});

test('the level line turns the page about the first end', () => {
  const sentence = 'tap 1000,1000  tap 7000,1600';
  const once = play(trueTool, plan, 'tap 1000,1000  tap 7000,1000  type 6000', { settings });
  const { doc, refused } = play(trueTool, once.doc, sentence, { settings: { ...settings, level: true } });
  expect(refused).toEqual([]);
  const trued = recordOf(doc, 'page', 'page:a');
  const [a, b] = [trued?.levelLine?.from, trued?.levelLine?.to].map(
    (pixel) => trued && pixel && mapPoint(pageMatrix(trued), pixel),
  );
  expect(a?.[1]).toBeCloseTo(b?.[1] ?? NaN, 6);
  expect(a?.[0]).toBeCloseTo(1000, 2);
});

test('ends off the page or too near, lengths out of nowhere: refused, and nothing is written', () => {
  const { doc, refused } = play(trueTool, plan, 'type 500  tap -500,100  tap 1000,1000  tap 1010,1000  type 5000', {
    settings,
  });
  expect(refused).toEqual(['pickTwoEnds', 'pickOffPage', 'picksTooNear']);
  expect(doc).toBe(plan);
  expect(play(trueTool, plan, 'tap 1000,1000').refused).toEqual(['pageNeeded']);
});

test('lengths that cannot both be right are refused', () => {
  // 6.0 m level, and 1.0 m along a slant that covers 6 m level: no pair of scales does that.
  const sentence = 'tap 1000,1000  tap 7000,1000  type 6000  tap 1000,1000  tap 7000,7000  type 1000';
  const { doc, refused } = play(trueTool, plan, sentence, { settings });
  expect(refused).toEqual(['dimensionsDisagree']);
  expect(recordOf(doc, 'page', 'page:a')?.dimensions).toHaveLength(1);
});
