import { type Box, boxesMeet, grownBox } from '../box.ts';
import { changedBoxes, looksSame } from './changed.ts';
import type { Outline } from './outline.ts';
import type { TileEdges } from './tileEdges.ts';
import type { Cell } from './cells.ts';
import type { TileRooms } from './rooms.ts';
import type { TracedLoop } from './trace.ts';

/*
 * The floor in tiles, and what reaches into each.
 *
 *    +----+----+----+      A column, the band round it or a zone is kept in a group under the number of its owner, in
 *    |    | #  |    |      each tile that it reaches into. What changes makes only its tiles stale.
 *    +----+----+----+
 */
export interface Tile {
  readonly column: number;
  readonly row: number;
  /** Its place among the tiles of the grid. */
  readonly index: number;
  readonly box: Box;
  /**
   * Outlines by what they are for; groups in the order of their owners. `hard`: slabs and what stands on them; `cover`:
   * zones and findings; for each machine `room` (aprons), `way` (closed passages), `body` and `head` (bands that they stay
   * out of); for each cascade `edged` (bands along all faces) and `strip`.
   */
  readonly slots: Map<string, Group[]>;
  /** By machine: rooms that its body can stand in, which of them it gets to, what its head covers. */
  readonly rooms: TileRooms[];
  readonly reached: (readonly boolean[])[];
  readonly reach: (Outline | null)[];
  /** Rooms here that are one with a room of the tile to the right or above, by machine: room, tile, room there. */
  readonly links: (readonly RoomLink[])[];
  /** What the ledger sweeps, kept for lines that are walked later. */
  edges: TileEdges | null;
  cells: readonly Cell[];
  /** The number of each cell among those of the whole floor. */
  cellNumbers: readonly number[];
  /** Every face near the tile has its strip, so that the whole band is strip; by cascade. */
  isEdged: readonly boolean[];
  /** Outlines of the parts in the tile; null until somebody asks. */
  traces: ReadonlyMap<string, readonly TracedLoop[]> | null;
}

export interface RoomLink {
  readonly room: number;
  readonly tile: Tile;
  readonly there: number;
}

export interface Group {
  readonly owner: number;
  readonly outlines: readonly Outline[];
}

export interface TileGrid {
  readonly tiles: readonly Tile[];
  readonly span: Span;
  tileAt(x: number, y: number): Tile | null;
  /** Tiles that a box touches. */
  meeting(box: Box): readonly Tile[];
}

/** Side of a tile, in mm. Small tiles sweep few edges, large ones have less margin: 6.5 m measured best. */
const TILE_MM = 6500;
/** Off every grid that people draw on, so that no drawn edge lies along the side of a tile. */
const OFFSET_MM = 0.123_456_789;

/** No more columns or rows than this: on a floor of kilometres the tiles grow with it. */
const MOST_ACROSS = 256;

/** The tiles that a box needs: their side, the first column and row, and how many of each. */
interface Span {
  readonly sideMm: number;
  readonly column: number;
  readonly row: number;
  readonly columns: number;
  readonly rows: number;
}

function spanOf(box: Box): Span {
  const across = Math.max(box.maxX - box.minX, box.maxY - box.minY) / TILE_MM;
  const sideMm = TILE_MM * 2 ** Math.max(0, Math.ceil(Math.log2(across / MOST_ACROSS)));
  const [column, row] = [placeOf(box.minX, sideMm), placeOf(box.minY, sideMm)];
  return {
    sideMm,
    column,
    row,
    columns: placeOf(box.maxX, sideMm) - column + 1,
    rows: placeOf(box.maxY, sideMm) - row + 1,
  };
}

/** Number of the column, or the row, that a coordinate lies in. */
function placeOf(x: number, sideMm: number): number {
  return Math.floor((x - OFFSET_MM) / sideMm);
}

/** True when a grid has just the tiles that a box needs. */
export function coversBox(grid: TileGrid, box: Box): boolean {
  const span = spanOf(box);
  return (Object.keys(span) as (keyof Span)[]).every((key) => grid.span[key] === span[key]);
}

