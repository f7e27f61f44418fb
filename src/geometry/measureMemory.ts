import type { FloorMeasure, FloorShape, GeometryFault } from './floorShape.ts';
import type { LedgerState } from './ledger/ledgerState.ts';
import type { ZoneSums } from './ledger/sumsMemory.ts';

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

/**
 * What stays from one measure to the next: the floor as it was, tile by tile. Hand the same memory to each call, and
 * records that did not change as the very same objects; then only what changed is done again. Answers are the same to
 * the last bit with and without.
 */
export interface MeasureMemory {
  state: LedgerState | null;
  /** The last answers, and the shape that they are of. */
  shape: FloorShape | null;
  sums: FloorSums | null;
  measure: FloorMeasure | null;
}

export function measureMemory(): MeasureMemory {
  return { state: null, shape: null, sums: null, measure: null };
}
