import type { Box } from '../box.ts';
import { type Edge, xAt } from './edge.ts';
import { STANDING_LAYERS, forEachInterval, isStandable, sideLines, SLIT_MM } from './intervals.ts';
import type { Outline } from './outline.ts';
import { placeIn } from './place.ts';
import { rootOf } from './rootOf.ts';
import { tileEdges } from './tileEdges.ts';

/*
 * Where the middle of a machine can stand in a tile, as rooms: pieces that hang together within it.
 *
 *    +-----------+         Looked at with a margin around the tile, so that all that reaches into the tile is seen.
 *    |  1   | 2  |         Along the four sides of the tile it is noted which room lies there, for the neighbours.
 *    |______|    |
 *    |   3  |    |
 *    +-----------+
 */
export interface TileRooms {
  readonly count: number;
  /** Rooms along the sides of the tile; x or y along the side. */
  readonly left: readonly SidePiece[];
  readonly right: readonly SidePiece[];
  readonly bottom: readonly SidePiece[];
  readonly top: readonly SidePiece[];
  /** A place inside each room. */
  readonly spots: readonly RoomSpot[];
  /** Room of each interval, in the order of the sweep; NO_ROOM for a skin. */
  readonly roomOf: readonly number[];
  /** True where something that could be stood on is too thin to be a room. */
  readonly hasSkins: boolean;
}

export interface SidePiece {
  readonly from: number;
  readonly to: number;
  readonly room: number;
}

export interface RoomSpot {
  readonly x: number;
  readonly y: number;
  /** False: the room lies in the margin only, and belongs to another tile. */
  readonly isInTile: boolean;
}

/** A room smaller than this, in mm2, is a skin: what rounding left between two things drawn against each other. */
const SKIN_MM2 = 1e-2;
const NO_ROOM = -1;

/** Floor that overlaps less than this, in mm, does not hang together: in a tile, or over the side of one. */
export const HANGS_MM = 1e-7;

/** Rooms of a tile. `box` is the tile, `around` the tile with its margin. */
export function tileRooms(box: Box, around: Box, outlines: readonly Outline[]): TileRooms {
  const tile = tileEdges(around, outlines);
  if (tile.rings.length === 0) return isStandable(placeIn(tile, STANDING_LAYERS)) ? wholeRoom(box) : EMPTY;
  const rooms = roomFinder(around);
  const sides: Record<'left' | 'right' | 'bottom' | 'top', SidePiece[]> = { left: [], right: [], bottom: [], top: [] };
  forEachInterval(tile, sideLines(box), [box.minY, box.maxY], isStandable, {
    interval: (bottom, top, left, right) => rooms.add(bottom, top, left.edge, right.edge),
    endSlab: (bottom, top) => {
      if (isAt(bottom, box.minY)) rooms.addLevel(sides.bottom, bottom, box);
      if (isAt(bottom, box.maxY)) rooms.addLevel(sides.top, bottom, box);
      rooms.endSlab(top);
    },
    line: (line, bottom, top) => {
      const side = line.edge.x0 === box.minX ? sides.left : sides.right;
      side.push({ from: bottom, to: top, room: rooms.latest() });
    },
  });
  const { roomOf, spots } = rooms.finish(box);
  const settle = (pieces: readonly SidePiece[]): SidePiece[] =>
    joined(
      pieces.map((piece) => ({ ...piece, room: roomOf[piece.room] as number })).filter(({ room }) => room !== NO_ROOM),
    );
  return {
    count: spots.length,
    left: settle(sides.left),
    right: settle(sides.right),
    bottom: settle(sides.bottom),
    top: settle(sides.top),
    spots,
    roomOf,
    hasSkins: roomOf.includes(NO_ROOM),
  };
}

/** The sweep takes heights that are very near for one. */
function isAt(height: number, wanted: number): boolean {
  return Math.abs(height - wanted) < 1e-8;
}

const EMPTY: TileRooms = { count: 0, left: [], right: [], bottom: [], top: [], spots: [], roomOf: [], hasSkins: false };

function wholeRoom({ minX, minY, maxX, maxY }: Box): TileRooms {
  const across = [{ from: minX, to: maxX, room: 0 }];
  const down = [{ from: minY, to: maxY, room: 0 }];
  const spots = [{ x: (minX + maxX) / 2, y: (minY + maxY) / 2, isInTile: true }];
  return { count: 1, left: down, right: down, bottom: across, top: across, spots, roomOf: [0], hasSkins: false };
}

/** Pieces of a side that follow each other in one room are one piece. */
function joined(pieces: readonly SidePiece[]): SidePiece[] {
  const out: SidePiece[] = [];
  for (const piece of pieces) {
    const last = out.at(-1);
    if (last && last.room === piece.room && last.to === piece.from) out[out.length - 1] = { ...last, to: piece.to };
    else out.push(piece);
  }
  return out;
}

/** Intervals in the order of the sweep, in plain lists: there are hundreds in a tile. */
interface Intervals {
  readonly bottoms: number[];
  readonly tops: number[];
  readonly lefts: Edge[];
  readonly rights: Edge[];
  /** What hangs together, as a forest (rootOf.ts). */
  readonly parent: number[];
}

