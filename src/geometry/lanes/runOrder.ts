import type { Point } from '../floorShape.ts';
import { distance } from '../point.ts';
import type { LaneRun } from './lane.ts';

/*
 *   A run is begun at one of four ends, and that decides where it is left:
 *
 *   begin >------->      2 lanes          begin >------->     3 lanes
 *         <-------<      leave on the           <-------<     leave on the
 *   leave                same side              >-------> leave  other side
 *
 * First the nearest end, from run to run. Then pieces of the row are turned round where that shortens the way
 * (2-opt), which turns each run in them round as well.
 */

export interface RunOrder {
  readonly order: readonly LaneRun[];
  readonly betweenM: number;
}

/** Each run is tried with so many that follow it, in so many rounds: 2-opt stops short of the best on large floors. */
const WINDOW = 60;
const ROUNDS = 4;
/** The nearest end is sought among so many runs, so that a floor of very many does not keep anyone waiting. */
const MOST_LOOKED = 4000;

/** Runs in an order, and each the way round, that keeps the way between them short. */
export function orderRuns(runs: readonly LaneRun[], startAt: Point | null): RunOrder {
  const ends = endsOf(runs);
  const row = nearestFirst(ends, runs.length, startAt);
  shortened(row, ends, startAt);
  let betweenMm = 0;
  for (let i = 1; i < row.length; i += 1) betweenMm += apart(ends, leftAt(row[i - 1] as number), row[i] as number);
  const order = Array.from(row, (begin) => begunAt(runs[begin >> 2] as LaneRun, begin & 3));
  return { order, betweenM: betweenMm / 1000 };
}

/*
 * Ends of all runs in one row: end e of run c has number 4 c + e. Ends 0 and 1 are those of its first lane, 2 and 3
 * of its last; begun at one it is left at the other of 0-3 or 1-2. A row of runs is the row of ends they are begun at.
 */
interface Ends {
  readonly x: Float64Array;
  readonly y: Float64Array;
}

function endsOf(runs: readonly LaneRun[]): Ends {
  const [x, y] = [new Float64Array(4 * runs.length), new Float64Array(4 * runs.length)];
  for (const [c, { lanes }] of runs.entries()) {
    const [first, last] = [lanes[0], lanes.at(-1)] as [LaneRun['lanes'][number], LaneRun['lanes'][number]];
    for (const [e, at] of [...first, ...last].entries()) {
      x[4 * c + e] = at[0];
      y[4 * c + e] = at[1];
    }
  }
  return { x, y };
}

/** The end at which a run is left that was begun at this one. */
function leftAt(begin: number): number {
  return begin ^ 3;
}

function apart({ x, y }: Ends, a: number, b: number): number {
  const dx = (x[a] as number) - (x[b] as number);
  const dy = (y[a] as number) - (y[b] as number);
  // Math.hypot takes several times as long, and nothing here is near the ends of the number range.
  return Math.sqrt(dx * dx + dy * dy);
}

/** The run as it is driven when it is begun at end e. */
function begunAt(run: LaneRun, end: number): LaneRun {
  if (end === 0) return run;
  const lanes = end === 1 ? run.lanes : run.lanes.toReversed();
  return { ...run, lanes: end === 2 ? lanes : lanes.map(([from, to]) => [to, from] as const) };
}

function nearestFirst(ends: Ends, runs: number, startAt: Point | null): Int32Array {
  const remaining = Int32Array.from({ length: runs }, (_, run) => run);
  const row = new Int32Array(runs);
  let [x, y] = startAt ?? [ends.x[0] ?? 0, ends.y[0] ?? 0];
  for (let i = 0; i < runs; i += 1) {
    let nearest = 0;
    let slotOf = 0;
    let least = Infinity;
    for (let slot = 0; slot < Math.min(runs - i, MOST_LOOKED); slot += 1) {
      const first = 4 * (remaining[slot] as number);
      for (let end = first; end < first + 4; end += 1) {
        const dx = (ends.x[end] as number) - x;
        const dy = (ends.y[end] as number) - y;
        const square = dx * dx + dy * dy;
        if (square < least) {
          nearest = end;
          slotOf = slot;
          least = square;
        }
      }
    }
    row[i] = nearest;
    remaining[slotOf] = remaining[runs - i - 1] as number;
    x = ends.x[leftAt(nearest)] as number;
    y = ends.y[leftAt(nearest)] as number;
  }
  return row;
}

/** Turns pieces of the row round in place, as long as that shortens the way and within the bounds above. */
function shortened(row: Int32Array, ends: Ends, startAt: Point | null): void {
  for (let round = 0; round < ROUNDS; round += 1) {
    let isShorter = false;
    for (let i = 0; i < row.length; i += 1) {
      for (let j = i; j < Math.min(row.length, i + WINDOW); j += 1) {
        if (savedBy(row, i, j, ends, startAt) < 1e-6) continue;
        turnPiece(row, i, j);
        isShorter = true;
      }
    }
    if (!isShorter) return;
  }
}

/** How much shorter, mm, the way gets when the row is turned round from i to j. */
function savedBy(row: Int32Array, i: number, j: number, ends: Ends, startAt: Point | null): number {
  const begin = row[i] as number;
  const leave = leftAt(row[j] as number);
  let saved = 0;
  if (i > 0) {
    const from = leftAt(row[i - 1] as number);
    saved += apart(ends, from, begin) - apart(ends, from, leave);
  } else if (startAt) {
    saved += distance(startAt, pointOf(ends, begin)) - distance(startAt, pointOf(ends, leave));
  }
  if (j + 1 < row.length) {
    const to = row[j + 1] as number;
    saved += apart(ends, leave, to) - apart(ends, begin, to);
  }
  return saved;
}

function pointOf({ x, y }: Ends, end: number): Point {
  return [x[end] as number, y[end] as number];
}

function turnPiece(row: Int32Array, i: number, j: number): void {
  row.set(
    row
      .slice(i, j + 1)
      .toReversed()
      .map(leftAt),
    i,
  );
}
