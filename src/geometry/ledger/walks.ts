import type { Box } from '../box.ts';
import { type Edge, xAt } from './edge.ts';
import type { Place } from './place.ts';
import type { TileEdges } from './tileEdges.ts';

/*
 * Along a straight line through a tile: what lies under each stretch of it.
 *
 *      a --+------+---- b      The line is cut where it meets an edge, and the middle of each piece is asked for by
 *          |      |            walking to it from the left side of the tile. Nothing is carried over from one piece
 *                              to the next, so a line through a corner or along an edge cannot upset the rest.
 */
export interface Stretch<T> {
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

/** What lies along a line inside a tile, in order; stretches with the same answer are one. */
export function walk<T>(
  tile: TileEdges,
  place: Place,
  ax: number,
  ay: number,
  bx: number,
  by: number,
  share: readonly [number, number],
  ask: (place: Place) => T,
): Stretch<T>[] {
  const cuts = [...share];
  for (const edge of tile.edges) if (!edge.cut) addCuts(edge, ax, ay, bx - ax, by - ay, share, cuts);
  for (const { y, fromX, toX } of tile.levels) {
    const t = (y - ay) / (by - ay);
    const x = ax + (bx - ax) * t;
    if (t > share[0] && t < share[1] && x >= fromX - NEAR_MM && x <= toX + NEAR_MM) cuts.push(t);
  }
  cuts.sort((x, y) => x - y);
  const out: Stretch<T>[] = [];
  let from = cuts[0] as number;
  for (const to of cuts) {
    if (to - from <= SAME_SHARE) continue;
    const middle = (from + to) / 2;
    const what = askAt(tile, place, ax + (bx - ax) * middle, ay + (by - ay) * middle, ask);
    const last = out.at(-1);
    if (last && last.what === what) out[out.length - 1] = { from: last.from, to, what };
    else out.push({ from, to, what });
    from = to;
  }
  return out;
}

/** Asks about one place of a tile. */
export function askAt<T>(tile: TileEdges, place: Place, x: number, y: number, ask: (place: Place) => T): T {
  const crossed: Edge[] = [];
  for (const edge of tile.edges) {
    if (edge.lo <= y && y < edge.hi && xAt(edge, y) < x) {
      place.cross(edge);
      crossed.push(edge);
    }
  }
  // The left side of the tile itself lies at x or left of it.
  const answer = ask(place);
  for (const edge of crossed) place.cross(edge, true);
  return answer;
}

function addCuts(
  edge: Edge,
  ax: number,
  ay: number,
  dx: number,
  dy: number,
  share: readonly [number, number],
  cuts: number[],
): void {
  if (edge.radius > 0) {
    arcCuts(edge, ax, ay, dx, dy, share, cuts);
    return;
  }
  const ex = edge.x1 - edge.x0;
  const ey = edge.y1 - edge.y0;
  const across = dx * ey - dy * ex;
  if (across === 0) return;
  const [fx, fy] = [edge.x0 - ax, edge.y0 - ay];
  const t = (fx * ey - fy * ex) / across;
  if (t > share[0] && t < share[1] && isOnEdge(edge, ay + dy * t)) cuts.push(t);
}

function arcCuts(
  edge: Edge,
  ax: number,
  ay: number,
  dx: number,
  dy: number,
  share: readonly [number, number],
  cuts: number[],
): void {
  const [fx, fy] = [ax - edge.cx, ay - edge.cy];
  const a = dx * dx + dy * dy;
  const b = fx * dx + fy * dy;
  const root = b * b - a * (fx * fx + fy * fy - edge.radius * edge.radius);
  if (root < 0) return;
  for (const t of [(-b - Math.sqrt(root)) / a, (-b + Math.sqrt(root)) / a]) {
    if (t > share[0] && t < share[1] && (fx + dx * t) * edge.half >= -NEAR_MM && isOnEdge(edge, ay + dy * t))
      cuts.push(t);
  }
}

/** A cut too many costs nothing; one too few would give a stretch a wrong name. */
const NEAR_MM = 1e-6;

function isOnEdge(edge: Edge, y: number): boolean {
  return y >= edge.lo - NEAR_MM && y <= edge.hi + NEAR_MM;
}
