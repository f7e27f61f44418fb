import type { Box } from '../box.ts';
import { type Edge, type EdgePart, edgeBetween, xAt } from './edge.ts';
import { APRON, BACK, BAND, FIRST_FREE, SLAB, WAY } from './layers.ts';
import { type Place, crossEdge, placeIn } from './place.ts';
import { sweep } from './sweep.ts';
import type { TileEdges } from './tileEdges.ts';

/*
 * The stretches of each slab in which something holds: where a machine can stand, and how near to where it has been.
 *
 *      |  ####  |#######|   ####|        two stretches with no more than a slit between them are one; what is
 *                                        thinner than a skin is none
 */
export interface IntervalListener {
  interval(bottom: number, top: number, left: EdgePart, right: EdgePart): void;
  endSlab(bottom: number, top: number): void;
  /** A side line of the tile runs through the interval that was told last. */
  line(line: EdgePart, bottom: number, top: number): void;
}

export const STANDING_LAYERS = FIRST_FREE;

/** True where the middle of a body or head can be. */
export function isStandable(place: Place): boolean {
  const { inside } = place;
  if (place.solid > 0 || (inside[BAND] as number) > 0 || (inside[WAY] as number) > 0) return false;
  if ((inside[SLAB] as number) > 0) return true;
  return (inside[APRON] as number) > 0 && (inside[BACK] as number) === 0;
}

/** Two stretches with less than this between them, in mm, hang together. */
export const SLIT_MM = 0.05;
/** Floor narrower than this, in mm, is what rounding left between two things drawn against each other. */
const SKIN_MM = 1e-6;
/** True for what is thinner than a skin across, be it wide along the slab: two edges that are all but level, one over the other. */
function isSkin({ edge: left }: EdgePart, { edge: right }: EdgePart, widthMm: number): boolean {
  if (widthMm <= SKIN_MM) return true;
  if (widthMm * Math.max(riseOf(left), riseOf(right)) > SKIN_MM) return false;
  return Math.max(left.x0, left.x1) > Math.min(right.x0, right.x1);
}

/** Slabs lower than this, in mm, are asked whether their sides cross. */
const LOW_MM = 1e-6;

/**
 * True where the sides cross within a slab that is too low to have been cut there: an edge that is all but level runs
 * from one end of it to the other. What that leaves is no floor; a head that stood on it would come through walls.
 */
function isCrossed({ edge: left }: EdgePart, { edge: right }: EdgePart, bottom: number, top: number): boolean {
  if (top - bottom > LOW_MM) return false;
  return Math.max(xAt(left, bottom), xAt(left, top)) > Math.min(xAt(right, bottom), xAt(right, top)) + SKIN_MM;
}

/** How steep an edge is, from 0 for level to 1 for upright; arcs count as upright. */
function riseOf({ x0, y0, x1, y1, arc }: Edge): number {
  return arc ? 1 : (y1 - y0) / Math.max(y1 - y0, Math.abs(x1 - x0));
}

/** An edge that runs this many times as far as it rises is flat. */
const FLAT = 1000;
/** Less than this far past another edge, in mm, is rounding that does no harm. */
const PAST_MM = 1e-4;

function isFlat({ ring, edge: { x0, y0, x1, y1, arc } }: EdgePart): boolean {
  return ring === SIDE_LINE || (!arc && Math.abs(x1 - x0) > FLAT * (y1 - y0));
}

/**
 * A side as it is within a slab. The sweep takes heights that are very near for one, and a crossing between them is none:
 * a flat edge would then lead past the one beside it, metres off, and floor would hang together that does not. It goes no
 * further than the next steep ones on both sides.
 */
function sideWithin(edges: readonly EdgePart[], at: number, bottom: number, top: number): EdgePart {
  const side = edges[at] as EdgePart;
  if (!isFlat(side)) return side;
  let [before, after] = [at - 1, at + 1];
  while (before >= 0 && isFlat(edges[before] as EdgePart)) before -= 1;
  while (after < edges.length && isFlat(edges[after] as EdgePart)) after += 1;
  const within = (y: number): number => {
    const from = before < 0 ? -Infinity : xAt((edges[before] as EdgePart).edge, y);
    const to = after === edges.length ? Infinity : xAt((edges[after] as EdgePart).edge, y);
    return Math.max(from, Math.min(to, xAt(side.edge, y)));
  };
  const [low, high] = [within(bottom), within(top)];
  const isAsDrawn = (x: number, y: number): boolean => Math.abs(x - xAt(side.edge, y)) < PAST_MM;
  if (isAsDrawn(low, bottom) && isAsDrawn(high, top)) return side;
  const { up, arc, source } = side.edge;
  const edge: Edge = { x0: low, y0: bottom, x1: high, y1: top, up, arc, source };
  return { ...side, edge, lo: bottom, hi: top };
}

/** Number in `ring` of the two lines along the sides of the tile, which belong to no outline. */
const SIDE_LINE = -1;

/** The sides of a tile as lines to look along, inside its margin. */
export function sideLines({ minX, minY, maxX, maxY }: Box): EdgePart[] {
  return [minX, maxX].flatMap((x) => {
    const edge = edgeBetween(x, minY, x, maxY);
    return edge ? [{ edge, lo: minY, hi: maxY, ring: SIDE_LINE, isSide: true }] : [];
  });
}

/** Tells the intervals of each slab in which a test holds. */
export function forEachInterval(
  tile: TileEdges,
  lines: readonly EdgePart[],
  heights: readonly number[],
  test: (place: Place) => boolean,
  on: IntervalListener,
): void {
  const place = placeIn(tile, STANDING_LAYERS);
  const waiting: EdgePart[] = [];
  let left: EdgePart | null = null;
  let right: EdgePart | null = null;
  let [leftArea, rightArea] = [0, 0];

  function close(bottom: number, top: number): void {
    const widthMm = (rightArea - leftArea) / (top - bottom);
    if (left && right && !isSkin(left, right, widthMm) && !isCrossed(left, right, bottom, top)) {
      on.interval(bottom, top, left, right);
      for (const line of waiting) on.line(line, bottom, top);
    }
    left = null;
    right = null;
    waiting.length = 0;
  }

  const parts = lines.length > 0 ? [...tile.edges, ...lines] : tile.edges;
  sweep(
    parts,
    tile.box,
    (bottom, top, edges, areas) => {
      const slit = SLIT_MM * (top - bottom);
      let side = -1;
      let sideArea = 0;
      for (let i = 0; i < edges.length; i += 1) {
        const part = edges[i] as EdgePart;
        const isLine = part.ring === SIDE_LINE;
        if (!isLine) {
          side = i;
          sideArea = areas[i] as number;
        }
        crossEdge(place, part);
        const isLast = i + 1 === edges.length;
        // Of edges that lie on each other only the last one says what comes after them.
        const isSettled = isLast || (areas[i + 1] as number) > (areas[i] as number);
        const isIn = isSettled && !isLast && test(place);
        if (isSettled && isIn && (!left || right)) {
          if (right && sideArea - rightArea <= slit) right = null;
          else {
            close(bottom, top);
            left = sideWithin(edges, side, bottom, top);
            leftArea = sideArea;
          }
        } else if (isSettled && !isIn && left && !right) {
          right = sideWithin(edges, side, bottom, top);
          rightArea = sideArea;
        }
        if (isLine && left && !right) waiting.push(part);
      }
      close(bottom, top);
      on.endSlab(bottom, top);
    },
    heights,
  );
}
