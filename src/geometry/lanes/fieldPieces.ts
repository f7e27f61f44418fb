import type { Point, Region, Ring } from '../floorShape.ts';
import { boxOf } from '../box.ts';

/*
 *    0 ----- 1
 *    |  4-5  |      corners of all rings one behind the other; next: 1 2 3 0 | 5 6 4
 *    |  6    |      so an edge runs from corner i to corner next[i]
 *    3 ----- 2
 */

/**
 * One polygon of a field with its holes, made quick to turn: corners in one row, about an origin of its own, so that
 * a floor far from the plan's origin costs no digits.
 */
export interface FieldPiece {
  readonly origin: Point;
  readonly count: number;
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly next: Int32Array;
  readonly areaMm2: number;
  /** No direction is wider: the diagonal of its box. */
  readonly spanMm: number;
}

/** Nobody drives a machine to less floor than this, 0.01 m2; common practice, no source. */
const LEAST_MM2 = 10_000;

/** The pieces of a field that are worth a lane. Rings without area are no rings. */
export function fieldPieces(field: Region): FieldPiece[] {
  return field.map(pieceOf).filter(({ areaMm2 }) => areaMm2 >= LEAST_MM2);
}

function pieceOf(rings: readonly Ring[]): FieldPiece {
  const box = boxOf(rings[0] ?? []);
  const origin: Point = [(box.minX + box.maxX) / 2, (box.minY + box.maxY) / 2];
  const most = rings.reduce((sum, ring) => sum + ring.length, 0);
  const [x, y, next] = [new Float64Array(most), new Float64Array(most), new Int32Array(most)];
  let [count, areaMm2] = [0, 0];
  for (const [i, ring] of rings.entries()) {
    const first = count;
    for (const corner of ring) {
      x[count] = corner[0] - origin[0];
      y[count] = corner[1] - origin[1];
      next[count] = count + 1;
      count += 1;
    }
    const ringMm2 = areaBetween(x, y, first, count);
    if (ringMm2 > 0) next[count - 1] = first;
    else count = first;
    areaMm2 += i === 0 ? ringMm2 : -ringMm2;
  }
  const spanMm = Math.hypot(box.maxX - box.minX, box.maxY - box.minY);
  return { origin, count, x, y, next, areaMm2, spanMm };
}

/** Area, without sign, of the ring from corner `first` up to `end`: the shoelace sum, without a point made for each corner. */
function areaBetween(x: Float64Array, y: Float64Array, first: number, end: number): number {
  let sum = 0;
  for (let i = first, before = end - 1; i < end; before = i, i += 1) {
    sum += (x[before] as number) * (y[i] as number) - (x[i] as number) * (y[before] as number);
  }
  return Math.abs(sum) / 2;
}
