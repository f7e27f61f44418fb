import { type Box, boxesMeet, grownBox } from '../box.ts';
import type { MachineShape, Point } from '../floorShape.ts';
import type { Face } from '../hardFace.ts';
import { distance } from '../point.ts';
import { crossing } from '../segment.ts';
import { grownOutline } from './growth.ts';
import { LEAD, reachLayer } from './layers.ts';
import type { MachineSizes } from './machineSizes.ts';
import { type Outline, ringOutline } from './outline.ts';
import { roomAt, roomLoops, standLoops } from './roomLoops.ts';
import { type SidePiece, type TileRooms, tileRooms } from './rooms.ts';
import { type RoomLink, type Tile, type TileGrid, outlinesIn } from './tiles.ts';
import type { TracedLoop } from './trace.ts';

/*
 * What one machine gets to.
 *
 *   rooms      where its body can stand, tile by tile
 *   links      rooms of neighbouring tiles that lie on the same stretch of their common side are one
 *   entered    rooms that hang together with one that an entrance leads to
 *   reach      where the head can stand in entered rooms, grown by its radius
 */
export interface MachineAt {
  readonly shape: MachineShape;
  readonly number: number;
  readonly sizes: MachineSizes;
}

/** How far around a tile its rooms are looked at: what reaches into the tile, and a little. */
export function marginOf({ sizes }: MachineAt): number {
  return sizes.headMm + sizes.leadMm + 2;
}

function around(tile: Tile, machine: MachineAt): Box {
  return grownBox(tile.box, marginOf(machine));
}

/** Outlines that say where a body can stand. */
function bodyOutlines(tile: Tile, machine: MachineAt): readonly Outline[] {
  return [
    ...outlinesIn(tile, 'hard'),
    ...outlinesIn(tile, `room ${machine.number}`),
    ...outlinesIn(tile, `way ${machine.number}`),
    ...outlinesIn(tile, `body ${machine.number}`),
  ];
}

function headOutlines(tile: Tile, machine: MachineAt): readonly Outline[] {
  return [
    ...outlinesIn(tile, 'hard'),
    ...outlinesIn(tile, `room ${machine.number}`),
    ...outlinesIn(tile, `way ${machine.number}`),
    ...outlinesIn(tile, `head ${machine.number}`),
  ];
}

export function findRooms(tile: Tile, machine: MachineAt): TileRooms {
  return tileRooms(tile.box, around(tile, machine), bodyOutlines(tile, machine));
}

/**
 * Which rooms of each tile a machine gets to: tells the tiles in which that is other than `reached` says there. With no
 * entrance every room counts.
 */
export function enteredRooms(
  grid: TileGrid,
  machine: MachineAt,
  entrances: readonly EnteredAt[] | null,
  onChange: (tile: Tile, reached: readonly boolean[]) => void,
): void {
  const { number } = machine;
  const countOf = (tile: Tile): number => tile.rooms[number]?.count ?? 0;
  const first = new Int32Array(grid.tiles.length + 1);
  for (const tile of grid.tiles) first[tile.index + 1] = (first[tile.index] as number) + countOf(tile);
  const parent = new Int32Array(first.at(-1) as number);
  for (let node = 0; node < parent.length; node += 1) parent[node] = node;
  const root = (node: number): number => {
    let top = node;
    while (parent[top] !== top) top = parent[top] as number;
    parent[node] = top;
    return top;
  };
  const nodeOf = (tile: Tile, room: number): number => (first[tile.index] as number) + room;
  for (const tile of grid.tiles)
    for (const { room, tile: other, there } of tile.links[number] ?? [])
      parent[root(nodeOf(tile, room))] = root(nodeOf(other, there));
  const entered = entrances && new Set(entrances.map(({ tile, room }) => root(nodeOf(tile, room))));
  const isEntered = (tile: Tile, room: number): boolean => !entered || entered.has(root(nodeOf(tile, room)));
  for (const tile of grid.tiles) {
    const count = countOf(tile);
    const known = tile.reached[number];
    let isSame = known?.length === count;
    for (let room = 0; isSame && room < count; room += 1) isSame = known?.[room] === isEntered(tile, room);
    if (!isSame)
      onChange(
        tile,
        Array.from({ length: count }, (_, room) => isEntered(tile, room)),
      );
  }
}

export interface EnteredAt {
  readonly tile: Tile;
  readonly room: number;
}

/** Pieces of sides that share less than this, in mm, do not hang together. */
const HANGS_MM = 1e-7;

