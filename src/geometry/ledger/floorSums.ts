import type { FloorShape, GeometryFault } from '../floorShape.ts';
import type { MeasureMemory } from '../measureMemory.ts';
import { updatedLedger } from './floorLedger.ts';
import type { LedgerState } from './ledgerState.ts';
import { outsideFaults } from './outsideFaults.ts';
import { type ZoneSums, clustersInOrder, zoneSums } from './zoneSums.ts';

/** The numbers of a whole floor. Areas in m2, lengths in m. */
export interface FloorSums {
  readonly state: LedgerState;
  readonly grossM2: number;
  readonly netM2: number;
  readonly perimeterM: number;
  /** What each solid, wall and patch out of scope takes off, by id. */
  readonly deductedM2: Readonly<Record<string, number>>;
  readonly zones: readonly ZoneSums[];
  readonly faults: readonly GeometryFault[];
}

/** Measures a floor, or what changed of it since the memory was last used. Never throws. */
export function floorSums(shape: FloorShape, memory: MeasureMemory): FloorSums {
  if (memory.sums && memory.shape === shape) return memory.sums;
  const state = updatedLedger(shape, memory.state);
  const zones = zoneSums(state, shape);
  const sums: FloorSums = {
    state,
    ...slabSums(state),
    netM2: zones.reduce((sum, zone) => sum + zone.netM2, 0),
    zones,
    faults: distinct([...state.faults, ...outsideFaults(state, shape, zones)]),
  };
  Object.assign(memory, { state, shape, sums, measure: null });
  return sums;
}

function slabSums(state: LedgerState): Pick<FloorSums, 'grossM2' | 'perimeterM' | 'deductedM2'> {
  const idOf = new Map(state.items.hard.map((item) => [item.number, item.id]));
  const deductedM2: Record<string, number> = {};
  for (const item of state.items.hard) if (item.number >= FIRST_BODY) deductedM2[item.id] ??= 0;
  let grossMm2 = 0;
  let perimeterMm = 0;
  for (const { trace } of clustersInOrder(state)) {
    grossMm2 += trace.grossMm2;
    perimeterMm += trace.outerMm;
    for (const [number, areaMm2] of trace.takenMm2) {
      const id = idOf.get(number);
      if (id !== undefined) deductedM2[id] = (deductedM2[id] ?? 0) + areaMm2 / 1e6;
    }
  }
  return { grossM2: grossMm2 / 1e6, perimeterM: perimeterMm / 1000, deductedM2 };
}

/** Slabs have lower numbers than what is taken off them. */
const FIRST_BODY = 1e6;

function distinct(faults: readonly GeometryFault[]): GeometryFault[] {
  return [...new Map(faults.map((fault) => [`${fault.record} ${fault.code}`, fault])).values()];
}
