import type { Point } from '../geometry/floorShape.ts';
import { minus, plus, quarterTurn, times, unit } from '../geometry/point.ts';
import { ringContains } from '../geometry/ring.ts';
import { nearestOnSegment } from '../geometry/segment.ts';
import type { RecordId } from '../model/cell.ts';
import { typeOf } from '../model/cell.ts';
import { boxAbout, type PlanEdge, type PlanIndex, type PlanItem } from './planIndex.ts';
import type { Hit } from './tools/tool.ts';

export interface HitQuery {
  readonly at: Point;
  readonly pxPerMm: number;
  readonly reachPx: number;
  /** Corners and edges of picked items come first: they are what the hand may want to carry. */
  readonly picked: readonly RecordId[];
  /** Types to look for; null: all. */
  readonly aims: readonly string[] | null;
}

/** Corner numbers of a picked item stand so far outside the corner. */
const NUMBER_OUT_PX = 24;
const NUMBER_REACH_PX = 14;

/**
 * What lies under a point. Spots lie on top of lines, lines on areas, and of several areas the smallest is
 * meant: the larger ones can be touched beside it. What stands on the floor lies on top of lines that end at it.
 */
export function hitAt(index: PlanIndex, query: HitQuery): Hit | null {
  return (
    hitPicked(index, query) ??
    hitSpot(index, query) ??
    hitSolid(index, query) ??
    hitLine(index, query) ??
    hitArea(index, query)
  );
}

function isMeant(item: PlanItem, { aims }: HitQuery): boolean {
  return !aims || aims.includes(typeOf(item.id));
}

function hitPicked(index: PlanIndex, query: HitQuery): Hit | null {
  if (query.picked.length === 0) return null;
  const reach = (Math.max(query.reachPx, NUMBER_REACH_PX) + NUMBER_OUT_PX) / query.pxPerMm;
  const isPicked = (item: PlanItem): boolean => query.picked.includes(item.id) && isMeant(item, query);
  const near = index.itemsIn(boxAbout(query.at, reach)).filter((item) => isPicked(item) && !item.shape.round);
  return nearestCorner(near, query) ?? nearestEdge(index, query, (edge) => isPicked(edge.item));
}

function nearestCorner(items: readonly PlanItem[], query: HitQuery): Hit | null {
  let best: Hit | null = null;
  let least = Infinity;
  for (const item of items) {
    for (const [corner, at] of item.shape.points.entries()) {
      const gap = Math.min(
        gapPx(query, at) / query.reachPx,
        gapPx(query, numberPlace(item, corner, query.pxPerMm)) / NUMBER_REACH_PX,
      );
      if (gap > 1 || gap >= least) continue;
      least = gap;
      best = { id: item.id, corner, edge: null };
    }
  }
  return best;
}

/** Where the number of a corner is drawn: beyond the corner, between the lines of its two edges. */
export function numberPlace({ shape: { points, closed } }: PlanItem, corner: number, pxPerMm: number): Point {
  const at = points[corner] ?? [0, 0];
  const before = points[corner - 1] ?? (closed ? points.at(-1) : undefined);
  const after = points[corner + 1] ?? (closed ? points[0] : undefined);
  const arrive: Point = before ? unit(minus(at, before)) : [0, 0];
  const leave: Point = after ? unit(minus(after, at)) : [0, 0];
  const out = minus(arrive, leave);
  const straight = Math.hypot(out[0], out[1]) < 1e-6;
  const way = straight ? times(quarterTurn(arrive), -1) : unit(out);
  return plus(at, times(way, NUMBER_OUT_PX / pxPerMm));
}

function nearestEdge(index: PlanIndex, query: HitQuery, isWanted: (edge: PlanEdge) => boolean): Hit | null {
  let best: Hit | null = null;
  let least = query.reachPx;
  for (const edge of index.edgesIn(boxAbout(query.at, query.reachPx / query.pxPerMm))) {
    if (!isWanted(edge)) continue;
    const gap = nearestOnSegment(query.at, edge.a, edge.b).distance * query.pxPerMm;
    if (gap > least) continue;
    least = gap;
    best = { id: edge.item.id, corner: null, edge: edge.edge };
  }
  return best;
}

function hitSpot(index: PlanIndex, query: HitQuery): Hit | null {
  const near = index.itemsIn(boxAbout(query.at, query.reachPx / query.pxPerMm));
  const spots = near.filter((item) => item.shape.points.length === 1 && isMeant(item, query));
  const best = nearestCorner(spots, query);
  return best && { ...best, corner: null };
}

/** An obstruction with the point inside it: a line can be touched where it runs outside. */
function hitSolid(index: PlanIndex, query: HitQuery): Hit | null {
  const solids = index
    .itemsIn(boxAbout(query.at, query.reachPx / query.pxPerMm))
    .filter((item) => typeOf(item.id) === 'obstruction' && isMeant(item, query))
    .filter(({ shape }) => shape.closed && ringContains(shape.points, query.at))
    .toSorted((a, b) => a.area - b.area);
  const [least] = solids;
  return least ? { id: least.id, corner: null, edge: edgeOf(index, query, least)?.edge ?? null } : null;
}

function hitLine(index: PlanIndex, query: HitQuery): Hit | null {
  const isLine = (edge: PlanEdge): boolean => !edge.item.shape.closed && isMeant(edge.item, query);
  const opening = nearestEdge(index, query, (edge) => isLine(edge) && typeOf(edge.item.id) === 'opening');
  return opening ?? nearestEdge(index, query, isLine);
}

function hitArea(index: PlanIndex, query: HitQuery): Hit | null {
  const near = index.itemsIn(boxAbout(query.at, query.reachPx / query.pxPerMm));
  let best: PlanItem | null = null;
  for (const item of near) {
    if (!item.shape.closed || !isMeant(item, query)) continue;
    const touched = ringContains(item.shape.points, query.at) || edgeOf(index, query, item) !== null;
    if (touched && (!best || item.area < best.area)) best = item;
  }
  return best && { id: best.id, corner: null, edge: edgeOf(index, query, best)?.edge ?? null };
}

function edgeOf(index: PlanIndex, query: HitQuery, item: PlanItem): Hit | null {
  if (item.shape.round) return null;
  return nearestEdge(index, query, (edge) => edge.item === item);
}

function gapPx(query: HitQuery, at: Point): number {
  return Math.hypot(at[0] - query.at[0], at[1] - query.at[1]) * query.pxPerMm;
}
