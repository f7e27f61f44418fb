import { type Box, grownBox } from '../box.ts';
import type { FloorShape, GeometryFault, Point } from '../floorShape.ts';
import type { CascadePlan } from './cascades.ts';
import type { Cascades } from './cells.ts';
import type { HardItem } from './cluster.ts';
import type { Cluster } from './clusters.ts';
import type { Edging } from './edging.ts';
import type { FaceTally } from './faceTally.ts';
import { type FloorItems, type LineItem, NO_ITEMS } from './floorItems.ts';
import type { LineRun } from './lineRuns.ts';
import type { Outline } from './outline.ts';
import { marginOf } from './reach.ts';
import { type SumsMemory, sumsMemory } from './sumsMemory.ts';
import { type Tile, type TileGrid, coversBox, tileGrid } from './tiles.ts';

/** The floor as it was last measured: the items it was made of and all that followed from them. */
export interface LedgerState {
  readonly plan: CascadePlan;
  /** Where the floor's own coordinates start, in those of the plan. */
  readonly origin: Point;
  readonly grid: TileGrid;
  /** Widest margin that any machine looks at around a tile. */
  readonly marginMm: number;
  cascades: Cascades;
  items: FloorItems;
  /** The entrances that the reach was found from. */
  entrances: FloorShape['entrances'] | null;
  readonly itemsByNumber: Map<number, HardItem>;
  /** Passages closed to a machine, by slot. */
  readonly waysOf: Map<string, readonly Outline[]>;
  readonly clusterOf: Map<HardItem, Cluster>;
  /** All clusters by owner: the order in which a fresh floor has them. */
  readonly clusters: Cluster[];
  readonly bands: Map<Cluster, ClusterBands>;
  readonly edgingOf: Map<Cluster, Edging>;
  readonly tallyOf: Map<Cluster, ReadonlyMap<number, FaceTally>>;
  /** Cascade and owner of clusters with strips of their own. */
  readonly ownStrips: Set<string>;
  readonly strips: Map<Cluster, readonly (readonly Outline[] | null)[]>;
  readonly runOf: Map<LineItem, LineRun>;
  /** Faces and lines that come through a tile. */
  readonly edgingsIn: Map<Tile, Set<Edging>>;
  readonly linesIn: Map<Tile, Set<LineRun>>;
  readonly sums: SumsMemory;
  /** Faults of the records, then those that show only on the floor. */
  faults: readonly GeometryFault[];
}

/** Outlines that a cluster puts into the tiles, by slot. */
export type ClusterBands = ReadonlyMap<string, readonly Outline[]>;

/** Tiles that must be looked at again, and why. */
export interface Stale {
  readonly rooms: Set<Tile>;
  readonly pieces: Set<Tile>;
  /** Clusters and lines that came, went or were looked at again. */
  readonly clusters: Set<Cluster>;
  /** Zones that their faces were or are in. */
  readonly faceZones: Set<number>;
  readonly runs: Set<LineRun>;
  readonly goneRuns: Set<LineRun>;
  /** Tiles with faces of a new cluster: nothing changed in them, but they must be looked along. */
  readonly faces: Set<Tile>;
}

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
  const around = grownBox(moved, OVERHANG_MM);
  const isSame =
    before?.plan.key === plan.key &&
    before.origin[0] === origin[0] &&
    before.origin[1] === origin[1] &&
    coversBox(before.grid, around);
  if (before && isSame) return { ...before, plan };
  return {
    plan,
    origin,
    grid: tileGrid(around),
    marginMm: Math.max(2, ...plan.machines.map(marginOf)),
    cascades: {
      machinesOf: plan.sequences,
      ofZone: new Map(),
      ofRest: plan.ofRest,
      machineCount: plan.machines.length,
    },
    items: NO_ITEMS,
    entrances: null,
    itemsByNumber: new Map(),
    waysOf: new Map(),
    clusterOf: new Map(),
    clusters: [],
    bands: new Map(),
    edgingOf: new Map(),
    tallyOf: new Map(),
    ownStrips: new Set(),
    strips: new Map(),
    runOf: new Map(),
    edgingsIn: new Map(),
    linesIn: new Map(),
    sums: sumsMemory(),
    faults: [],
  };
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
  // Half a step off: plans often start at 0, and a corner pulled below it must not move the origin.
  return Math.floor(least / ORIGIN_MM + 0.5) * ORIGIN_MM;
}

/** Something in a set of a tile, or out of it. */
export function putIn<T>(map: Map<Tile, Set<T>>, tile: Tile, thing: T): void {
  const set = map.get(tile);
  if (set) set.add(thing);
  else map.set(tile, new Set([thing]));
}
