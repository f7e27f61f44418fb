import type { PieceCut } from './cutLanes.ts';

/*
 *   line 3   aaaaaaaaaaaaaaaaaaaa      a lane goes on in the run of its neighbour when each is the
 *   line 2   bbbbbbb      cccccc       other's only neighbour on that side; where one meets two, or
 *   line 1   bbbbbbb      cccccc       none, a new run begins. Four runs here, and so (lanes less
 *   line 0   dddddddddddddddddddd      runs) two turns
 */
export interface LaneRuns {
  readonly count: number;
  /** Run of each lane, numbered from the first line on. */
  readonly runOf: Int32Array;
}

/** Shared length, mm, from which lanes are neighbours: a corner that two lanes both just touch is no way over. */
const LEAST_SHARED_MM = 1e-6;

/**
 * Lanes that follow each other with nothing but turns (boustrophedon cells: H. Choset, Coverage of known spaces, 2000,
 * from memory). Neighbours are lanes of neighbouring lines that lie beside each other over some length.
 */
export function laneRuns(cut: PieceCut): LaneRuns {
  const { count, first, left, right } = cut;
  // For each lane: how many neighbours on the line before and on the line after, and the last of those after.
  const [before, after, follower] = [new Uint32Array(count), new Uint32Array(count), new Int32Array(count)];
  for (let line = 0; line + 2 < first.length; line += 1) {
    let a = first[line] as number;
    let b = first[line + 1] as number;
    const [endA, endB] = [b, first[line + 2] as number];
    while (a < endA && b < endB) {
      const shared = Math.min(right[a] as number, right[b] as number) - Math.max(left[a] as number, left[b] as number);
      if (shared > LEAST_SHARED_MM) {
        after[a] = (after[a] as number) + 1;
        before[b] = (before[b] as number) + 1;
        follower[a] = b;
      }
      if ((right[a] as number) < (right[b] as number)) a += 1;
      else b += 1;
    }
  }
  return numbered(before, after, follower);
}

function numbered(before: Uint32Array, after: Uint32Array, follower: Int32Array): LaneRuns {
  const runOf = new Int32Array(before.length).fill(-1);
  let count = 0;
  for (let lane = 0; lane < runOf.length; lane += 1) {
    if (runOf[lane] === -1) {
      runOf[lane] = count;
      count += 1;
    }
    const next = follower[lane] as number;
    if (after[lane] === 1 && before[next] === 1) runOf[next] = runOf[lane] as number;
  }
  return { count, runOf };
}
