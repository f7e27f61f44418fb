import type { Box } from '../box.ts';
import { addCrossings } from './crossings.ts';
import { type EdgePart, areaBeside, xAt } from './edge.ts';

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
  /** Edges from left to right, and of each the area between it and the left side of the tile. Both lists are reused: copy what is kept. */
  (bottom: number, top: number, edges: readonly EdgePart[], areas: ArrayLike<number>): void;
}

/** Heights nearer than this, in mm, are one. */
const SAME_HEIGHT_MM = 1e-9;

/** Tells the slabs of a tile from the lowest to the highest. Edges that lie on each other come in the order of `parts`. `stops` are heights to cut at besides. */
export function sweep(parts: readonly EdgePart[], box: Box, onSlab: SlabListener, stops: readonly number[] = []): void {
  const rising = parts.toSorted((a, b) => a.lo - b.lo);
  const heights = slabHeights(rising, box, stops);
  const active: EdgePart[] = [];
  // Beside the active edges, in plain numbers: as fields of objects they would cost an allocation each time they change.
  const areas = new Float64Array(rising.length);
  const tops = new Float64Array(rising.length);
  let next = 0;
  for (let i = 0; i + 1 < heights.length; i += 1) {
    const bottom = heights[i] as number;
    const top = heights[i + 1] as number;
    const middle = (bottom + top) / 2;
    let count = 0;
    for (let k = 0; k < active.length; k += 1) {
      const part = active[k] as EdgePart;
      if (part.hi <= middle) continue;
      const low = tops[k] as number;
      tops[count] = xAt(part.edge, top);
      areas[count] = areaBeside(part.edge, bottom, low, top, tops[count] as number, box.minX);
      active[count] = part;
      count += 1;
    }
    active.length = count;
    for (let part = rising[next]; part && part.lo <= middle; part = rising[(next += 1)]) {
      if (part.hi <= middle) continue;
      tops[count] = xAt(part.edge, top);
      areas[count] = areaBeside(part.edge, bottom, xAt(part.edge, bottom), top, tops[count] as number, box.minX);
      active.push(part);
      count += 1;
    }
    sortByArea(active, areas, tops);
    onSlab(bottom, top, active, areas);
  }
}

function slabHeights(rising: readonly EdgePart[], box: Box, stops: readonly number[]): readonly number[] {
  const heights = [box.minY, box.maxY, ...stops];
  for (let i = 0; i < rising.length; i += 1) {
    const part = rising[i] as EdgePart;
    heights.push(part.lo, part.hi);
    for (let j = i + 1; j < rising.length; j += 1) {
      const other = rising[j] as EdgePart;
      if (other.lo >= part.hi) break;
      if (mayCross(part, other)) addCrossings(part, other, heights);
    }
  }
  const sorted = Float64Array.from(heights).toSorted();
  const out: number[] = [box.minY];
  let last = box.minY;
  for (let i = 0; i < sorted.length; i += 1) {
    const y = sorted[i] as number;
    if (y <= last + SAME_HEIGHT_MM || y > box.maxY) continue;
    if (box.maxY - y > SAME_HEIGHT_MM || y === box.maxY) {
      out.push(y);
      last = y;
    }
  }
  return out;
}

/** True when there is an x that both edges have somewhere; that their heights overlap is known. */
function mayCross({ edge: a }: EdgePart, { edge: b }: EdgePart): boolean {
  const aMin = a.x0 < a.x1 ? a.x0 : a.x1;
  const bMax = b.x0 < b.x1 ? b.x1 : b.x0;
  if (aMin > bMax) return false;
  const aMax = a.x0 < a.x1 ? a.x1 : a.x0;
  const bMin = b.x0 < b.x1 ? b.x0 : b.x1;
  return bMin <= aMax;
}

/** Insertion: from slab to slab the order hardly changes. Equal ones stay as they are. */
function sortByArea(active: EdgePart[], areas: Float64Array, tops: Float64Array): void {
  for (let i = 1; i < active.length; i += 1) {
    const area = areas[i] as number;
    if ((areas[i - 1] as number) <= area) continue;
    const part = active[i] as EdgePart;
    const top = tops[i] as number;
    let j = i - 1;
    while (j >= 0 && (areas[j] as number) > area) {
      active[j + 1] = active[j] as EdgePart;
      areas[j + 1] = areas[j] as number;
      tops[j + 1] = tops[j] as number;
      j -= 1;
    }
    active[j + 1] = part;
    areas[j + 1] = area;
    tops[j + 1] = top;
  }
}
