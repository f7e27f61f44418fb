import { type Box, boxRing, grownBox } from '../box.ts';
import type { MachineShape, Point } from '../floorShape.ts';
import { grownOutline } from './growth.ts';
import { LEAD, reachLayer } from './layers.ts';
import type { MachineSizes } from './machineSizes.ts';
import { type Outline, ringOutline } from './outline.ts';
import { roomAt, roomLoops, standLoops } from './roomLoops.ts';
import { rootOf } from './rootOf.ts';
import { HANGS_MM, type SidePiece, type TileRooms, tileRooms } from './rooms.ts';
import { type RoomLink, type Tile, type TileGrid, outlinesIn } from './tiles.ts';

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
export function bodyOutlines(tile: Tile, machine: MachineAt): readonly Outline[] {
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
  const groupOf = (tile: Tile, room: number): number => rootOf(parent, (first[tile.index] as number) + room);
  for (const tile of grid.tiles)
    for (const { room, tile: other, there } of tile.links[number] ?? [])
      parent[groupOf(tile, room)] = groupOf(other, there);
  const entered = entrances && new Set(entrances.map(({ tile, room }) => groupOf(tile, room)));
  const isEntered = (tile: Tile, room: number): boolean => !entered || entered.has(groupOf(tile, room));
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
  const hasOthers = entered.includes(false) || (tile.rooms[number] as TileRooms).hasSkins;
  const needsLead = sizes.leadMm > 0 || hasOthers;
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

function wholeOutline(box: Box, layer: number): Outline {
  return ringOutline(boxRing(box), layer, 0);
}

/** The room that a place lies in, with its tile. */
export function roomHolding([x, y]: Point, machine: MachineAt, grid: TileGrid): EnteredAt | null {
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
