import type { Point } from '../../geometry/floorShape.ts';
import { pointToGrid } from '../../geometry/grid.ts';
import { distance, isSame, minus } from '../../geometry/point.ts';
import { signedArea } from '../../geometry/ring.ts';

/*
 * Turn is what a person with a tape turns by at a corner: counted from the last edge, clockwise on the
 * screen (y down), degrees, 0 straight on. The first edge is counted from east, to the right.
 */

/** Heading of a step in degrees, clockwise from east, -180 to 180. */
export function headingDeg(from: Point, to: Point): number {
  const [dx, dy] = minus(to, from);
  return (Math.atan2(dy, dx) * 180) / Math.PI;
}

/** Heading of the last edge that has a length; east when there is none. */
export function lastHeadingDeg(points: readonly Point[]): number {
  for (let index = points.length - 1; index > 0; index--) {
    const from = points[index - 1];
    const to = points[index];
    if (from && to && !isSame(from, to)) return headingDeg(from, to);
  }
  return 0;
}

/** The square turn by which an outline goes round: right unless what is drawn goes round to the left. */
export function squareTurnDeg(points: readonly Point[]): 90 | -90 {
  return signedArea(points) < 0 ? -90 : 90;
}

/** Length and turn of the line from the last point to the cursor: what the two boxes show. */
export function liveLine(points: readonly Point[], cursor: Point | null): { lengthMm: number; turnDeg: number } | null {
  const last = points.at(-1);
  if (!last || !cursor || isSame(last, cursor)) return null;
  const turn = headingDeg(last, cursor) - lastHeadingDeg(points);
  return { lengthMm: distance(last, cursor), turnDeg: wrapped(turn) };
}

/** The point that a typed length and turn lead to; what was not typed comes from the live line. Null without a length. */
export function typedPoint(
  points: readonly Point[],
  cursor: Point | null,
  typed: { readonly lengthMm?: number; readonly turnDeg?: number },
): Point | null {
  const last = points.at(-1);
  const live = liveLine(points, cursor);
  const lengthMm = typed.lengthMm ?? live?.lengthMm;
  if (!last || lengthMm === undefined) return null;
  const heading = lastHeadingDeg(points) + (typed.turnDeg ?? live?.turnDeg ?? 0);
  const [x, y] = exactDirection(heading);
  return pointToGrid([last[0] + x * lengthMm, last[1] + y * lengthMm]);
}

/** Quarter turns are exact: a typed 4 m edge that is square ends on the same line it started from. */
function exactDirection(heading: number): Point {
  const quarter = heading / 90;
  if (Math.abs(quarter - Math.round(quarter)) < 1e-9) {
    const turns: readonly Point[] = [
      [1, 0],
      [0, 1],
      [-1, 0],
      [0, -1],
    ];
    return turns[((Math.round(quarter) % 4) + 4) % 4] ?? [1, 0];
  }
  const angle = (heading * Math.PI) / 180;
  return [Math.cos(angle), Math.sin(angle)];
}

function wrapped(degrees: number): number {
  const turn = ((((degrees + 180) % 360) + 360) % 360) - 180;
  return turn === -180 ? 180 : turn;
}
