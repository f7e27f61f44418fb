import type { FieldPiece } from './fieldPieces.ts';

/*
 *   +-------+-------+     A square is asked how deep its middle lies inside the outline. Deep enough: yes.
 *   |       | . | . |     So shallow that no place of the square can be deep enough: nothing there. Else
 *   |   .   |---+---|     its quarters are asked, and they look only at the edges that the square found near.
 *   |       | . | . |     (the search for the pole of inaccessibility, stopped as soon as the answer is known)
 *   +-------+-------+
 */

/** Squares smaller than this share of the radius are not asked any closer. */
const FINEST = 1 / 16;
/** After so many squares the answer is no: such a piece is hardly wider than the circle anywhere. */
const MOST_SQUARES = 20_000;

interface Square {
  readonly x: number;
  readonly y: number;
  readonly half: number;
  /** Corners whose edges may matter here. */
  readonly edges: Int32Array;
  readonly isInside: boolean;
}

/** True when a circle of this radius (mm) fits into the piece somewhere, to a sixteenth of the radius. Radius 0 fits anywhere. */
export function holdsCircle(piece: FieldPiece, radiusMm: number): boolean {
  if (radiusMm <= 0) return true;
  if (piece.areaMm2 < Math.PI * radiusMm * radiusMm) return false;
  // The origin of a piece is the middle of its box.
  const all = Int32Array.from({ length: piece.count }, (_, i) => i);
  const isInside = crossings(piece, all, 'x', 0, -piece.spanMm, 0) % 2 === 1;
  const squares: Square[] = [{ x: 0, y: 0, half: piece.spanMm / 2, edges: all, isInside }];
  for (let looked = 0; looked < MOST_SQUARES; looked += 1) {
    const square = squares.pop();
    if (!square) return false;
    const reach = square.half * Math.SQRT2;
    const { edges, distance } = nearEdges(piece, square, radiusMm + reach);
    if (square.isInside && distance >= radiusMm) return true;
    const deepest = square.isInside ? distance + reach : reach - distance;
    if (deepest >= radiusMm && square.half >= radiusMm * FINEST) squares.push(...quarters(piece, square, edges));
  }
  return false;
}

/** Edges no further than `withinMm` from the middle of a square, and how far the nearest is. */
function nearEdges(
  { x, y, next }: FieldPiece,
  square: Square,
  withinMm: number,
): { readonly edges: Int32Array; readonly distance: number } {
  const near = new Int32Array(square.edges.length);
  let count = 0;
  let least = Infinity;
  for (const i of square.edges) {
    const j = next[i] as number;
    const ax = (x[i] as number) - square.x;
    const ay = (y[i] as number) - square.y;
    const runX = (x[j] as number) - (x[i] as number);
    const runY = (y[j] as number) - (y[i] as number);
    const length = runX * runX + runY * runY;
    const share = length === 0 ? 0 : Math.min(1, Math.max(0, -(ax * runX + ay * runY) / length));
    const dx = ax + share * runX;
    const dy = ay + share * runY;
    const apart = dx * dx + dy * dy;
    if (apart > withinMm * withinMm) continue;
    near[count] = i;
    count += 1;
    if (apart < least) least = apart;
  }
  return { edges: near.subarray(0, count), distance: Math.sqrt(least) };
}

/** Whether a quarter's middle is inside follows from the edges that lie between it and the square's own middle. */
function quarters(piece: FieldPiece, square: Square, edges: Int32Array): Square[] {
  const half = square.half / 2;
  return [-half, half].flatMap((dx) => {
    const x = square.x + dx;
    const sideways = crossings(piece, edges, 'x', square.y, square.x, x);
    return [-half, half].map((dy) => {
      const y = square.y + dy;
      const isOdd = (sideways + crossings(piece, edges, 'y', x, square.y, y)) % 2 === 1;
      return { x, y, half, edges, isInside: square.isInside !== isOdd };
    });
  });
}

/** How many of the edges a way along an axis crosses: the other coordinate stays at `level`. */
function crossings(
  { x, y, next }: FieldPiece,
  edges: Int32Array,
  axis: 'x' | 'y',
  level: number,
  from: number,
  to: number,
): number {
  const [moves, stays] = axis === 'x' ? [x, y] : [y, x];
  const low = Math.min(from, to);
  const high = Math.max(from, to);
  let count = 0;
  for (const i of edges) {
    const j = next[i] as number;
    const a = stays[i] as number;
    const b = stays[j] as number;
    if (a > level === b > level) continue;
    const at = (moves[i] as number) + ((level - a) / (b - a)) * ((moves[j] as number) - (moves[i] as number));
    if (at > low && at <= high) count += 1;
  }
  return count;
}
