import type { Point } from '../../geometry/floorShape.ts';
import { minus, plus, quarterTurn, times, unit } from '../../geometry/point.ts';

/*
 *        --------------   shifted by `by` to the left
 *       /    ^
 *      /     | by
 *     / ,-----------      the path runs to the right
 *    / /
 */

/** A mitre longer than this many times the shift is cut off: sharp corners would fly away. */
const MITRE_LIMIT = 4;

function leftOf(from: Point, to: Point): Point {
  return times(quarterTurn(unit(minus(to, from))), -1);
}

/** Where the corner between two edges goes when both move left by `by`. */
function shiftedCorner(at: Point, before: Point, after: Point, by: number): readonly Point[] {
  const sum = plus(before, after);
  const square = sum[0] * sum[0] + sum[1] * sum[1];
  // |sum| = 2 cos(half the turn); the mitre is by / cos(half the turn) long.
  if (square * MITRE_LIMIT * MITRE_LIMIT < 4) return [plus(at, times(before, by)), plus(at, times(after, by))];
  return [plus(at, times(sum, (2 * by) / square))];
}

/**
 * A path moved sideways, to the left of its direction, with mitred corners.
 * For drawing only: it does not clean up loops that a large shift makes.
 */
export function shiftPath(path: readonly Point[], by: number, closed: boolean): readonly Point[] {
  const points = path.filter((at, i) => i === 0 || at[0] !== path[i - 1]?.[0] || at[1] !== path[i - 1]?.[1]);
  const count = points.length;
  if (by === 0 || count < 2) return points;
  const shifted: Point[] = [];
  for (const [i, at] of points.entries()) {
    const last = points[i - 1] ?? (closed ? points[count - 1] : undefined);
    const next = points[i + 1] ?? (closed ? points[0] : undefined);
    const before = last ? leftOf(last, at) : null;
    const after = next ? leftOf(at, next) : null;
    if (before && after) shifted.push(...shiftedCorner(at, before, after, by));
    else shifted.push(plus(at, times(before ?? after ?? [0, 0], by)));
  }
  return shifted;
}

/** The body of a line with a thickness: both sides, butt ends. */
export function strip(path: readonly Point[], thickness: number): readonly Point[] {
  return [...shiftPath(path, thickness / 2, false), ...shiftPath(path, -thickness / 2, false).toReversed()];
}
