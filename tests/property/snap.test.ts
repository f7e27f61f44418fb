import fc from 'fast-check';
import { expect, test } from 'vitest';
import { planIndex } from '../../src/canvas/planIndex.ts';
import { HOLD, rankOf, snapTo } from '../../src/canvas/snap/engine.ts';
import type { SnapScene } from '../../src/canvas/snap/floorLines.ts';
import { SNAP_KINDS, type SnapQuery } from '../../src/canvas/snap/snap.ts';
import { snapSources } from '../../src/canvas/snap/sources.ts';
import type { Point } from '../../src/geometry/floorShape.ts';
import { toGrid } from '../../src/geometry/grid.ts';
import { distance } from '../../src/geometry/point.ts';
import type { CommandCall, RecordId } from '../../src/model/cell.ts';
import { FLOOR, openingOn, planWith, room, wall } from '../support/handPlan.ts';

const slanting: CommandCall = {
  name: 'drawSlab',
  args: {
    id: 'slab:b',
    floor: FLOOR,
    ring: [
      [7000, 300],
      [11_313, 1717],
      [9876, 5432],
      [6543, 4321],
    ],
  },
};
const column: CommandCall = {
  name: 'placeObstruction',
  args: {
    id: 'obstruction:a',
    floor: FLOOR,
    kind: 'column',
    under: 'none',
    shape: { form: 'circle', at: [2000, 2500], diameterMm: 600 },
  },
};
const index = planIndex(planWith([room, wall, openingOn('wall:a', 0, 500), slanting, column]), FLOOR);

const anywhere: fc.Arbitrary<Point> = fc.tuple(
  fc.double({ min: -1000, max: 13_000, noNaN: true }),
  fc.double({ min: -1000, max: 7000, noNaN: true }),
);
const corners: readonly Point[] = index.items.flatMap(({ shape }) => shape.points);
const step = fc.double({ min: -120, max: 120, noNaN: true });
/** Where something is to be met: about a corner, or about a place between two corners. */
const nearby = fc
  .tuple(fc.constantFrom(...corners), fc.constantFrom(...corners), fc.constantFrom(0, 0.5, 0.37), step, step)
  .map(([a, b, share, dx, dy]): Point => [a[0] + (b[0] - a[0]) * share + dx, a[1] + (b[1] - a[1]) * share + dy]);
const point = fc.oneof(anywhere, nearby, nearby);
const onGrid = anywhere.map(([x, y]): Point => [toGrid(x), toGrid(y)]);
const scene: fc.Arbitrary<SnapScene> = fc.array(onGrid, { maxLength: 4 }).map((own) => ({ index, own }));
/** Nearly straight across or down from the last point. */
const straightFrom = ([x, y]: Point): fc.Arbitrary<Point> =>
  fc
    .tuple(fc.double({ min: -6000, max: 6000, noNaN: true }), step, fc.boolean())
    .map(([run, off, across]): Point => (across ? [x + run, y + off] : [x + off, y + run]));
const query = (from: Point | null): fc.Arbitrary<SnapQuery> =>
  fc.record({
    at: from ? fc.oneof(point, straightFrom(from)) : point,
    from: fc.constant(from),
    pxPerMm: fc.double({ min: 0.01, max: 2, noNaN: true }),
    reachPx: fc.constantFrom(10, 24),
    held: fc.constantFrom(null, ...SNAP_KINDS),
    off: fc.constant(false),
    skip: fc.constant(new Set<RecordId>()),
  });
const moment = scene.chain((one) => fc.tuple(fc.constant(one), query(one.own.at(-1) ?? null)));
/** A seed of its own: that every kind of snap is met is itself one of the laws. */
const RUNS = { numRuns: 2000, seed: 3 };

test('never beyond reach; the answer lies on the grid', () => {
  const met = new Set<string>();
  fc.assert(
    fc.property(moment, ([where, asked]) => {
      const found = snapTo(asked, snapSources(where, null));
      met.add(found.kind);
      const reach = asked.held === found.kind ? asked.reachPx * HOLD : asked.reachPx;
      const allowed = found.kind === 'free' ? Infinity : reach;
      expect(distance(found.at, asked.at) * asked.pxPerMm).toBeLessThanOrEqual(allowed);
      expect(found.at).toEqual([toGrid(found.at[0]), toGrid(found.at[1])]);
    }),
    RUNS,
  );
  // A law that nothing was tried against says nothing. Pages have no lines yet, and the grid is off here.
  expect(SNAP_KINDS.filter((kind) => !met.has(kind))).toEqual(['pageLine', 'grid']);
});

test('snapping a snapped point does nothing, unless something of a higher rank has come within reach', () => {
  let stayed = 0;
  fc.assert(
    fc.property(moment, ([where, asked]) => {
      const sources = snapSources(where, null);
      const once = snapTo(asked, sources);
      const twice = snapTo({ ...asked, at: once.at, held: once.kind }, sources);
      expect(rankOf(twice.kind)).toBeLessThanOrEqual(rankOf(once.kind));
      if (twice.kind !== once.kind) return;
      stayed += 1;
      expect(twice.at).toEqual(once.at);
    }),
    RUNS,
  );
  expect(stayed).toBeGreaterThan(RUNS.numRuns / 2);
});

test('another source never worsens the rank', () => {
  fc.assert(
    fc.property(moment, fc.nat({ max: 8 }), fc.nat({ max: 8 }), ([where, asked], from, to) => {
      const all = snapSources(where, 50);
      const some = all.slice(Math.min(from, to), Math.max(from, to));
      expect(rankOf(snapTo(asked, all).kind)).toBeLessThanOrEqual(rankOf(snapTo(asked, some).kind));
    }),
    RUNS,
  );
});

test('what is skipped is never met; off meets nothing', () => {
  const skip = new Set<RecordId>(['slab:a', 'wall:a', 'opening:a']);
  fc.assert(
    fc.property(moment, ([where, asked]) => {
      const found = snapTo({ ...asked, skip }, snapSources({ ...where, own: [] }, null));
      if (found.on) expect(skip.has(found.on)).toBe(false);
      expect(snapTo({ ...asked, off: true }, snapSources(where, 50)).kind).toBe('free');
    }),
    RUNS,
  );
});
