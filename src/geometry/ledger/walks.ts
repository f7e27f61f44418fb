import type { Box } from '../box.ts';
import { type Arc, type EdgePart, xAt } from './edge.ts';
import { type Place, crossEdge } from './place.ts';
import type { TileEdges } from './tileEdges.ts';

/*
 * Along a straight line through a tile: what lies under each stretch of it.
 *
 *      a --+------+---- b      The line is cut where it meets an edge, and the middle of each piece is asked for by
 *          |      |            walking to it from the left side of the tile. Nothing is carried over from one piece
 *                              to the next, so a line through a corner or along an edge cannot upset the rest.
 */

/** A piece of a line, and what lies under it. */
export interface Piece<T> {
  /** Shares of the whole line. */
  readonly from: number;
  readonly to: number;
  readonly what: T;
}

/** The share of a line that lies in a box, or null. Neighbouring tiles find the very same share at their common side. */
export function shareInBox(ax: number, ay: number, bx: number, by: number, box: Box): readonly [number, number] | null {
  const x = shareBetween(ax, bx, box.minX, box.maxX);
  const y = x && shareBetween(ay, by, box.minY, box.maxY);
  if (!x || !y) return null;
  const [from, to] = [Math.max(x[0], y[0]), Math.min(x[1], y[1])];
  return from < to ? [from, to] : null;
}

function shareBetween(a: number, b: number, min: number, max: number): readonly [number, number] | null {
  if (a === b) return a > min && a <= max ? [0, 1] : null;
  const [s, t] = [(min - a) / (b - a), (max - a) / (b - a)];
  const [from, to] = [Math.max(0, Math.min(s, t)), Math.min(1, Math.max(s, t))];
  return from < to ? [from, to] : null;
}

/** Shares nearer than this are one. */
const SAME_SHARE = 1e-12;

/** What lies along a line inside a tile, in order; pieces with the same answer are one. */
export function walk<T>(
  tile: TileEdges,
  place: Place,
  ax: number,
  ay: number,
  bx: number,
  by: number,
  share: readonly [number, number],
  ask: (place: Place) => T,
): Piece<T>[] {
  const leg: Leg = { ax, ay, dx: bx - ax, dy: by - ay, from: share[0], to: share[1] };
  const cuts = cutsOf(tile, leg);
  const out: Piece<T>[] = [];
  let from = leg.from;
  for (const to of cuts) {
    if (to - from <= SAME_SHARE) continue;
    const middle = (from + to) / 2;
    const what = askAt(tile, place, ax + leg.dx * middle, ay + leg.dy * middle, ask);
    const last = out.at(-1);
    if (last && last.what === what) out[out.length - 1] = { from: last.from, to, what };
    else out.push({ from, to, what });
    from = to;
  }
  return out;
}

/** Asks about one place of a tile. */
export function askAt<T>(tile: TileEdges, place: Place, x: number, y: number, ask: (place: Place) => T): T {
  const crossed: EdgePart[] = [];
  for (const part of tile.edges) {
    if (part.lo > y || y >= part.hi || !isLeft(part, x, y)) continue;
    crossEdge(place, part);
    crossed.push(part);
  }
  const answer = ask(place);
  for (const part of crossed) crossEdge(place, part, true);
  return answer;
}

function isLeft({ edge }: EdgePart, x: number, y: number): boolean {
  if (edge.x0 >= x && edge.x1 >= x) return false;
  return (edge.x0 < x && edge.x1 < x) || xAt(edge, y) < x;
}

/** A stretch of a line: from a in the direction d, between two shares. */
interface Leg {
  readonly ax: number;
  readonly ay: number;
  readonly dx: number;
  readonly dy: number;
  readonly from: number;
  readonly to: number;
}

/** A cut too many costs nothing; one too few would give a stretch a wrong name. */
const NEAR_MM = 1e-6;

/** Shares at which a stretch meets edges of the tile, in order, and its end. */
function cutsOf({ edges, levels }: TileEdges, leg: Leg): number[] {
  const { ax, ay, dx, dy, from, to } = leg;
  const [startX, endX, startY, endY] = [ax + dx * from, ax + dx * to, ay + dy * from, ay + dy * to];
  const [minX, maxX] = startX < endX ? [startX, endX] : [endX, startX];
  const [minY, maxY] = startY < endY ? [startY, endY] : [endY, startY];
  const cuts = [to];
  for (const part of edges) {
    const { x0, x1, arc } = part.edge;
    if (part.isSide || part.hi < minY - NEAR_MM || part.lo > maxY + NEAR_MM) continue;
    if ((x0 < minX - NEAR_MM && x1 < minX - NEAR_MM) || (x0 > maxX + NEAR_MM && x1 > maxX + NEAR_MM)) continue;
    if (arc) addArcCuts(part, arc, leg, cuts);
    else addStraightCut(part, leg, cuts);
  }
  for (const { y, fromX, toX } of levels) {
    const t = (y - ay) / dy;
    const x = ax + dx * t;
    if (t > from && t < to && x >= fromX - NEAR_MM && x <= toX + NEAR_MM) cuts.push(t);
  }
  return cuts.length > 1 ? cuts.toSorted((x, y) => x - y) : cuts;
}

function addStraightCut(part: EdgePart, { ax, ay, dx, dy, from, to }: Leg, cuts: number[]): void {
  const { x0, y0, x1, y1 } = part.edge;
  const across = dx * (y1 - y0) - dy * (x1 - x0);
  if (across === 0) return;
  const t = ((x0 - ax) * (y1 - y0) - (y0 - ay) * (x1 - x0)) / across;
  if (t > from && t < to && isOnPart(part, ay + dy * t)) cuts.push(t);
}

function addArcCuts(
  part: EdgePart,
  { cx, cy, radius, half }: Arc,
  { ax, ay, dx, dy, from, to }: Leg,
  cuts: number[],
): void {
  const [fx, fy] = [ax - cx, ay - cy];
  const a = dx * dx + dy * dy;
  const b = fx * dx + fy * dy;
  const root = b * b - a * (fx * fx + fy * fy - radius * radius);
  if (root < 0) return;
  for (const t of [(-b - Math.sqrt(root)) / a, (-b + Math.sqrt(root)) / a]) {
    if (t > from && t < to && (fx + dx * t) * half >= -NEAR_MM && isOnPart(part, ay + dy * t)) cuts.push(t);
  }
}

function isOnPart({ lo, hi }: EdgePart, y: number): boolean {
  return y >= lo - NEAR_MM && y <= hi + NEAR_MM;
}
