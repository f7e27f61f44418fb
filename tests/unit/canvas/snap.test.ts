import { expect, test } from 'vitest';
import { planIndex } from '../../../src/canvas/planIndex.ts';
import { snapTo } from '../../../src/canvas/snap/engine.ts';
import { SNAP_KINDS, type Snap, type SnapQuery } from '../../../src/canvas/snap/snap.ts';
import { snapSources } from '../../../src/canvas/snap/sources.ts';
import type { Point } from '../../../src/geometry/floorShape.ts';
import { snapWord, snapWords } from '../../../src/words/handWords.ts';
import { emptyPlan, FLOOR, openingOn, planWith, room, wall } from '../../support/handPlan.ts';

const plan = planWith([room, wall, openingOn('wall:a', 0, 500)]);

/** 0.1 px a millimetre, 10 px of reach: 100 mm. */
function snapAt(
  at: Point,
  more: Partial<SnapQuery> & { own?: readonly Point[]; gridMm?: number; doc?: typeof plan } = {},
): Snap {
  const { own = [], gridMm = null, doc = plan, ...query } = more;
  const asked = {
    at,
    from: own.at(-1) ?? null,
    pxPerMm: 0.1,
    reachPx: 10,
    held: null,
    off: false,
    skip: new Set<never>(),
    ...query,
  };
  return snapTo(asked, snapSources({ index: planIndex(doc, FLOOR), own }, gridMm));
}

test('a corner beats an edge that is nearer', () => {
  expect(snapAt([5920, 1])).toMatchObject({ kind: 'corner', at: [6000, 0], on: 'slab:a' });
  expect(snapAt([5880, 1])).toMatchObject({ kind: 'edge', at: [5880, 0], on: 'slab:a' });
});

test('jambs are corners, middles of edges are middles', () => {
  expect(snapAt([1510, 1020])).toMatchObject({ kind: 'corner', at: [1500, 1000], on: 'opening:a' });
  expect(snapAt([3020, 30])).toMatchObject({ kind: 'middle', at: [3000, 0] });
});

test('the foot of a line on a wall is square to it', () => {
  const found = snapAt([1250, 3980], { own: [[1200, 1500]] });
  expect(found).toMatchObject({ kind: 'crossing', at: [1200, 4000] });
  const leaning = planWith([
    {
      name: 'drawWall',
      args: {
        id: 'wall:b',
        floor: FLOOR,
        path: [
          [0, 0],
          [3000, 1000],
        ],
        thicknessMm: 100,
      },
    },
  ]);
  const foot = snapAt([2380, 800], { own: [[2000, 1900]], doc: leaning });
  expect(foot.kind).toBe('square');
  expect(foot.at).toEqual([2370, 790]);
  expect(foot.guides).toHaveLength(1);
});

test('square to the last edge, in any direction', () => {
  const found = snapAt([8000 - 480, 8000 + 1020], {
    own: [
      [7000, 7500],
      [8000, 8000],
    ],
  });
  expect(found.kind).toBe('square');
  expect((found.at[0] - 8000) * 1000 + (found.at[1] - 8000) * 500).toBeCloseTo(0, -1);
});

test('straight from the last point, and where that meets the line from the first: a rectangle closes', () => {
  const own: readonly Point[] = [
    [7000, 7000],
    [9000, 7000],
    [9000, 8500],
  ];
  expect(snapAt([9040, 9000], { own: own.slice(0, 2) }).at).toEqual([9000, 9000]);
  expect(snapAt([7040, 8530], { own })).toMatchObject({ kind: 'crossing', at: [7000, 8500] });
});

test('parallel and in line with edges near by', () => {
  const leaning = planWith([
    {
      name: 'drawWall',
      args: {
        id: 'wall:b',
        floor: FLOOR,
        path: [
          [0, 0],
          [3000, 1000],
        ],
        thicknessMm: 100,
      },
    },
  ]);
  const beside = snapAt([2100, 1650], { own: [[300, 1000]], doc: leaning });
  expect(beside).toMatchObject({ kind: 'parallel', on: 'wall:b' });
  expect(snapAt([3900, 1320], { doc: leaning })).toMatchObject({ kind: 'extension', on: 'wall:b', at: [3906, 1302] });
});

test('the corners of the line being drawn can be met, but for the one it goes on from', () => {
  const own: readonly Point[] = [
    [7000, 7000],
    [9000, 7000],
    [9000, 8500],
  ];
  expect(snapAt([7050, 7040], { own })).toMatchObject({ kind: 'corner', at: [7000, 7000], on: null });
  expect(snapAt([9050, 8540], { own }).kind).not.toBe('corner');
});

test('on a circle: its round and its middle, not the corners it is drawn with', () => {
  const column = {
    name: 'placeObstruction',
    args: {
      id: 'obstruction:a',
      floor: FLOOR,
      kind: 'column',
      under: 'none',
      shape: { form: 'circle', at: [9000, 9000], diameterMm: 1000 },
    },
  };
  const doc = planWith([column]);
  expect(snapAt([9550, 9000], { doc })).toMatchObject({
    kind: 'edge',
    at: [expect.closeTo(9500, 0), 9000],
    on: 'obstruction:a',
  });
  expect(snapAt([9030, 8980], { doc })).toMatchObject({ kind: 'middle', at: [9000, 9000] });
});

test('a kind that holds keeps one and a half times the reach', () => {
  expect(snapAt([6000 + 130, -100]).kind).not.toBe('corner');
  expect(snapAt([6000 + 100, -100], { held: 'corner' })).toMatchObject({ kind: 'corner', at: [6000, 0] });
});

test('off, skipped, and the grid for sketching', () => {
  expect(snapAt([6010.0004, 10], { off: true })).toMatchObject({ kind: 'free', at: [6010, 10] });
  const rest = snapAt([6010, 10], { skip: new Set(['slab:a'] as const) });
  expect(rest.on).not.toBe('slab:a');
  expect(snapAt([123, 177], { gridMm: 50, doc: emptyPlan })).toMatchObject({ kind: 'grid', at: [100, 200] });
});

test('every kind has its word', () => {
  expect(SNAP_KINDS.filter((kind) => snapWords[kind] === undefined)).toEqual([]);
  expect(snapWord({ kind: 'square', on: 'wall:a' })).toBe('square to wall');
  expect(snapWord({ kind: 'square', on: null })).toBe('square');
  expect(snapWord({ kind: 'free', on: null })).toBe('');
});
