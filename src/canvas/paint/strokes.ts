import type { Point } from '../../geometry/floorShape.ts';
import { along, distance, minus, quarterTurn, times, unit } from '../../geometry/point.ts';
import type { LinePrim, Teeth } from './prim.ts';
import { shiftPath } from './pathShift.ts';

/** A line as it is really drawn at one scale: shift and teeth turned into plain paths, floor mm. */
export interface Strokes {
  readonly path: readonly Point[];
  readonly closed: boolean;
  /** Bars and barbs to be stroked `teethPx` wide. */
  readonly bars: readonly (readonly [Point, Point])[];
  readonly triangles: readonly (readonly [Point, Point, Point])[];
  readonly teethPx: number;
}

/** A line of this many teeth is far off screen or a mistake: the rest is left out. */
const MOST_TEETH = 4000;

/** Places along a path: every `step`, the first half a step in, with the direction there. */
function placesAlong(path: readonly Point[], step: number): { readonly at: Point; readonly run: Point }[] {
  const places: { at: Point; run: Point }[] = [];
  let next = step / 2;
  for (let i = 1; i < path.length; i += 1) {
    const from = path[i - 1] as Point;
    const to = path[i] as Point;
    const size = distance(from, to);
    const run = unit(minus(to, from));
    while (next <= size && places.length < MOST_TEETH) {
      places.push({ at: along(from, run, next), run });
      next += step;
    }
    next -= size;
  }
  return places;
}

function teethOf(path: readonly Point[], teeth: Teeth, pxPerMm: number): Pick<Strokes, 'bars' | 'triangles'> {
  const reach = teeth.reachPx / pxPerMm;
  const bars: (readonly [Point, Point])[] = [];
  const triangles: (readonly [Point, Point, Point])[] = [];
  for (const { at, run } of placesAlong(path, teeth.everyPx / pxPerMm)) {
    const left = times(quarterTurn(run), -1);
    if (teeth.shape === 'bar') bars.push([at, along(at, left, reach)]);
    else if (teeth.shape === 'triangle')
      triangles.push([along(at, run, -reach / 2), along(at, left, reach), along(at, run, reach / 2)]);
    else
      bars.push([along(along(at, left, reach), run, -reach * 0.7), along(along(at, left, -reach), run, reach * 0.7)]);
  }
  return { bars, triangles };
}

/** What a line prim looks like at a scale. Screen and paper both draw exactly this. */
export function strokesOf(line: LinePrim, pxPerMm: number): Strokes {
  const closed = line.closed ?? false;
  const path = line.shiftPx ? shiftPath(line.path, line.shiftPx / pxPerMm, closed) : line.path;
  const round = closed && path[0] ? [...path, path[0]] : path;
  const teeth = line.teeth ? teethOf(round, line.teeth, pxPerMm) : { bars: [], triangles: [] };
  return { path, closed, ...teeth, teethPx: line.teeth?.px ?? 0 };
}
