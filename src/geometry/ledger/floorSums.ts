import type { FloorShape, GeometryFault } from '../floorShape.ts';
import type { FloorSums, MeasureMemory } from '../measureMemory.ts';
import { updatedLedger } from './floorLedger.ts';
import { isSlab } from './cluster.ts';
import type { Cluster } from './clusters.ts';
import type { LedgerState, Stale } from './ledgerState.ts';
import { outsideFaults } from './outsideFaults.ts';
import { zoneSums } from './zoneSums.ts';

/*
 * The numbers of a whole floor, from two sides that know nothing of each other:
 *
 *     clusters   gross, perimeter, what each body takes
 *     ledger     net and its parts, zone by zone                gross - taken = net, to rounding
 */

/** Measures a floor, or what changed of it since the memory was last used. Never throws. */
export function floorSums(shape: FloorShape, memory: MeasureMemory): FloorSums {
  if (memory.sums && memory.shape === shape) return memory.sums;
  const { state, stale } = updatedLedger(shape, memory.state);
  const zones = zoneSums(state, shape, stale);
  const sums: FloorSums = {
    state,
    ...slabSums(state, stale),
    netM2: zones.reduce((sum, zone) => sum + zone.netM2, 0),
    zones,
    faults: distinct([...state.faults, ...outsideFaults(state, shape, zones, stale)]),
  };
  Object.assign(memory, { state, shape, sums, measure: null });
  return sums;
}

function slabSums(state: LedgerState, stale: Stale): Pick<FloorSums, 'grossM2' | 'perimeterM' | 'deductedM2'> {
  let grossMm2 = 0;
  let perimeterMm = 0;
  for (const { trace } of state.clusters) {
    grossMm2 += trace.grossMm2;
    perimeterMm += trace.outerMm;
  }
  if (stale.clusters.size > 0 && !takesTheSame(state, stale)) state.sums.deductedM2 = deductions(state.clusters);
  return { grossM2: grossMm2 / 1e6, perimeterM: perimeterMm / 1000, deductedM2: state.sums.deductedM2 };
}

/** True when the clusters that came take just what stands in the sums: a column that moves takes as much as before. */
function takesTheSame({ clusters, sums }: LedgerState, stale: Stale): boolean {
  const now = new Set(clusters);
  const [came, went]: [Cluster[], Cluster[]] = [[], []];
  for (const cluster of stale.clusters) (now.has(cluster) ? came : went).push(cluster);
  const taken = deductions(came);
  const isStillThere = went.every(({ items }) => items.every((item) => isSlab(item) || Object.hasOwn(taken, item.id)));
  return isStillThere && Object.entries(taken).every(([id, areaM2]) => sums.deductedM2[id] === areaM2);
}

/** What each body of some clusters takes, in m2 by id; 0 for one that takes nothing. */
function deductions(clusters: Iterable<Cluster>): Record<string, number> {
  const taken: Record<string, number> = {};
  for (const { items, trace } of clusters) {
    for (const item of items) {
      if (isSlab(item)) continue;
      taken[item.id] = (taken[item.id] ?? 0) + (trace.takenMm2.get(item.number) ?? 0) / 1e6;
    }
  }
  return taken;
}

function distinct(faults: readonly GeometryFault[]): GeometryFault[] {
  return [...new Map(faults.map((fault) => [`${fault.record} ${fault.code}`, fault])).values()];
}
