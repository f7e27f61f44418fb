import { type Box, boxOf, grownBox } from '../box.ts';
import type { FloorShape, GeometryFault, Point } from '../floorShape.ts';
import { isFinitePoint, minus } from '../point.ts';
import { type CascadePlan, cascadesOf } from './cascades.ts';
import type { Cascades } from './cells.ts';
import type { HardItem } from './cluster.ts';
import type { Cluster } from './clusters.ts';
import type { Edging } from './edging.ts';
import type { FaceTally } from './faceTally.ts';
import { type FloorItems, type LineItem, NO_ITEMS } from './floorItems.ts';
import type { LineRun } from './lineRuns.ts';
import type { Outline } from './outline.ts';
import { type EnteredAt, marginOf } from './reach.ts';
import { type SumsMemory, sumsMemory } from './sumsMemory.ts';
import { type Tile, type TileGrid, coversBox, tileGrid } from './tiles.ts';

/*
 * What is kept of a floor, so that the next measure goes on from there.
 *
 *     thing by thing     records -> items -> clusters -> bands, faces, lines
 *                                     |                    |
 *     place by place                  +------> tiles <-----+      what reaches into each, and what came of it
 */

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
  /** The rooms that entrances lead to, by machine; null: there is no entrance. */
  readonly entered: (readonly EnteredAt[] | null)[];
  readonly itemsByNumber: Map<number, HardItem>;
  /** Passages closed to a machine, by slot. */
  readonly waysOf: Map<string, readonly Outline[]>;
  readonly clusterOf: Map<HardItem, Cluster>;
  /** All clusters by owner: the order in which a fresh floor has them. */
  readonly clusters: Cluster[];
  readonly bands: Map<Cluster, ClusterBands>;
  readonly edgingOf: Map<Cluster, Edging>;
  readonly tallyOf: Map<Cluster, ReadonlyMap<number, FaceTally>>;
  /** Clusters with faces in a zone. */
  readonly clustersIn: Map<number, Set<Cluster>>;
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

/** What must be looked at again, and why. Each step of floorLedger.ts adds to it for those after. */
export interface Stale {
  /** Tiles in which a machine may stand in other places than before. */
  readonly rooms: Set<Tile>;
  /** Tiles whose ledger is to be swept again. */
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
/** So much more all round than the slabs need: a machine may overhang where the floor runs on. */
const OVERHANG_MM = 3000;

/** A state that knows nothing yet of a floor, or the one before when it can go on from there. */
export function stateFor(shape: FloorShape, plan: CascadePlan, before: LedgerState | null): LedgerState {
  const box = slabBox(shape);
  const origin: Point = [originOf(box.minX), originOf(box.minY)];
  const moved = boxOf([minus([box.minX, box.minY], origin), minus([box.maxX, box.maxY], origin)]);
  const around = grownBox(moved, OVERHANG_MM);
  const isSame =
    before?.plan.key === plan.key &&
    before.origin[0] === origin[0] &&
    before.origin[1] === origin[1] &&
    coversBox(before.grid, around);
  return before && isSame ? { ...before, plan } : emptyState(plan, origin, tileGrid(around));
}

function emptyState(plan: CascadePlan, origin: Point, grid: TileGrid): LedgerState {
  return {
    plan,
    origin,
    grid,
    marginMm: Math.max(2, ...plan.machines.map(marginOf)),
    cascades: cascadesOf(plan, []),
    items: NO_ITEMS,
    entrances: null,
    entered: [],
    itemsByNumber: new Map(),
    waysOf: new Map(),
    clusterOf: new Map(),
    clusters: [],
    bands: new Map(),
    edgingOf: new Map(),
    tallyOf: new Map(),
    clustersIn: new Map(),
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
  const box = boxOf(shape.slabs.flatMap((slab) => slab.ring.filter(isFinitePoint)));
  const isSound = box.minX <= box.maxX && box.maxX - box.minX < FARTHEST_MM && box.maxY - box.minY < FARTHEST_MM;
  return isSound ? box : boxOf([[0, 0]]);
}

/** A floor larger than this, in mm, is no floor: 100 km. */
const FARTHEST_MM = 1e8;

function originOf(least: number): number {
  // Half a step off: plans often start at 0, and a corner pulled below it must not move the origin.
  return Math.floor(least / ORIGIN_MM + 0.5) * ORIGIN_MM;
}

/** Puts a thing into the set of a key. */
export function putIn<K, T>(map: Map<K, Set<T>>, key: K, thing: T): void {
  const set = map.get(key);
  if (set) set.add(thing);
  else map.set(key, new Set([thing]));
}

/** What the faces of a cluster add up to, in place of what they did; null for a cluster that is gone. */
export function setTally(
  state: LedgerState,
  cluster: Cluster,
  tally: ReadonlyMap<number, FaceTally> | null,
  stale: Stale,
): void {
  for (const zone of state.tallyOf.get(cluster)?.keys() ?? []) {
    stale.faceZones.add(zone);
    state.clustersIn.get(zone)?.delete(cluster);
  }
  if (!tally) {
    state.tallyOf.delete(cluster);
    return;
  }
  state.tallyOf.set(cluster, tally);
  for (const zone of tally.keys()) {
    stale.faceZones.add(zone);
    putIn(state.clustersIn, zone, cluster);
  }
}
