import type { Box } from '../box.ts';
import { type EdgePart, xAt } from './edge.ts';
import { STANDING_LAYERS, forEachInterval, isStandable, sideLines } from './intervals.ts';
import { LEAD } from './layers.ts';
import type { Outline } from './outline.ts';
import { type Place, placeIn } from './place.ts';
import type { TileRooms } from './rooms.ts';
import { type TileEdges, tileEdges } from './tileEdges.ts';
import { type TracedLoop, tracer } from './trace.ts';

/*
 * Outlines of where a machine can stand: of some rooms only, or of all that its head can stand in.
 *
 *      +-----+  +--+        The same intervals as in rooms.ts, told in the same order, so the room of each is known by
 *      | 0   |  | 1|        counting. Those that are wanted are handed to a tracer.
 *      +-----+  +--+
 */

/** Outlines of some rooms of a tile, in its margin too; `isWanted` by room number. 'all': no outline comes near, and the one room is wanted. */
export function roomLoops(
  around: Box,
  box: Box,
  outlines: readonly Outline[],
  rooms: TileRooms,
  isWanted: (room: number) => boolean,
): TracedLoop[] | 'all' {
  const tile = tileEdges(around, outlines);
  if (tile.rings.length === 0) return rooms.count === 1 && isWanted(0) ? 'all' : [];
  return tracedIntervals(tile, box, isStandable, (interval) => isWanted(rooms.roomOf[interval] as number));
}

/** Number of the room that a place lies in, or -1. */
export function roomAt(
  around: Box,
  box: Box,
  outlines: readonly Outline[],
  rooms: TileRooms,
  x: number,
  y: number,
): number {
  if (rooms.count === 0) return -1;
  const tile = tileEdges(around, outlines);
  if (tile.rings.length === 0) return 0;
  let count = 0;
  let found = -1;
  forEachInterval(tile, sideLines(box), [box.minY, box.maxY], isStandable, {
    interval: (bottom, top, left, right) => {
      const isHere = y >= bottom && y <= top && xAt(left.edge, y) <= x && xAt(right.edge, y) >= x;
      if (isHere) found = rooms.roomOf[count] as number;
      count += 1;
    },
    endSlab: () => undefined,
    line: () => undefined,
  });
  return found;
}

/** Where the middle of a head can stand within a tile and its margin: as isStandable, near to where the body has come by. */
export function standLoops(around: Box, outlines: readonly Outline[], needsLead: boolean): TracedLoop[] | 'all' {
  const tile = tileEdges(around, outlines);
  const test = (place: Place): boolean => isStandable(place) && (!needsLead || (place.inside[LEAD] as number) > 0);
  if (tile.rings.length === 0) return test(placeIn(tile, STANDING_LAYERS)) ? 'all' : [];
  return tracedIntervals(tile, null, test, () => true);
}

/** Outlines of the intervals that are wanted, by their place in the sweep. `cutAt`: the tile at whose sides they are cut, as rooms are. */
function tracedIntervals(
  tile: TileEdges,
  cutAt: Box | null,
  test: (place: Place) => boolean,
  isWanted: (interval: number) => boolean,
): TracedLoop[] {
  const trace = tracer(tile.box);
  let sides: EdgePart[] = [];
  let count = 0;
  forEachInterval(tile, cutAt ? sideLines(cutAt) : [], cutAt ? [cutAt.minY, cutAt.maxY] : [], test, {
    interval: (_bottom, _top, left, right) => {
      if (isWanted(count)) sides.push(left, right);
      count += 1;
    },
    endSlab: (bottom, top) => {
      trace.slab(bottom, top, sides);
      sides = [];
    },
    line: () => undefined,
  });
  return trace.loops();
}
