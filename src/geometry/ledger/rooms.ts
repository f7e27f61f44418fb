import type { Box } from '../box.ts';
import { type Edge, type EdgePart, edgeBetween, xAt } from './edge.ts';
import { APRON, BACK, BAND, FIRST_FREE, LEAD, SLAB, WAY } from './layers.ts';
import type { Outline } from './outline.ts';
import { type Place, placeIn } from './place.ts';
import { sweep } from './sweep.ts';
import { type TileEdges, tileEdges } from './tileEdges.ts';
import { type TracedLoop, tracer } from './trace.ts';

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
  /** Room of each interval, in the order of the sweep. */
  readonly roomOf: readonly number[];
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

const LAYERS = FIRST_FREE;
/** Floor that overlaps less than this, in mm, does not hang together; a slit narrower than the other is none. */
const HANGS_MM = 1e-7;
const SLIT_MM = 0.01;
/** Floor narrower than this, in mm, is what rounding left between two things drawn against each other. */
const SKIN_MM = 1e-5;

/** True where the middle of a body or head can be. */
export function isStandable(place: Place): boolean {
  const { inside } = place;
  if (place.solid > 0 || (inside[BAND] as number) > 0 || (inside[WAY] as number) > 0) return false;
  if ((inside[SLAB] as number) > 0) return true;
  return (inside[APRON] as number) > 0 && (inside[BACK] as number) === 0;
}

/** Number in `ring` of the two lines along the sides of the tile, which belong to no outline. */
const SIDE_LINE = -1;

/** Rooms of a tile. `box` is the tile, `around` the tile with its margin. */
export function tileRooms(box: Box, around: Box, outlines: readonly Outline[]): TileRooms {
  const tile = tileEdges(around, outlines);
  const rooms = roomFinder(box);
  const sides = {
    left: [] as SidePiece[],
    right: [] as SidePiece[],
    bottom: [] as SidePiece[],
    top: [] as SidePiece[],
  };
  const isUniform = tile.rings.length === 0;
  if (isUniform && !isStandable(placeIn(tile, LAYERS))) return EMPTY;
  if (isUniform) return wholeRoom(box);

  forEachInterval(tile, sideLines(box), [box.minY, box.maxY], isStandable, {
    interval: (bottom, top, left, right) => rooms.add(bottom, top, left, right, around),
    endSlab: (bottom, top) => {
      if (isAt(bottom, box.minY)) addLevel(sides.bottom, rooms.last(), bottom, box);
      if (isAt(bottom, box.maxY)) addLevel(sides.top, rooms.last(), bottom, box);
      rooms.endSlab(top);
    },
    line: (line, bottom, top) => {
      const side = line.edge.x0 === box.minX ? sides.left : sides.right;
      side.push({ from: bottom, to: top, room: rooms.latest() });
    },
  });
  const { roomOf, spots } = rooms.finish();
  const settle = (pieces: SidePiece[]): SidePiece[] =>
    pieces.map((piece) => ({ ...piece, room: roomOf[piece.room] as number }));
  return {
    count: spots.length,
    left: joined(settle(sides.left)),
    right: joined(settle(sides.right)),
    bottom: settle(sides.bottom),
    top: settle(sides.top),
    spots,
    roomOf,
  };
}

/** The sweep takes heights that are very near for one. */
function isAt(height: number, wanted: number): boolean {
  return Math.abs(height - wanted) < 1e-8;
}

const EMPTY: TileRooms = { count: 0, left: [], right: [], bottom: [], top: [], spots: [], roomOf: [] };

function wholeRoom({ minX, minY, maxX, maxY }: Box): TileRooms {
  const across = [{ from: minX, to: maxX, room: 0 }];
  const down = [{ from: minY, to: maxY, room: 0 }];
  const spots = [{ x: (minX + maxX) / 2, y: (minY + maxY) / 2, isInTile: true }];
  return { count: 1, left: down, right: down, bottom: across, top: across, spots, roomOf: [0] };
}

