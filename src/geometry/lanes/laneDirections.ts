import type { FieldPiece } from './fieldPieces.ts';

/*
 *   metres of edge          Angles of edges, each by its length, laid over one quarter turn: a wall and
 *     |   #                 its right angle ask for the same two directions. The highest heap is a wall
 *     |   #         #       direction, then the highest of what is left; edges within a degree of a heap
 *     |  ###   .   ##       belong to it, and its direction is their mean weighted by length.
 *     +------------------
 *     0                90
 */
const BINS = 360;
const QUARTER = Math.PI / 2;
/** Bins on either side that belong to a heap: one degree. */
const BESIDE = 4;
const MOST_WALLS = 6;
/** An edge shorter than this, mm, is part of an arc or a jamb and no direction. */
const SHORTEST_MM = 150;
/** Walls with less than this share of all edges are not worth a direction. */
const LEAST_SHARE = 0.01;

/**
 * Directions in which lanes may run, radians from 0 up to pi: along each wall direction of a field and across it, the
 * longest walls first, 12 at most. A field without long edges (a round room) is asked along all its edges.
 */
export function laneDirections(pieces: readonly FieldPiece[]): readonly number[] {
  const long = edgeHeaps(pieces, SHORTEST_MM);
  const heaps = long.total > 0 ? long : edgeHeaps(pieces, 0);
  const found: number[] = [];
  while (found.length < MOST_WALLS) {
    const peak = highest(heaps.lengths);
    const { angle, length } = takeHeap(heaps, peak);
    if (length === 0 || (found.length > 0 && length < LEAST_SHARE * heaps.total)) break;
    found.push(angle);
  }
  return found.flatMap((angle) => [angle, angle + QUARTER]);
}

interface Heaps {
  readonly lengths: Float64Array;
  /** Sums of length x (angle less the middle of the bin). */
  readonly leans: Float64Array;
  readonly total: number;
}

function edgeHeaps(pieces: readonly FieldPiece[], shortestMm: number): Heaps {
  const [lengths, leans] = [new Float64Array(BINS), new Float64Array(BINS)];
  let total = 0;
  for (const { count, x, y, next } of pieces) {
    for (let i = 0; i < count; i += 1) {
      const j = next[i] as number;
      const dx = (x[j] as number) - (x[i] as number);
      const dy = (y[j] as number) - (y[i] as number);
      const square = dx * dx + dy * dy;
      if (square <= shortestMm * shortestMm) continue;
      const length = Math.sqrt(square);
      const place = (quarterAngle(dx, dy) / QUARTER) * BINS;
      // Bins are centred: bin 0 holds what is just under a quarter turn as well, so walls along an axis are one heap.
      const rounded = Math.round(place);
      const bin = rounded % BINS;
      lengths[bin] = (lengths[bin] as number) + length;
      leans[bin] = (leans[bin] as number) + length * (place - rounded);
      total += length;
    }
  }
  return { lengths, leans, total };
}

/** Angle of a direction within the quarter turn from 0. */
function quarterAngle(dx: number, dy: number): number {
  const angle = Math.atan2(dy, dx) % QUARTER;
  return angle < 0 ? angle + QUARTER : angle;
}

function highest(lengths: Float64Array): number {
  let best = 0;
  for (let bin = 1; bin < BINS; bin += 1) if ((lengths[bin] as number) > (lengths[best] as number)) best = bin;
  return best;
}

/** Takes a heap out: its mean angle, and its length. */
function takeHeap({ lengths, leans }: Heaps, peak: number): { readonly angle: number; readonly length: number } {
  let [length, lean] = [0, 0];
  for (let beside = -BESIDE; beside <= BESIDE; beside += 1) {
    const bin = (peak + beside + BINS) % BINS;
    length += lengths[bin] as number;
    lean += (leans[bin] as number) + beside * (lengths[bin] as number);
    lengths[bin] = 0;
    leans[bin] = 0;
  }
  const mean = length === 0 ? 0 : peak + lean / length;
  const angle = (mean / BINS) * QUARTER;
  return { angle: angle < 0 ? angle + QUARTER : angle, length };
}