/** What the rooms of a tile hang together with in the tiles to the right and above, and those of its margin wherever they lie. */
export function roomLinks(grid: TileGrid, tile: Tile, machine: MachineAt): RoomLink[] {
  const links: RoomLink[] = [];
  const rooms = tile.rooms[machine.number] as TileRooms;
  if (rooms.count === 0) return links;
  const { minX, minY, maxX, maxY } = tile.box;
  const right = grid.tileAt(maxX + 1, (minY + maxY) / 2);
  const above = grid.tileAt((minX + maxX) / 2, maxY + 1);
  const add = (room: number, other: Tile, there: number): void => void links.push({ room, tile: other, there });
  if (right) linkSides(rooms.right, (right.rooms[machine.number] as TileRooms).left, (a, b) => add(a, right, b));
  if (above) linkSides(rooms.top, (above.rooms[machine.number] as TileRooms).bottom, (a, b) => add(a, above, b));
  for (const [room, spot] of rooms.spots.entries()) {
    if (spot.isInTile) continue;
    // A room in the margin only: the tile that it lies in knows what it hangs together with.
    const home = roomHolding([spot.x, spot.y], machine, grid);
    if (home) add(room, home.tile, home.room);
  }
  return links;
}

/** Both lists run along the side in order. */
function linkSides(
  a: readonly SidePiece[],
  b: readonly SidePiece[],
  link: (roomA: number, roomB: number) => void,
): void {
  let j = 0;
  for (const piece of a) {
    while (j < b.length && (b[j] as SidePiece).to <= piece.from) j += 1;
    for (let k = j; k < b.length && (b[k] as SidePiece).from < piece.to; k += 1) {
      const other = b[k] as SidePiece;
      if (Math.min(piece.to, other.to) - Math.max(piece.from, other.from) > HANGS_MM) link(piece.room, other.room);
    }
  }
}

/** What the head of a machine covers in a tile, as one outline; null for nothing. */
export function reachIn(tile: Tile, machine: MachineAt): Outline | null {
  const { number, sizes } = machine;
  const entered = tile.reached[number] ?? [];
  if (!entered.includes(true)) return null;
  const layer = reachLayer(number);
  const box = around(tile, machine);
  const needsLead = sizes.leadMm > 0 || entered.includes(false);
  const lead = needsLead ? leadOutline(tile, machine, entered) : null;
  const stand = standLoops(box, lead ? [...headOutlines(tile, machine), lead] : headOutlines(tile, machine), needsLead);
  if (stand === 'all') return wholeOutline(box, layer);
  return stand.length === 0 ? null : grownOutline(stand, sizes.headMm, box, layer, number);
}

/** Where the body has come by, grown by how far the head may go ahead. */
function leadOutline(tile: Tile, machine: MachineAt, entered: readonly boolean[]): Outline {
  const box = around(tile, machine);
  const loops = roomLoops(
    box,
    tile.box,
    bodyOutlines(tile, machine),
    tile.rooms[machine.number] as TileRooms,
    (room) => entered[room] === true,
  );
  if (loops === 'all') return wholeOutline(box, LEAD);
  return loops.length === 0
    ? wholeOutline({ minX: 0, minY: 0, maxX: 0, maxY: 0 }, LEAD)
    : grownOutline(loops, machine.sizes.leadMm, box, LEAD, 0);
}

function wholeOutline({ minX, minY, maxX, maxY }: Box, layer: number): Outline {
  return ringOutline(
    [
      [minX, minY],
      [maxX, minY],
      [maxX, maxY],
      [minX, maxY],
    ],
    layer,
    0,
  );
}

/** An entrance this near to an edge, in mm, leads in through it. */
export const ON_EDGE_MM = 5;
/** How far apart floor is asked for along an edge where machines come on, in mm. */
const STEP_MM = 25;

/** Rooms that an entrance leads to: the one it lies in, all along the open edge it lies on, or the nearest in sight. */
export function roomsAt(
  at: Point,
  machine: MachineAt,
  grid: TileGrid,
  runEdges: readonly { readonly a: Point; readonly b: Point }[],
  facesNear: (box: Box) => readonly Face[],
): EnteredAt[] {
  const holding = roomHolding(at, machine, grid);
  if (holding) return [holding];
  const edge = runEdges.find(({ a, b }) => distanceTo(at, a, b) <= ON_EDGE_MM);
  if (edge) return roomsAlong(edge.a, edge.b, machine, grid);
  const within = Math.max(...Object.values(machine.sizes.bodyMm)) * 1.5 + ON_EDGE_MM;
  const place = nearestInSight(at, within, machine, grid, facesNear);
  const found = place && roomHolding(place, machine, grid);
  return found ? [found] : [];
}