function sideLines({ minX, minY, maxX, maxY }: Box): EdgePart[] {
  return [minX, maxX].flatMap((x) => {
    const edge = edgeBetween(x, minY, x, maxY);
    return edge ? [{ edge, lo: minY, hi: maxY, ring: SIDE_LINE, isSide: true }] : [];
  });
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

interface IntervalListener {
  interval(bottom: number, top: number, left: EdgePart, right: EdgePart): void;
  endSlab(bottom: number, top: number): void;
  line(line: EdgePart, bottom: number, top: number): void;
}

/** The intervals of each slab in which a test holds, and the side lines that run through one. */
function forEachInterval(
  tile: TileEdges,
  lines: readonly EdgePart[],
  heights: readonly number[],
  test: (place: Place) => boolean,
  on: IntervalListener,
): void {
  const place = placeIn(tile, LAYERS);
  sweep(
    lines.length > 0 ? [...tile.edges, ...lines] : tile.edges,
    tile.box,
    (bottom, top, edges, areas) => {
      const slit = SLIT_MM * (top - bottom);
      let left: EdgePart | null = null;
      let right: EdgePart | null = null;
      let side: EdgePart | null = null;
      let [leftArea, rightArea, sideArea] = [0, 0, 0];
      let waiting: EdgePart[] = [];
      const close = (): void => {
        if (!left || !right) return;
        if (rightArea - leftArea > SKIN_MM * (top - bottom)) {
          on.interval(bottom, top, left, right);
          for (const line of waiting) on.line(line, bottom, top);
        }
        left = right = null;
        if (waiting.length > 0) waiting = [];
      };
      for (let i = 0; i < edges.length; i += 1) {
        const part = edges[i] as EdgePart;
        const isLine = part.ring === SIDE_LINE;
        if (!isLine) [side, sideArea] = [part, areas[i] as number];
        place.cross(part);
        const isLast = i + 1 === edges.length;
        if (!isLast && (areas[i + 1] as number) <= (areas[i] as number)) {
          if (isLine && left && !right) waiting.push(part);
          continue;
        }
        const isIn = !isLast && test(place);
        if (isIn && (!left || right) && side) {
          if (right && sideArea - rightArea <= slit) right = null;
          else {
            close();
            [left, leftArea] = [side, sideArea];
          }
        } else if (!isIn && left && !right) [right, rightArea] = [side, sideArea];
        if (isLine && left && !right) waiting.push(part);
      }
      close();
      on.endSlab(bottom, top);
    },
    heights,
  );
}

interface Interval {
  readonly node: number;
  readonly left: Edge;
  readonly right: Edge;
}

/** Joins the intervals of neighbouring slabs that touch, and numbers what hangs together. */
function roomFinder(box: Box) {
  const parent: number[] = [];
  const spots: { x: number; y: number; isInTile: boolean; width: number }[] = [];
  let before: Interval[] = [];
  let here: Interval[] = [];
  let height = Number.NaN;

  function root(node: number): number {
    let top = node;
    while (parent[top] !== top) top = parent[top] as number;
    for (let i = node; i !== top;) {
      const up = parent[i] as number;
      parent[i] = top;
      i = up;
    }
    return top;
  }

  function add(bottom: number, top: number, left: EdgePart, right: EdgePart, around: Box): void {
    const node = parent.length;
    parent.push(node);
    spots.push(spotIn(bottom, top, left.edge, right.edge, box));
    if (bottom === height) {
      const [from, to] = [within(around, xAt(left.edge, bottom)), within(around, xAt(right.edge, bottom))];
      for (const other of before) {
        const overlap =
          Math.min(to, within(around, xAt(other.right, bottom))) -
          Math.max(from, within(around, xAt(other.left, bottom)));
        if (overlap > HANGS_MM) parent[root(node)] = root(other.node);
      }
    }
    here.push({ node, left: left.edge, right: right.edge });
  }

  return {
    add,
    latest: () => parent.length - 1,
    last: (): readonly Interval[] => here,
    endSlab(top: number): void {
      [before, here, height] = [here, [], top];
    },
    finish() {
      const numbers = new Map<number, number>();
      const best: (RoomSpot & { width: number })[] = [];
      const roomOf = parent.map((_, node) => {
        const top = root(node);
        const room = numbers.get(top) ?? numbers.size;
        numbers.set(top, room);
        const spot = spots[node] as RoomSpot & { width: number };
        const known = best[room];
        if (!known || isBetter(spot, known)) best[room] = spot;
        return room;
      });
      return { roomOf, spots: best as readonly RoomSpot[] };
    },
  };
}

function isBetter(a: RoomSpot & { width: number }, b: RoomSpot & { width: number }): boolean {
  return a.isInTile === b.isInTile ? a.width > b.width : a.isInTile;
}

function within(box: Box, x: number): number {
  return Math.min(box.maxX, Math.max(box.minX, x));
}

/** The middle of an interval, of its part inside the tile where it has one. */
function spotIn(bottom: number, top: number, left: Edge, right: Edge, box: Box): RoomSpot & { width: number } {
  const [lo, hi] = [Math.max(bottom, box.minY), Math.min(top, box.maxY)];
  const y = lo < hi ? (lo + hi) / 2 : (bottom + top) / 2;
  const [from, to] = [xAt(left, y), xAt(right, y)];
  const [inFrom, inTo] = [Math.max(from, box.minX), Math.min(to, box.maxX)];
  const isInTile = lo < hi && inFrom < inTo;
  const [start, end] = isInTile ? [inFrom, inTo] : [from, to];
  return { x: (start + end) / 2, y, isInTile, width: Math.min(end - start, top - bottom) };
}

function addLevel(side: SidePiece[], intervals: readonly Interval[], y: number, box: Box): void {
  for (const { node, left, right } of intervals) {
    const from = Math.max(box.minX, xAt(left, y));
    const to = Math.min(box.maxX, xAt(right, y));
    if (from < to) side.push({ from, to, room: node });
  }
}

/** Outlines of some rooms of a tile, in its margin too; `isWanted` by room number. All: no outline comes near, and the one room is wanted. */
export function roomLoops(
  around: Box,
  box: Box,
  outlines: readonly Outline[],
  rooms: TileRooms,
  isWanted: (room: number) => boolean,
): TracedLoop[] | 'all' {
  const tile = tileEdges(around, outlines);
  if (tile.rings.length === 0) return rooms.count === 1 && isWanted(0) ? 'all' : [];
  const trace = tracer(around);
  let sides: EdgePart[] = [];
  let count = 0;
  forEachInterval(tile, sideLines(box), [box.minY, box.maxY], isStandable, {
    interval: (_bottom, _top, left, right) => {
      if (isWanted(rooms.roomOf[count++] as number)) sides.push(left, right);
    },
    endSlab: (bottom, top) => {
      trace.slab(bottom, top, sides);
      sides = [];
    },
    line: () => undefined,
  });
  return trace.loops();
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
      const node = count++;
      if (y < bottom || y > top || xAt(left.edge, y) > x || xAt(right.edge, y) < x) return;
      found = rooms.roomOf[node] as number;
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
  if (tile.rings.length === 0) return test(placeIn(tile, LAYERS)) ? 'all' : [];
  const trace = tracer(around);
  let sides: EdgePart[] = [];
  forEachInterval(tile, [], [], test, {
    interval: (_bottom, _top, left, right) => sides.push(left, right),
    endSlab: (bottom, top) => {
      trace.slab(bottom, top, sides);
      sides = [];
    },
    line: () => undefined,
  });
  return trace.loops();
}
