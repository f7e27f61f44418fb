import type { Point } from '../../src/geometry/floorShape.ts';
import type { Box } from '../../tests/support/oracles/planeSets.ts';

/** An item with the box round it, so that those far off are passed over. */
export interface Boxed<T> {
  readonly item: T;
  readonly box: Box;
}

export function boxed<T>(items: readonly T[], pointsOf: (item: T) => readonly Point[]): Boxed<T>[] {
  return items.map((item) => ({ item, box: boxOfPoints(pointsOf(item)) }));
}

export function itemsIn<T>(items: readonly Boxed<T>[], box: Box): T[] {
  return items.filter((one) => boxesMeet(one.box, box)).map((one) => one.item);
}

export function boxOfPoints(points: readonly Point[]): Box {
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const [x, y] of points) {
    minX = Math.min(minX, x);
    minY = Math.min(minY, y);
    maxX = Math.max(maxX, x);
    maxY = Math.max(maxY, y);
  }
  return { minX, minY, maxX, maxY };
}

export function boxesMeet(one: Box, other: Box): boolean {
  return one.minX <= other.maxX && other.minX <= one.maxX && one.minY <= other.maxY && other.minY <= one.maxY;
}
