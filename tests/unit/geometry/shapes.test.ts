import { describe, expect, it } from 'vitest';
import { toGrid } from '../../../src/geometry/grid.ts';
import { labelSpot } from '../../../src/geometry/labelSpot.ts';
import { pathLength, pointAt } from '../../../src/geometry/polyline.ts';
import { regionIndex } from '../../../src/geometry/regionIndex.ts';
import {
  perimeter,
  ringContains,
  ringFault,
  selfCrossing,
  signedArea,
  tidyRing,
  wound,
} from '../../../src/geometry/ring.ts';
import { crossing, nearestOnSegment } from '../../../src/geometry/segment.ts';
import { rectangle } from '../../support/floors.ts';

describe('the plan grid', () => {
  it('holds 0.1 mm, 1/64 in and 1 in exactly', () => {
    for (const step of [0.1, 25.4 / 64, 25.4])
      for (let n = -400; n <= 400; n += 1) expect(toGrid(n * step)).toBeCloseTo(n * step, 10);
  });
});

describe('segments', () => {
  it('know their nearest place', () => {
    expect(nearestOnSegment([5, 3], [0, 0], [10, 0])).toEqual({ at: [5, 0], share: 0.5, distance: 3 });
    expect(nearestOnSegment([-4, 3], [0, 0], [10, 0])).toMatchObject({ at: [0, 0], distance: 5 });
    expect(nearestOnSegment([3, 4], [0, 0], [0, 0]).distance).toBe(5);
  });
  it('cross, touch, or do neither', () => {
    expect(crossing([0, 0], [10, 10], [0, 10], [10, 0])?.at).toEqual([5, 5]);
    expect(crossing([0, 0], [10, 0], [5, 0], [5, 9])?.at).toEqual([5, 0]);
    expect(crossing([0, 0], [10, 0], [0, 1], [10, 1])).toBeNull();
    expect(crossing([0, 0], [10, 0], [11, -1], [11, 1])).toBeNull();
  });
});

describe('rings', () => {
  const square = rectangle(0, 0, 10, 10);
  it('have area, direction and perimeter', () => {
    expect(signedArea(square)).toBe(100);
    expect(signedArea(square.toReversed())).toBe(-100);
    expect(signedArea(wound(square, false))).toBe(-100);
    expect(perimeter(square)).toBe(40);
  });
  it('keep their digits far from the origin', () => {
    expect(signedArea(square.map(([x, y]) => [x + 1e9, y - 1e9]))).toBe(100);
  });
  it('contain their inside and their edge', () => {
    expect([ringContains(square, [5, 5]), ringContains(square, [0, 5]), ringContains(square, [11, 5])]).toEqual([
      true,
      true,
      false,
    ]);
  });
  it('say where they cross, touch or run back', () => {
    expect(selfCrossing(square)).toBeNull();
    expect(
      selfCrossing([
        [0, 0],
        [10, 10],
        [10, 0],
        [0, 10],
      ]),
    ).toEqual([5, 5]);
    expect(
      selfCrossing([
        [0, 0],
        [10, 0],
        [10, 10],
        [5, 0],
        [0, 10],
      ]),
    ).toEqual([5, 0]);
    expect(
      selfCrossing([
        [0, 0],
        [10, 0],
        [5, 0],
        [5, 9],
      ]),
    ).toEqual([7.5, 0]);
  });
  it('are tidied of repeats and of corners on a straight run', () => {
    expect(
      tidyRing([
        [0, 0],
        [5, 0],
        [10, 0],
        [10, 0],
        [10, 10],
        [0, 10],
        [0, 0],
      ]),
    ).toEqual(square);
  });
  it('are refused by code', () => {
    expect(
      ringFault([
        [0, 0],
        [10, 0],
      ])?.code,
    ).toBe('tooFewCorners');
    expect(
      ringFault([
        [0, 0],
        [10, 0],
        [20, 0],
      ])?.code,
    ).toBe('noArea');
    expect(
      ringFault([
        [0, 0],
        [Infinity, 0],
        [20, 0],
      ])?.code,
    ).toBe('notANumber');
    expect(ringFault(square)).toBeNull();
  });
});

describe('paths', () => {
  const path = [
    [0, 0],
    [3, 4],
    [3, 14],
  ] as const;
  it('have a length and points along it', () => {
    expect(pathLength(path)).toBe(15);
    expect([pointAt(path, -1), pointAt(path, 2.5), pointAt(path, 10), pointAt(path, 99), pointAt([], 1)]).toEqual([
      [0, 0],
      [1.5, 2],
      [3, 9],
      [3, 14],
      null,
    ]);
  });
});

describe('a spot for a tag', () => {
  it('lies inside, also in an L, a frame and a sliver', () => {
    const ell = [
      [0, 0],
      [10_000, 0],
      [10_000, 1_000],
      [1_000, 1_000],
      [1_000, 8_000],
      [0, 8_000],
    ] as const;
    const frame = [rectangle(0, 0, 9_000, 9_000), rectangle(500, 500, 8_000, 8_000).toReversed()];
    const sliver = [
      [0, 0],
      [9_000, 8_000],
      [9_010, 8_000],
    ] as const;
    for (const polygon of [[ell], frame, [sliver]]) {
      const spot = labelSpot([polygon]);
      expect(spot && regionIndex([polygon]).contains(spot)).toBe(true);
    }
    expect(labelSpot([])).toBeNull();
  });
  it('is about as deep as can be', () => {
    const index = regionIndex([[rectangle(0, 0, 8_000, 4_000)]]);
    expect(index.nearest(labelSpot([[rectangle(0, 0, 8_000, 4_000)]]) ?? [0, 0], 9_000)?.distance).toBeGreaterThan(
      1_900,
    );
  });
});