export function tileGrid(box: Box): TileGrid {
  const span = spanOf(box);
  const { sideMm, column: firstColumn, row: firstRow, columns, rows } = span;
  const columnOf = (x: number): number => placeOf(x, sideMm);
  const tiles: Tile[] = [];
  for (let row = 0; row < rows; row += 1)
    for (let column = 0; column < columns; column += 1)
      tiles.push(newTile(firstColumn + column, firstRow + row, tiles.length, sideMm));

  const clampColumn = (x: number): number => Math.min(columns - 1, Math.max(0, columnOf(x) - firstColumn));
  const clampRow = (y: number): number => Math.min(rows - 1, Math.max(0, columnOf(y) - firstRow));
  return {
    tiles,
    span,
    tileAt(x, y) {
      const [column, row] = [columnOf(x) - firstColumn, columnOf(y) - firstRow];
      return column < 0 || row < 0 || column >= columns || row >= rows ? null : (tiles[row * columns + column] ?? null);
    },
    meeting({ minX, minY, maxX, maxY }) {
      if (!(minX <= maxX) || columnOf(maxX) < firstColumn || columnOf(maxY) < firstRow) return [];
      if (columnOf(minX) >= firstColumn + columns || columnOf(minY) >= firstRow + rows) return [];
      const out: Tile[] = [];
      for (let row = clampRow(minY); row <= clampRow(maxY); row += 1)
        for (let column = clampColumn(minX); column <= clampColumn(maxX); column += 1)
          out.push(tiles[row * columns + column] as Tile);
      return out;
    },
  };
}

function newTile(column: number, row: number, index: number, sideMm: number): Tile {
  const at = (n: number): number => n * sideMm + OFFSET_MM;
  return {
    column,
    row,
    index,
    box: { minX: at(column), minY: at(row), maxX: at(column + 1), maxY: at(row + 1) },
    slots: new Map(),
    rooms: [],
    reached: [],
    reach: [],
    links: [],
    edges: null,
    cells: [],
    cellNumbers: [],
    isEdged: [],
    traces: null,
  };
}

/** All outlines of a slot, in the order of their owners. */
export function outlinesIn(tile: Tile, slot: string): readonly Outline[] {
  return (tile.slots.get(slot) ?? []).flatMap((group) => group.outlines);
}

/**
 * Puts the outlines of an owner into a slot of the tiles that they reach into, in place of what it had there. Answers
 * the tiles in which that changes anything, with a margin around each.
 */
export function replaceGroup(
  grid: TileGrid,
  slot: string,
  owner: number,
  before: readonly Outline[],
  after: readonly Outline[],
  marginMm: number,
): Tile[] {
  const now = byTile(grid, after, marginMm);
  const was = byTile(grid, before, marginMm);
  const boxes = changedBoxes(before, after);
  for (const [tile] of was) if (!now.has(tile)) setGroup(tile, slot, owner, []);
  for (const [tile, outlines] of now) setGroup(tile, slot, owner, outlines);
  return [...new Set([...was.keys(), ...now.keys()])].filter((tile) => {
    const around = grownBox(tile.box, marginMm);
    if (!boxes.some((box) => boxesMeet(box, around))) return false;
    return !looksSame(around, was.get(tile) ?? [], now.get(tile) ?? []);
  });
}

function byTile(grid: TileGrid, outlines: readonly Outline[], marginMm: number): Map<Tile, Outline[]> {
  const tiles = new Map<Tile, Outline[]>();
  for (const outline of outlines) {
    for (const tile of grid.meeting(grownBox(outline.box, marginMm))) {
      const list = tiles.get(tile);
      if (list) list.push(outline);
      else tiles.set(tile, [outline]);
    }
  }
  return tiles;
}

function setGroup(tile: Tile, slot: string, owner: number, outlines: readonly Outline[]): void {
  const groups = tile.slots.get(slot) ?? [];
  let at = groups.length;
  while (at > 0 && (groups[at - 1] as Group).owner >= owner) at -= 1;
  const isKnown = groups[at]?.owner === owner;
  if (outlines.length === 0) {
    if (isKnown) groups.splice(at, 1);
    return;
  }
  groups.splice(at, isKnown ? 1 : 0, { owner, outlines });
  tile.slots.set(slot, groups);
}