function roomHolding([x, y]: Point, machine: MachineAt, grid: TileGrid): EnteredAt | null {
  const tile = grid.tileAt(x, y);
  if (!tile) return null;
  const room = roomAt(
    around(tile, machine),
    tile.box,
    bodyOutlines(tile, machine),
    tile.rooms[machine.number] as TileRooms,
    x,
    y,
  );
  return room >= 0 ? { tile, room } : null;
}

function roomsAlong(a: Point, b: Point, machine: MachineAt, grid: TileGrid): EnteredAt[] {
  const steps = Math.max(1, Math.ceil(distance(a, b) / STEP_MM));
  const found: EnteredAt[] = [];
  for (let i = 0; i <= steps; i += 1) {
    const share = i / steps;
    const at = roomHolding([a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share], machine, grid);
    if (at && !found.some((other) => other.tile === at.tile && other.room === at.room)) found.push(at);
  }
  return found;
}

/** A place just inside the nearest floor that a body can stand on, with no face in between. */
function nearestInSight(
  at: Point,
  withinMm: number,
  machine: MachineAt,
  grid: TileGrid,
  facesNear: (box: Box) => readonly Face[],
): Point | null {
  const box = grownBox({ minX: at[0], minY: at[1], maxX: at[0], maxY: at[1] }, withinMm);
  const outlines = [...new Set(grid.meeting(box).flatMap((tile) => bodyOutlines(tile, machine)))];
  const loops = standLoops(box, outlines, false);
  if (loops === 'all') return at;
  const faces = facesNear(box);
  const places = loops.flatMap((loop) => nearestOf(loop, at)).filter((place) => distance(place, at) <= withinMm);
  const seen = places
    .filter((place) => isInSight(at, place, faces))
    .toSorted((p, q) => distance(p, at) - distance(q, at))[0];
  if (!seen) return null;
  const far = distance(seen, at);
  const beyond = (far + 1e-3) / far;
  return [at[0] + (seen[0] - at[0]) * beyond, at[1] + (seen[1] - at[1]) * beyond];
}

/** Nearest places on the pieces of an outline; sides of the box that was looked at are no outline. */
function nearestOf(loop: TracedLoop, at: Point): Point[] {
  return loop.flatMap(({ fromX, fromY, toX, toY, part }): Point[] => {
    if (part?.isSide) return [];
    const arc = part?.edge.arc;
    if (arc) {
      const far = Math.hypot(at[0] - arc.cx, at[1] - arc.cy);
      const onArc: Point = [
        arc.cx + ((at[0] - arc.cx) * arc.radius) / far,
        arc.cy + ((at[1] - arc.cy) * arc.radius) / far,
      ];
      const isOn =
        onArc[1] >= Math.min(fromY, toY) && onArc[1] <= Math.max(fromY, toY) && (onArc[0] - arc.cx) * arc.half >= 0;
      return isOn
        ? [onArc]
        : [
            [fromX, fromY],
            [toX, toY],
          ];
    }
    const [dx, dy] = [toX - fromX, toY - fromY];
    const share = Math.min(1, Math.max(0, ((at[0] - fromX) * dx + (at[1] - fromY) * dy) / (dx * dx + dy * dy)));
    return [[fromX + dx * share, fromY + dy * share]];
  });
}

/** No face between the two places; the face the entrance stands in does not hide anything. */
function isInSight(at: Point, to: Point, faces: readonly Face[]): boolean {
  return faces.every((face) => {
    const meet = crossing(at, to, face.a, face.b);
    return !meet || distance(meet.at, at) <= ON_EDGE_MM;
  });
}

function distanceTo(at: Point, a: Point, b: Point): number {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const square = dx * dx + dy * dy;
  const share = square === 0 ? 0 : Math.min(1, Math.max(0, ((at[0] - a[0]) * dx + (at[1] - a[1]) * dy) / square));
  return Math.hypot(at[0] - a[0] - dx * share, at[1] - a[1] - dy * share);
}

export function facesIn(faces: readonly Face[], box: Box): readonly Face[] {
  return faces.filter(({ a, b }) =>
    boxesMeet(box, {
      minX: Math.min(a[0], b[0]),
      minY: Math.min(a[1], b[1]),
      maxX: Math.max(a[0], b[0]),
      maxY: Math.max(a[1], b[1]),
    }),
  );
}
