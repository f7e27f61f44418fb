import type { Point } from '../geometry/floorShape.ts';
import { pointToGrid } from '../geometry/grid.ts';
import { along, cross, minus, quarterTurn, unit } from '../geometry/point.ts';
import type { ItemShape } from './itemShape.ts';

/*
 *        \                 /            \               /
 *         a ==== edge ==== b      ->     a ==== edge == b     neighbours keep their direction;
 *                                                              a doorway and the walls beside it
 *                                                              lie in one straight run and move together
 */

/** Two edges count as one straight run below this sine of the angle between them (about 0.06 degrees). */
const STRAIGHT = 0.001;
/** A neighbour flatter than this to the edge (about 6 degrees) would slide too far: its corner goes square instead. */
const SLIDES = 0.1;

/** The points after the straight run through `edge` was carried `byMm` square to itself. */
export function withEdgeMoved({ points, closed }: ItemShape, edge: number, byMm: number): readonly Point[] {
  const count = points.length;
  const at = (index: number): Point => points[((index % count) + count) % count] ?? [0, 0];
  const direction = unit(minus(at(edge + 1), at(edge)));
  const isEdge = (index: number): boolean => closed || (index >= 0 && index < count - 1);
  const straight = (index: number): boolean =>
    isEdge(index) && Math.abs(cross(direction, unit(minus(at(index + 1), at(index))))) < STRAIGHT;

  let first = edge;
  while (straight(first - 1) && edge - first < count) first -= 1;
  let last = edge;
  while (straight(last + 1) && last - first < count) last += 1;

  const square = quarterTurn(direction);
  const moved = [...points];
  for (let index = first; index <= last + 1; index++) {
    const slot = ((index % count) + count) % count;
    moved[slot] = along(at(index), square, byMm);
  }
  const slide = (corner: number, neighbour: Point, exists: boolean): void => {
    const run = unit(minus(neighbour, at(corner)));
    const rise = cross(direction, run);
    if (!exists || Math.abs(rise) < SLIDES) return;
    moved[((corner % count) + count) % count] = along(at(corner), run, byMm / rise);
  };
  slide(first, at(first - 1), isEdge(first - 1));
  slide(last + 1, at(last + 2), isEdge(last + 1));
  return moved.map(pointToGrid);
}
