import type { Box } from '../box.ts';
import type { Edge } from './edge.ts';
import type { Outline } from './outline.ts';
import type { TileEdges } from './tileEdges.ts';
import type { Cell } from './cells.ts';
import type { Edging } from './edging.ts';
import type { LineRun } from './lineRuns.ts';
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
  readonly box: Box;
  /** Outlines by what they are for; groups in the order of their owners. */
  readonly slots: Map<string, Group[]>;
  /** By machine: rooms that its body can stand in, which of them it gets to, what its head covers. */
  readonly rooms: TileRooms[];
  readonly reached: (readonly boolean[])[];
  readonly reach: (Outline | null)[];
  /** What the ledger sweeps, kept for lines that are walked later. */
  edges: TileEdges | null;
  cells: readonly Cell[];
  /** Every face near the tile has its strip, so that the whole band is strip; by cascade. */
  isEdged: readonly boolean[];
  /** Outlines of the parts in the tile; null until somebody asks. */
  traces: ReadonlyMap<string, readonly TracedLoop[]> | null;
  /** Faces and lines that come through. */
  readonly edgings: Set<Edging>;
  readonly lines: Set<LineRun>;
}

export interface Group {
  readonly owner: number;
  readonly outlines: readonly Outline[];
}

export interface TileGrid {
  readonly tiles: readonly Tile[];
  tileAt(x: number, y: number): Tile | null;
  /** Tiles that a box touches. */
  meeting(box: Box): readonly Tile[];
}

/** Side of a tile, in mm. Small tiles sweep few edges, large ones have less margin: 6.5 m measured best. */
const TILE_MM = 6500;
/** Off every grid that people draw on, so that no drawn edge lies along the side of a tile. */
const OFFSET_MM = 0.123_456_789;

export function tileGrid(box: Box): TileGrid {
  const columnOf = (x: number): number => Math.floor((x - OFFSET_MM) / TILE_MM);
  const firstColumn = columnOf(box.minX);
  const firstRow = columnOf(box.minY);
  const columns = columnOf(box.maxX) - firstColumn + 1;
  const rows = columnOf(box.maxY) - firstRow + 1;
  const tiles: Tile[] = [];
  for (let row = 0; row < rows; row += 1)
    for (let column = 0; column < columns; column += 1) tiles.push(newTile(firstColumn + column, firstRow + row));

  const clampColumn = (x: number): number => Math.min(columns - 1, Math.max(0, columnOf(x) - firstColumn));
  const clampRow = (y: number): number => Math.min(rows - 1, Math.max(0, columnOf(y) - firstRow));
  return {
    tiles,
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

function newTile(column: number, row: number): Tile {
  const at = (n: number): number => n * TILE_MM + OFFSET_MM;
  return {
    column,
    row,
    box: { minX: at(column), minY: at(row), maxX: at(column + 1), maxY: at(row + 1) },
    slots: new Map(),
    rooms: [],
    reached: [],
    reach: [],
    edges: null,
    cells: [],
    isEdged: [],
    traces: null,
    edgings: new Set(),
    lines: new Set(),
  };
}

/** All outlines of a slot, in the order of their owners. */
export function outlinesIn(tile: Tile, slot: string): readonly Outline[] {
  return (tile.slots.get(slot) ?? []).flatMap((group) => group.outlines);
}

/** Puts the outlines of an owner into a slot of the tiles that they reach into, in place of what it had there. Answers the box in which something changed. */
export function replaceGroup(
  grid: TileGrid,
  slot: string,
  owner: number,
  before: readonly Outline[],
  after: readonly Outline[],
  marginMm: number,
): Box[] {
  const perTile = new Map<Tile, Outline[]>();
  for (const outline of after) {
    for (const tile of grid.meeting(grown(outline.box, marginMm))) {
      const list = perTile.get(tile);
      if (list) list.push(outline);
      else perTile.set(tile, [outline]);
    }
  }
  for (const outline of before)
    for (const tile of grid.meeting(grown(outline.box, marginMm)))
      if (!perTile.has(tile)) setGroup(tile, slot, owner, []);
  for (const [tile, outlines] of perTile) setGroup(tile, slot, owner, outlines);
  return changedBoxes(before, after);
}

function grown({ minX, minY, maxX, maxY }: Box, by: number): Box {
  return { minX: minX - by, minY: minY - by, maxX: maxX + by, maxY: maxY + by };
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

/** Boxes in which two lists of outlines differ: of one outline redrawn only the edges that moved, for nothing changes elsewhere. */
function changedBoxes(before: readonly Outline[], after: readonly Outline[]): Box[] {
  if (before.length === 0) return after.map((outline) => outline.box);
  if (before.length === 1 && after.length === 1) {
    const changed = changedEdges(before[0] as Outline, after[0] as Outline);
    return changed.length > 0 ? [boxOfEdges(changed)] : [];
  }
  const known = new Map(before.map((outline) => [keyOf(outline), outline]));
  const boxes: Box[] = [];
  for (const outline of after) {
    const key = keyOf(outline);
    if (known.has(key)) known.delete(key);
    else boxes.push(outline.box);
  }
  return [...boxes, ...[...known.values()].map((outline) => outline.box)];
}

function changedEdges(before: Outline, after: Outline): Edge[] {
  if (before.item !== after.item || before.layer !== after.layer) return [...before.edges, ...after.edges];
  const known = new Map(before.edges.map((edge) => [edgeKey(edge), edge]));
  const fresh = after.edges.filter((edge) => !known.delete(edgeKey(edge)));
  return [...known.values(), ...fresh];
}

function edgeKey({ x0, y0, x1, y1, arc, up }: Edge): string {
  return `${x0} ${y0} ${x1} ${y1} ${arc ? arc.radius : 0} ${up}`;
}

function keyOf(outline: Outline): string {
  return `${outline.layer} ${outline.item} ${outline.edges.map(edgeKey).join('|')}`;
}

function boxOfEdges(edges: readonly Edge[]): Box {
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const { x0, y0, x1, y1 } of edges) {
    minX = Math.min(minX, x0, x1);
    maxX = Math.max(maxX, x0, x1);
    minY = Math.min(minY, y0);
    maxY = Math.max(maxY, y1);
  }
  return { minX, minY, maxX, maxY };
}
