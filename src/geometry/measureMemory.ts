import type { FloorMeasure, FloorShape } from './floorShape.ts';
import type { FloorSums } from './ledger/floorSums.ts';
import type { LedgerState } from './ledger/ledgerState.ts';

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
