import type { Box } from '../box.ts';
import { type Edge, type EdgePart, edgeBetween, xAt, yAt } from './edge.ts';
import type { Level, Outline } from './outline.ts';

/*
 * Outlines cut down to one tile.
 *
 *        +--------+        What lies above or below is left out: it has no slab. What lies beside is pushed on to
 *     ___|__      |        the side of the tile, so that at every height as many edges run up as down, and the
 *    |   |..|     |        winding numbers come out as if the whole outline were there. An outline without an edge
 *    |___|__|     |        inside covers the tile or does not touch it: it becomes a mere mark.
 *        +--------+
 *
 * What a tile gets depends on nothing but what lies in it: changes elsewhere leave its numbers as they are to the last bit.
 */
export interface TileEdges {
  readonly box: Box;
  readonly edges: EdgePart[];
  readonly levels: Level[];
  /** The outline behind each `ring` number of the edges. */
  readonly rings: Outline[];
  /** Outlines that cover the whole tile. */
  readonly covers: Outline[];
}

/** `ring` of the two sides of the tile, which belong to no outline. */
export const TILE_SIDE = -2;

export function tileEdges(box: Box, outlines: readonly Outline[]): TileEdges {
  const tile: TileEdges = { box, edges: [], levels: [], rings: [], covers: [] };
  for (const x of [box.minX, box.maxX]) addSide(tile.edges, x, box.minY, box.maxY, 1, TILE_SIDE);
  for (const outline of outlines) addOutline(tile, outline);
  return tile;
}

/** A stretch of a side of the tile that stands for what lies beyond it. */
interface Beside {
  readonly lo: number;
  readonly hi: number;
  readonly up: number;
}

/** Adds what an outline leaves in the tile. */
export function addOutline(tile: TileEdges, outline: Outline): void {
  const { box, edges } = tile;
  if (outline.box.minX >= box.maxX || outline.box.maxX <= box.minX) return;
  const ring = tile.rings.length;
  const start = edges.length;
  const left: Beside[] = [];
  const right: Beside[] = [];
  for (const edge of outline.edges) {
    const lo = edge.y0 > box.minY ? edge.y0 : box.minY;
    const hi = edge.y1 < box.maxY ? edge.y1 : box.maxY;
    if (lo < hi) addPart(edge, lo, hi, ring, tile, left, right);
  }
  const steps = netBeside(left);
  if (edges.length === start && isWhole(steps, box)) {
    if (steps.length > 0) tile.covers.push(outline);
    return;
  }
  for (const { lo, hi, up } of steps) addSide(edges, box.minX, lo, hi, up, ring);
  for (const { lo, hi, up } of netBeside(right)) addSide(edges, box.maxX, lo, hi, up, ring);
  for (const level of outline.levels) if (isInside(level, box)) tile.levels.push(level);
  tile.rings.push(outline);
}

/** Puts an edge between two heights where it belongs: inside, or beside the tile. */
function addPart(
  edge: Edge,
  lo: number,
  hi: number,
  ring: number,
  { box, edges }: TileEdges,
  left: Beside[],
  right: Beside[],
): void {
  if (edge.x0 > box.minX && edge.x1 > box.minX && edge.x0 < box.maxX && edge.x1 < box.maxX) {
    edges.push({ edge, lo, hi, ring, isSide: false });
    return;
  }
  const atLo = xAt(edge, lo);
  const atHi = xAt(edge, hi);
  let [bottom, top] = [lo, hi];
  for (const [side, beside] of [[box.minX, left] as const, [box.maxX, right] as const]) {
    const isOut = (x: number): boolean => (beside === left ? x <= side : x >= side);
    if (isOut(atLo) && isOut(atHi)) {
      beside.push({ lo, hi, up: edge.up });
      return;
    }
    if (!isOut(atLo) && !isOut(atHi)) continue;
    const y = Math.min(hi, Math.max(lo, yAt(edge, side)));
    if (isOut(atLo)) {
      beside.push({ lo, hi: y, up: edge.up });
      bottom = Math.max(bottom, y);
    } else {
      beside.push({ lo: y, hi, up: edge.up });
      top = Math.min(top, y);
    }
  }
  if (bottom < top) edges.push({ edge, lo: bottom, hi: top, ring, isSide: false });
}

/** The winding number along a side as few steps: what runs there and back again is not there. */
function netBeside(pieces: readonly Beside[]): readonly Beside[] {
  if (pieces.length < 2) return pieces.filter(({ lo, hi }) => lo < hi);
  const heights = new Float64Array(2 * pieces.length);
  for (let i = 0; i < pieces.length; i += 1) {
    heights[2 * i] = (pieces[i] as Beside).lo;
    heights[2 * i + 1] = (pieces[i] as Beside).hi;
  }
  heights.sort();
  const steps: Beside[] = [];
  for (let i = 0; i + 1 < heights.length; i += 1) {
    const lo = heights[i] as number;
    const hi = heights[i + 1] as number;
    if (lo === hi) continue;
    let up = 0;
    for (const piece of pieces) if (piece.lo <= lo && piece.hi >= hi) up += piece.up;
    const last = steps.at(-1);
    if (last && last.up === up && last.hi === lo) steps[steps.length - 1] = { lo: last.lo, hi, up };
    else if (up !== 0) steps.push({ lo, hi, up });
  }
  return steps;
}

function isWhole(steps: readonly Beside[], box: Box): boolean {
  return steps.every(({ lo, hi }) => lo === box.minY && hi === box.maxY);
}

function addSide(edges: EdgePart[], x: number, lo: number, hi: number, up: number, ring: number): void {
  const edge = up > 0 ? edgeBetween(x, lo, x, hi) : edgeBetween(x, hi, x, lo);
  if (edge) for (let i = 0; i < Math.abs(up); i += 1) edges.push({ edge, lo, hi, ring, isSide: true });
}

function isInside({ y, fromX, toX }: Level, box: Box): boolean {
  return y > box.minY && y < box.maxY && fromX < box.maxX && toX > box.minX;
}
