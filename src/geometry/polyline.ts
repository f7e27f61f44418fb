import type { Point } from './floorShape.ts';
import { between, distance } from './point.ts';

/** Length of a path in the unit of its points (mm on the plan). */
export function pathLength(path: readonly Point[]): number {
  let sum = 0;
  let before: Point | null = null;
  for (const at of path) {
    if (before) sum += distance(before, at);
    before = at;
  }
  return sum;
}

/** The point that lies `along` units from the start; the ends for less than 0 or more than the length; null for no points. */
export function pointAt(path: readonly Point[], along: number): Point | null {
  let before: Point | null = null;
  let left = along;
  for (const at of path) {
    if (before) {
      const step = distance(before, at);
      if (left <= step) return step === 0 || left <= 0 ? before : between(before, at, left / step);
      left -= step;
    }
    before = at;
  }
  return before;
}
