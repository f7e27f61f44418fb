import { boxOf } from '../box.ts';
import type { Point } from '../floorShape.ts';
import { distance } from '../point.ts';
import { type Cascades, cascadeAt, isNet, layersOf, partAt } from './cells.ts';
import type { LineItem } from './floorItems.ts';
import { type Place, homeOf } from './place.ts';
import type { Tile, TileGrid } from './tiles.ts';
import type { TileEdges } from './tileEdges.ts';
import { shareInBox, walk } from './walks.ts';

/*
 * A crack or joint: how much of it lies in each zone and part.
 *
 *      zone 1 |  zone 2
 *     --------+----\         each leg of the line is walked through the tiles that it crosses
 *             |     \___
 */
export interface LineRun {
  readonly line: LineItem;
  readonly tiles: readonly Tile[];
  /** Metres by zone and part. */
  lengths: readonly LineLength[];
}

export interface LineLength {
  readonly zone: number;
  readonly part: number;
  readonly metres: number;
}

/** A crack drawn along the very edge of the floor, within this, in mm, is on it. */
const BESIDE_MM = 0.05;
const OFF_FLOOR = -1;
/** Zone and part of a place in one number: parts are fewer than this. */
const PARTS = 1000;

export function newLineRun(line: LineItem, grid: TileGrid): LineRun {
  const tiles = new Set<Tile>();
  for (let i = 0; i + 1 < line.path.length; i += 1) {
    const [a, b] = [line.path[i] as Point, line.path[i + 1] as Point];
    for (const tile of grid.meeting(boxOf([a, b]))) tiles.add(tile);
  }
  return { line, tiles: [...tiles], lengths: [] };
}

/** Walks a line again. */
export function settleLine(run: LineRun, cascades: Cascades): void {
  const lengths = new Map<number, number>();
  for (const { edges, isEdged } of run.tiles) {
    if (!edges) continue;
    const place = homeOf(edges, layersOf(cascades));
    const ask = (at: Place): number =>
      isNet(at) ? (at.zone + 1) * PARTS + partAt(at, cascadeAt(at, cascades), cascades, isEdged) : OFF_FLOOR;
    for (let i = 0; i + 1 < run.line.path.length; i += 1)
      walkLeg(edges, place, run.line.path[i] as Point, run.line.path[i + 1] as Point, ask, lengths);
  }
  run.lengths = [...lengths].map(([key, metres]) => ({ zone: Math.floor(key / PARTS) - 1, part: key % PARTS, metres }));
}

/** Adds the metres of one leg in a tile to those of the zones and parts it lies in. */
function walkLeg(
  tile: TileEdges,
  place: Place,
  a: Point,
  b: Point,
  ask: (place: Place) => number,
  lengths: Map<number, number>,
): void {
  const share = shareInBox(a[0], a[1], b[0], b[1], tile.box);
  if (!share) return;
  const metres = distance(a, b) / 1000;
  const add = (what: number, by: number): void => {
    if (what !== OFF_FLOOR) lengths.set(what, (lengths.get(what) ?? 0) + by * metres);
  };
  for (const { from, to, what } of walk(tile, place, a[0], a[1], b[0], b[1], share, ask)) {
    add(what, to - from);
    if (what === OFF_FLOOR)
      for (const piece of beside(tile, place, a, b, from, to, ask)) add(piece.what, piece.to - piece.from);
  }
}

/** What a stretch off the floor has right beside it, first on one side and where there is none on the other. */
function beside(
  tile: TileEdges,
  place: Place,
  a: Point,
  b: Point,
  from: number,
  to: number,
  ask: (place: Place) => number,
) {
  const size = distance(a, b);
  const [dx, dy] = [((b[1] - a[1]) / size) * BESIDE_MM, ((a[0] - b[0]) / size) * BESIDE_MM];
  const right = walk(tile, place, a[0] + dx, a[1] + dy, b[0] + dx, b[1] + dy, [from, to], ask);
  return right.flatMap((piece) =>
    piece.what === OFF_FLOOR
      ? walk(tile, place, a[0] - dx, a[1] - dy, b[0] - dx, b[1] - dy, [piece.from, piece.to], ask)
      : [piece],
  );
}
