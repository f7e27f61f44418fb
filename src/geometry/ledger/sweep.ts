import { addCrossings } from './crossings.ts';
import { type Edge, areaBeside, xAt } from './edge.ts';
import type { Box } from '../box.ts';

/*
 * One pass over the edges of a tile.
 *
 *   top     ------------------------     The heights of all ends and crossings cut the tile into slabs. Within a slab
 *           | a  \  b  |   c  / d  |     no two edges cross, so they have an order from left to right, and between two
 *   bottom  ------------------------     neighbours lies a trapezoid. Whoever listens walks along them.
 *
 * Nothing is linked up and no ring is closed, so nothing can fail to close: an outline that crosses itself, touches
 * itself or lies on another only makes more slabs.
 */
export interface SlabListener {
  /** Edges from left to right; `leftArea` of each is the area between it and the left side of the tile. */
  (bottom: number, top: number, edges: readonly Edge[]): void;
}

/** Heights nearer than this, in mm, are one. */
const SAME_HEIGHT_MM = 1e-9;

/** Tells the slabs of a tile from the lowest to the highest. Edges are those of `clipToTile`; their order decides ties. `stops` are heights to cut at besides. */
export function sweep(edges: readonly Edge[], box: Box, onSlab: SlabListener, stops: readonly number[] = []): void {
  const rising = edges.toSorted((a, b) => a.lo - b.lo);
  const heights = slabHeights(rising, box, stops);
  const active: Edge[] = [];
  let next = 0;
  for (let i = 0; i + 1 < heights.length; i += 1) {
    const bottom = heights[i] as number;
    const top = heights[i + 1] as number;
    const middle = (bottom + top) / 2;
    dropBelow(active, middle);
    for (let edge = rising[next]; edge && edge.lo < middle; edge = rising[(next += 1)]) {
      if (edge.hi > middle) active.push(edge);
    }
    for (const edge of active) edge.leftArea = areaBeside(edge, bottom, top, box.minX);
    sortByArea(active);
    onSlab(bottom, top, active);
  }
}

function slabHeights(rising: readonly Edge[], box: Box, stops: readonly number[]): readonly number[] {
  const heights = [box.minY, box.maxY, ...stops];
  for (const [i, edge] of rising.entries()) {
    heights.push(edge.lo, edge.hi);
    for (let j = i + 1; j < rising.length; j += 1) {
      const other = rising[j] as Edge;
      if (other.lo >= edge.hi) break;
      if (mayCross(edge, other)) addCrossings(edge, other, heights);
    }
  }
  const sorted = Float64Array.from(heights).sort();
  const out: number[] = [box.minY];
  let last = box.minY;
  for (const y of sorted) {
    if (y <= last + SAME_HEIGHT_MM || y > box.maxY) continue;
    if (box.maxY - y > SAME_HEIGHT_MM || y === box.maxY) out.push((last = y));
  }
  return out;
}

/** Their boxes overlap, each between its own ends. */
function mayCross(a: Edge, b: Edge): boolean {
  const aMin = a.x0 < a.x1 ? a.x0 : a.x1;
  const aMax = a.x0 < a.x1 ? a.x1 : a.x0;
  const bMin = b.x0 < b.x1 ? b.x0 : b.x1;
  const bMax = b.x0 < b.x1 ? b.x1 : b.x0;
  return aMin <= bMax && bMin <= aMax;
}

function dropBelow(active: Edge[], height: number): void {
  let kept = 0;
  for (const edge of active) {
    if (edge.hi > height) active[kept++] = edge;
  }
  active.length = kept;
}

/** Insertion: from slab to slab the order hardly changes. Equal ones stay as they are. */
function sortByArea(active: Edge[]): void {
  for (let i = 1; i < active.length; i += 1) {
    const edge = active[i] as Edge;
    let j = i - 1;
    while (j >= 0 && (active[j] as Edge).leftArea > edge.leftArea) {
      active[j + 1] = active[j] as Edge;
      j -= 1;
    }
    active[j + 1] = edge;
  }
}

/** Where an edge is at a height, kept inside the sides of its tile. */
export function xInBox(edge: Edge, y: number, box: Box): number {
  return Math.min(box.maxX, Math.max(box.minX, xAt(edge, y)));
}