/** Joins the intervals of neighbouring slabs that touch. */
function roomFinder(around: Box) {
  const intervals: Intervals = { bottoms: [], tops: [], lefts: [], rights: [], parent: [] };
  const { bottoms, tops, lefts, rights, parent } = intervals;
  /** First interval of the slab before, first of it that may touch what comes, and first of this slab. */
  let [before, next, here] = [0, 0, 0];
  let height = Number.NaN;

  const xIn = (edge: Edge, y: number): number => Math.min(around.maxX, Math.max(around.minX, xAt(edge, y)));

  /** Joins an interval with those of the slab before; both slabs have theirs from left to right. */
  function joinBelow(node: number, left: Edge, right: Edge, y: number): void {
    const [from, to] = [xIn(left, y), xIn(right, y)];
    while (next < here && xIn(rights[next] as Edge, y) <= from) next += 1;
    for (let other = next; other < here && xIn(lefts[other] as Edge, y) < to; other += 1) joinAt(node, y, other, y);
  }

  /**
   * A slit that lies level is a slab, or some, without floor: what ends just below it hangs together with what starts
   * above. Each is asked for its ends where it ends itself: a side that is all but level is metres off at another height.
   */
  function joinOverSlit(node: number, bottom: number): void {
    const last = bottom === height ? before : here;
    for (let other = last - 1; other >= 0 && (tops[other] as number) >= bottom - SLIT_MM; other -= 1)
      joinAt(node, bottom, other, Math.min(bottom, tops[other] as number));
  }

  function joinAt(node: number, y: number, other: number, otherY: number): void {
    const end = Math.min(xIn(rights[node] as Edge, y), xIn(rights[other] as Edge, otherY));
    const start = Math.max(xIn(lefts[node] as Edge, y), xIn(lefts[other] as Edge, otherY));
    if (end - start > HANGS_MM) parent[rootOf(parent, node)] = rootOf(parent, other);
  }

  return {
    add(bottom: number, top: number, left: Edge, right: Edge): void {
      const node = parent.push(parent.length) - 1;
      bottoms.push(bottom);
      tops.push(top);
      lefts.push(left);
      rights.push(right);
      if (bottom === height) joinBelow(node, left, right, bottom);
      joinOverSlit(node, bottom);
    },
    latest: (): number => parent.length - 1,
    /** Adds the intervals of this slab as pieces of a side of the tile at its bottom. */
    addLevel(side: SidePiece[], y: number, box: Box): void {
      for (let node = here; node < parent.length; node += 1) {
        const from = Math.max(box.minX, xAt(lefts[node] as Edge, y));
        const to = Math.min(box.maxX, xAt(rights[node] as Edge, y));
        if (from < to) side.push({ from, to, room: node });
      }
    },
    endSlab(top: number): void {
      [before, next, here, height] = [here, here, parent.length, top];
    },
    finish: (box: Box) => numberedRooms(intervals, box),
  };
}

type WideSpot = RoomSpot & { readonly width: number };

/** The room of each interval, and of each room the widest place. */
function numberedRooms(intervals: Intervals, box: Box) {
  const { bottoms, tops, lefts, rights, parent } = intervals;
  const numbers = new Map<number, number>();
  const areas = areasByRoot(intervals);
  const spots: WideSpot[] = [];
  const roomOf = parent.map((_, node) => {
    const root = rootOf(parent, node);
    if ((areas[root] as number) < SKIN_MM2) return NO_ROOM;
    const room = numbers.get(root) ?? numbers.size;
    numbers.set(root, room);
    const [bottom, top] = [bottoms[node] as number, tops[node] as number];
    const known = spots[room];
    // A slab lower than the best place is wide can hold no better one.
    if (known?.isInTile === true && top - bottom <= known.width) return room;
    const spot = spotIn(bottom, top, lefts[node] as Edge, rights[node] as Edge, box);
    if (!known || isBetter(spot, known)) spots[room] = spot;
    return room;
  });
  return { roomOf, spots };
}

/** Area of each room in mm2, arcs taken for chords, by the root of its forest. */
function areasByRoot({ bottoms, tops, lefts, rights, parent }: Intervals): Float64Array {
  const areas = new Float64Array(parent.length);
  for (let node = 0; node < parent.length; node += 1) {
    const [bottom, top] = [bottoms[node] as number, tops[node] as number];
    const [left, right] = [lefts[node] as Edge, rights[node] as Edge];
    const width = (xAt(right, bottom) + xAt(right, top) - xAt(left, bottom) - xAt(left, top)) / 2;
    const root = rootOf(parent, node);
    areas[root] = (areas[root] as number) + width * (top - bottom);
  }
  return areas;
}

function isBetter(a: WideSpot, b: WideSpot): boolean {
  return a.isInTile === b.isInTile ? a.width > b.width : a.isInTile;
}

/** The middle of an interval, of its part inside the tile where it has one. */
function spotIn(bottom: number, top: number, left: Edge, right: Edge, box: Box): WideSpot {
  const [lo, hi] = [Math.max(bottom, box.minY), Math.min(top, box.maxY)];
  const y = lo < hi ? (lo + hi) / 2 : (bottom + top) / 2;
  const [from, to] = [xAt(left, y), xAt(right, y)];
  const [inFrom, inTo] = [Math.max(from, box.minX), Math.min(to, box.maxX)];
  const isInTile = lo < hi && inFrom < inTo;
  const [start, end] = isInTile ? [inFrom, inTo] : [from, to];
  return { x: (start + end) / 2, y, isInTile, width: Math.min(end - start, top - bottom) };
}
