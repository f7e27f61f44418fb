import { expect, test } from 'vitest';
import { hitAt, type HitQuery } from '../../../src/canvas/hit.ts';
import { planIndex } from '../../../src/canvas/planIndex.ts';
import type { Point } from '../../../src/geometry/floorShape.ts';
import { FLOOR, openingOn, planWith, room, wall } from '../../support/handPlan.ts';

const finding = {
  name: 'drawFinding',
  args: {
    id: 'finding:a',
    floor: FLOOR,
    kind: 'oil_light',
    ring: [
      [500, 2500],
      [2500, 2500],
      [2500, 3500],
      [500, 3500],
    ],
  },
};
const zone = {
  name: 'drawZone',
  args: {
    id: 'zone:a',
    floor: FLOOR,
    ring: [
      [0, 0],
      [3000, 0],
      [3000, 4000],
      [0, 4000],
    ],
  },
};
const note = { name: 'placeNote', args: { id: 'note:a', floor: FLOOR, at: [2000, 3000], text: 'Here' } };
const column = {
  name: 'placeObstruction',
  args: {
    id: 'obstruction:a',
    floor: FLOOR,
    kind: 'column',
    under: 'none',
    shape: { form: 'circle', at: [5000, 3000], diameterMm: 400 },
  },
};
const index = planIndex(planWith([room, wall, openingOn('wall:a', 0, 500), zone, finding, note, column]), FLOOR);
const at = (place: Point, more: Partial<HitQuery> = {}) =>
  hitAt(index, { at: place, pxPerMm: 0.1, reachPx: 8, picked: [], aims: null, ...more });

test('spots lie on lines, lines on areas, the smallest area is meant', () => {
  expect(at([2010, 3010])).toEqual({ id: 'note:a', corner: null, edge: null });
  expect(at([3500, 1020])?.id).toBe('wall:a');
  expect(at([1000, 3000])?.id).toBe('finding:a');
  expect(at([1000, 2000])?.id).toBe('zone:a');
  expect(at([4500, 2000])?.id).toBe('slab:a');
  expect(at([5050, 3050])).toEqual({ id: 'obstruction:a', corner: null, edge: null });
  expect(at([9000, 9000])).toBeNull();
});

test('a column that a crack runs up to is what is meant inside it', () => {
  const crack = {
    name: 'drawCrack',
    args: {
      id: 'crack:a',
      floor: FLOOR,
      path: [
        [4000, 3000],
        [5000, 3000],
      ],
      widthMm: null,
      depthMm: null,
      behaviour: 'static',
    },
  };
  const both = planIndex(planWith([room, column, crack]), FLOOR);
  const found = (place: Point) => hitAt(both, { at: place, pxPerMm: 0.1, reachPx: 8, picked: [], aims: null })?.id;
  expect(found([5000, 3000])).toBe('obstruction:a');
  expect(found([4500, 3010])).toBe('crack:a');
});

test('an opening lies on its wall; beside it the wall is met with its edge', () => {
  expect(at([2000, 1000])).toEqual({ id: 'opening:a', corner: null, edge: 0 });
  expect(at([4000, 2000])).toEqual({ id: 'wall:a', corner: null, edge: 1 });
});

test('a tool that aims looks through what it is not meant for', () => {
  expect(at([2000, 1000], { aims: ['wall', 'slab'] })?.id).toBe('wall:a');
  expect(at([1000, 3990], { aims: ['slab'] })).toEqual({ id: 'slab:a', corner: null, edge: 2 });
  expect(at([1000, 3000], { aims: ['slab'] })).toEqual({ id: 'slab:a', corner: null, edge: null });
});

test('corners and edges of what is picked come first', () => {
  const picked = ['slab:a'] as const;
  expect(at([30, 4010], { picked })).toEqual({ id: 'slab:a', corner: 3, edge: null });
  expect(at([1000, 3990], { picked })).toEqual({ id: 'slab:a', corner: null, edge: 2 });
  expect(at([1000, 3000], { picked })?.id).toBe('finding:a');
  const outside = 240 / Math.SQRT2;
  expect(at([-outside, 4000 + outside], { picked })).toEqual({ id: 'slab:a', corner: 3, edge: null });
  expect(at([-outside, 4000 + outside])).toBeNull();
});

test('a finger reaches farther than a mouse', () => {
  expect(at([4000, -150])).toBeNull();
  expect(at([4000, -150], { reachPx: 24 })?.id).toBe('slab:a');
});
