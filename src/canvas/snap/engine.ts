import type { Point } from '../../geometry/floorShape.ts';
import { pointToGrid } from '../../geometry/grid.ts';
import { distance, isSame } from '../../geometry/point.ts';
import { SNAP_KINDS, type Snap, type SnapKind, type SnapQuery, type SnapSource } from './snap.ts';

/** The kind that holds now lets go only at this many times the reach, so that nothing flickers. */
export const HOLD = 1.5;

/** Half the diagonal of a grid cell: a point this near to a candidate is that candidate, rounded. */
const ROUNDED_MM = Math.SQRT2 / 640;

export function rankOf(kind: SnapKind): number {
  return SNAP_KINDS.indexOf(kind);
}

/** How far a candidate of this kind may lie from the hand, px. */
export function reachOf(query: SnapQuery, kind: SnapKind): number {
  return query.held === kind ? query.reachPx * HOLD : query.reachPx;
}

/** The farthest any candidate may lie, in floor mm: what sources ask their index for. */
export function searchMm(query: SnapQuery): number {
  return (query.reachPx * HOLD) / query.pxPerMm;
}

/**
 * The one place where a hand's point becomes a plan's point. Sources offer candidates; rank beats distance,
 * within a rank the nearest wins, and nothing beyond reach counts. The answer lies on the plan grid.
 */
export function snapTo(query: SnapQuery, sources: readonly SnapSource[]): Snap {
  if (!query.off) {
    for (const kind of SNAP_KINDS) {
      const best = nearest(query, kind, sources);
      if (best) return best;
    }
  }
  return { at: pointToGrid(query.at), kind: 'free', on: null, along: null, guides: [] };
}

function nearest(query: SnapQuery, kind: SnapKind, sources: readonly SnapSource[]): Snap | null {
  let best: Snap | null = null;
  let least = reachOf(query, kind);
  for (const source of sources) {
    if (source.kind !== kind) continue;
    for (const found of source.find(query)) {
      if (found.on && query.skip.has(found.on)) continue;
      const at = placed(query, found.at);
      // A line of no length is never meant.
      if (query.from && isSame(at, query.from)) continue;
      const gap = distance(at, query.at) * query.pxPerMm;
      if (gap > least || (best && gap === least)) continue;
      least = gap;
      best = { ...found, at };
    }
  }
  return best;
}

/** On the grid; a point that was snapped to this before stays where it is, so that nothing creeps along a slanting edge. */
function placed(query: SnapQuery, at: Point): Point {
  const here = pointToGrid(query.at);
  const onGrid = here[0] === query.at[0] && here[1] === query.at[1];
  return onGrid && distance(at, query.at) <= ROUNDED_MM ? here : pointToGrid(at);
}
