import { type Box, boxAround, grownBox } from '../box.ts';
import type { FloorShape, GeometryFault, Point } from '../floorShape.ts';
import type { CascadePlan } from './cascades.ts';
import type { Cascades } from './cells.ts';
import type { HardItem } from './cluster.ts';
import type { Cluster } from './clusters.ts';
import type { Edging } from './edging.ts';
import type { FaceTally } from './faceTally.ts';
import { type FloorItems, type ItemMemory, type LineItem, itemMemory } from './floorItems.ts';
import type { LineRun } from './lineRuns.ts';
import type { Outline } from './outline.ts';
import { marginOf } from './reach.ts';
import { type Tile, type TileGrid, tileGrid } from './tiles.ts';

/** The floor as it was last measured: the items it was made of and all that followed from them. */
export interface LedgerState {
  readonly plan: CascadePlan;
  readonly memory: ItemMemory;
  readonly grid: TileGrid;
  readonly gridBox: Box;
  /** Widest margin that any machine looks at around a tile. */
  readonly marginMm: number;
  cascades: Cascades;
  items: FloorItems;
  readonly itemsByNumber: Map<number, HardItem>;
  /** Passages closed to a machine, by slot. */
  readonly waysOf: Map<string, readonly Outline[]>;
  readonly clusterOf: Map<HardItem, Cluster>;
  readonly bands: Map<Cluster, ClusterBands>;
  readonly edgingOf: Map<Cluster, Edging>;
  readonly tallyOf: Map<Cluster, ReadonlyMap<number, FaceTally>>;
  /** Cascade and owner of clusters with strips of their own. */
  readonly ownStrips: Set<string>;
  readonly strips: Map<Cluster, readonly (readonly Outline[] | null)[]>;
  readonly runOf: Map<LineItem, LineRun>;
  /** Faults of the records, then those that show only on the floor. */
  faults: readonly GeometryFault[];
}

/** Outlines that a cluster puts into the tiles, by slot. */
export type ClusterBands = ReadonlyMap<string, readonly Outline[]>;

/** Tiles that must be looked at again, and why. */
export interface Stale {
  readonly rooms: Set<Tile>;
  readonly pieces: Set<Tile>;
  /** Tiles with faces of a new cluster: nothing changed in them, but they must be looked along. */
  readonly faces: Set<Tile>;
}

const NOTHING: FloorItems = { hard: [], zones: [], findings: [], lines: [], faults: [] };
/** The origin lies on a grid this wide, in mm, so that it stays where it is while a plan is edited. */
const ORIGIN_MM = 100_000;
/** A tile more all round than the slabs need: a machine may overhang where the floor runs on. */
const OVERHANG_MM = 3000;

/** A state that knows nothing yet of a floor, or the one before when it can go on from there. */
export function stateFor(shape: FloorShape, plan: CascadePlan, before: LedgerState | null): LedgerState {
  const box = slabBox(shape);
  const origin: Point = [originOf(box.minX), originOf(box.minY)];
  const moved = {
    minX: box.minX - origin[0],
    minY: box.minY - origin[1],
    maxX: box.maxX - origin[0],
    maxY: box.maxY - origin[1],
  };
  const grid = tileGrid(grownBox(moved, OVERHANG_MM));
  const isSame =
    before?.plan.key === plan.key &&
    before.memory.origin[0] === origin[0] &&
    before.memory.origin[1] === origin[1] &&
    hasSameTiles(before.grid, grid);
  if (before && isSame) return { ...before, plan };
  return {
    plan,
    memory: itemMemory(origin),
    grid,
    gridBox: grid.tiles.map((tile) => tile.box).reduce(boxAround),
    marginMm: Math.max(2, ...plan.machines.map(marginOf)),
    cascades: {
      machinesOf: plan.sequences,
      ofZone: new Map(),
      ofRest: plan.ofRest,
      machineCount: plan.machines.length,
    },
    items: NOTHING,
    itemsByNumber: new Map(),
    waysOf: new Map(),
    clusterOf: new Map(),
    bands: new Map(),
    edgingOf: new Map(),
    tallyOf: new Map(),
    ownStrips: new Set(),
    strips: new Map(),
    runOf: new Map(),
    faults: [],
  };
}

function hasSameTiles(a: TileGrid, b: TileGrid): boolean {
  const [first, last, otherFirst, otherLast] = [a.tiles[0], a.tiles.at(-1), b.tiles[0], b.tiles.at(-1)];
  return (
    first?.column === otherFirst?.column &&
    first?.row === otherFirst?.row &&
    last?.column === otherLast?.column &&
    last?.row === otherLast?.row
  );
}

/** Box of the slabs; of none, or of one that has no size, a box about the origin. */
function slabBox(shape: FloorShape): Box {
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const { ring } of shape.slabs)
    for (const [x, y] of ring) {
      if (!Number.isFinite(x) || !Number.isFinite(y)) continue;
      minX = Math.min(minX, x);
      minY = Math.min(minY, y);
      maxX = Math.max(maxX, x);
      maxY = Math.max(maxY, y);
    }
  return minX <= maxX && maxX - minX < FARTHEST_MM && maxY - minY < FARTHEST_MM
    ? { minX, minY, maxX, maxY }
    : { minX: 0, minY: 0, maxX: 0, maxY: 0 };
}

/** A floor larger than this, in mm, is no floor: 100 km. */
const FARTHEST_MM = 1e8;

function originOf(least: number): number {
  return Math.floor(least / ORIGIN_MM) * ORIGIN_MM;
}

export function tilesNear(state: LedgerState, boxes: readonly Box[], marginMm: number): Set<Tile> {
  const tiles = new Set<Tile>();
  for (const box of boxes) for (const tile of state.grid.meeting(grownBox(box, marginMm))) tiles.add(tile);
  return tiles;
}
