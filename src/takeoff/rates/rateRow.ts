import type { Provenance } from '../line.ts';

/** Where a number comes from: an id of docs/sources.md, or the sentence for what has none. */
export interface Sourced {
  readonly source: string;
  readonly provenance: Provenance;
  readonly fromMemory: boolean;
}

/** One row of the rate book, as it stands before anyone has set his own. */
export interface RateRow extends Sourced {
  /** Table and row, for example labour/edge_hand. */
  readonly code: string;
  readonly term: string;
  readonly unit: string;
  readonly low: number;
  readonly likely: number;
  readonly high: number;
  readonly note?: string;
}

export const PRACTICE: Sourced = { source: 'common practice, no source', provenance: 'P', fromMemory: false };
export const ICRI_MEMORY: Sourced = { source: 'ICRI310.2R', provenance: 'M', fromMemory: true };
