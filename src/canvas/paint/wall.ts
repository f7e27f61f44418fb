import type { Point } from '../../geometry/floorShape.ts';
import { along, distance, minus, quarterTurn, times, unit } from '../../geometry/point.ts';
import { pathLength } from '../../geometry/polyline.ts';
import { LINE } from '../look.ts';
import { strip } from './pathShift.ts';
import type { Paint, Prim } from './prim.ts';
import type { WallView } from './view.ts';

/** The part of a path between two distances along it. */
export function pathBetween(path: readonly Point[], fromMm: number, toMm: number): readonly Point[] {
  const part: Point[] = [];
  let done = 0;
  for (let i = 1; i < path.length; i += 1) {
    const a = path[i - 1] as Point;
    const b = path[i] as Point;
    const size = distance(a, b);
    const run = unit(minus(b, a));
    const enter = Math.max(0, fromMm - done);
    const leave = Math.min(size, toMm - done);
    if (leave > enter) {
      if (part.length === 0) part.push(along(a, run, enter));
      part.push(leave === size ? b : along(a, run, leave));
    }
    done += size;
  }
  return part;
}

/** What is left of a wall between its openings, as paths along its middle. */
export function wallPieces({ wall, openings }: WallView): (readonly Point[])[] {
  const pieces: (readonly Point[])[] = [];
  let from = 0;
  for (const opening of openings.toSorted((a, b) => a.atMm - b.atMm)) {
    if (opening.atMm > from) pieces.push(pathBetween(wall.path, from, opening.atMm));
    from = Math.max(from, opening.atMm + opening.widthMm);
  }
  const end = pathLength(wall.path);
  if (end > from) pieces.push(pathBetween(wall.path, from, end));
  return pieces.filter((piece) => piece.length > 1);
}

/** The gap of an opening, as a path along the middle of its wall. */
export function openingPath(
  { wall }: WallView,
  opening: { readonly atMm: number; readonly widthMm: number },
): readonly Point[] {
  return pathBetween(wall.path, opening.atMm, opening.atMm + opening.widthMm);
}

/** A wall that stands on the slab: solid, with gaps where its openings are. A thin one keeps a line's width. */
export const paintWall: Paint<WallView> = (view) =>
  wallPieces(view).flatMap((piece): Prim[] => {
    const ring = strip(piece, view.wall.thicknessMm);
    return [
      { kind: 'area', region: [[ring]], fill: 'ink' },
      { kind: 'line', path: ring, closed: true, ink: 'ink', px: LINE.thin },
    ];
  });

const JAMB_PX = 4;
/** A jamb stands out of a thin wall by so much on each side. */
const JAMB_OVER_PX = 6;

/** The jambs of each opening: short strokes across the wall, longer than it is thick. */
export const paintOpenings: Paint<WallView> = (view, _none, look) =>
  view.openings.flatMap((opening) => {
    const path = openingPath(view, opening);
    const first = path[0];
    const second = path[1];
    const last = path.at(-1);
    const beforeLast = path.at(-2);
    if (!first || !second || !last || !beforeLast) return [];
    const half = view.wall.thicknessMm / 2 + JAMB_OVER_PX / look.pxPerMm;
    const jamb = (at: Point, run: Point): Prim => ({
      kind: 'line',
      path: [along(at, times(quarterTurn(run), -1), half), along(at, quarterTurn(run), half)],
      ink: 'ink',
      px: JAMB_PX,
    });
    return [jamb(first, unit(minus(second, first))), jamb(last, unit(minus(last, beforeLast)))];
  });
