import type { Sourced } from './rateRow.ts';

/** A kind of respirator and how much it is taken to protect. */
export interface RespiratorRow extends Sourced {
  readonly id: string;
  readonly term: string;
  /** Assigned protection factor. */
  readonly apf: number;
}

/** Holds for every row: without it the factor is nothing. */
export const RESPIRATOR_NOTE = 'only with a full programme: fit test, medical, training';

const APF_TABLE: Sourced = { source: 'CFR1910.134', provenance: 'R', fromMemory: false };

/** 29 CFR 1910.134(d)(3)(i)(A) table 1. */
export const respirators: readonly RespiratorRow[] = [
  { id: 'quarter_mask', term: 'Air-purifying quarter mask', apf: 5, ...APF_TABLE },
  { id: 'half_mask', term: 'Air-purifying half mask, incl. filtering facepiece', apf: 10, ...APF_TABLE },
  { id: 'full_face', term: 'Air-purifying full facepiece', apf: 50, ...APF_TABLE },
  { id: 'papr_half', term: 'Powered, half mask', apf: 50, ...APF_TABLE },
  { id: 'papr_full', term: 'Powered, full facepiece', apf: 1000, ...APF_TABLE },
  { id: 'papr_hood', term: 'Powered, helmet or hood, no 1000 evidence', apf: 25, ...APF_TABLE },
  { id: 'papr_loose', term: 'Powered, loose-fitting facepiece', apf: 25, ...APF_TABLE },
  { id: 'sar_hood', term: 'Airline continuous flow, helmet or hood, no 1000 evidence', apf: 25, ...APF_TABLE },
  { id: 'sar_full', term: 'Airline continuous flow or pressure demand, full facepiece', apf: 1000, ...APF_TABLE },
];
