import type { Sourced } from './rateRow.ts';

/** An ICRI concrete surface profile. The chip is the standard: no number stands behind it. */
export interface ProfileRow {
  readonly csp: number;
  readonly madeBy: string;
  readonly madeByFrom: Sourced;
  /** From peak to valley, mm: an estimate. Single lines of a profile err by over half (ACIMJ-110-5). */
  readonly peakValleyMm: readonly [low: number, high: number];
  readonly depthFrom: Sourced;
}

const CHIPS: Sourced = { source: 'ICRI310.2R', provenance: 'R2', fromMemory: false };
/** No published table was read. */
const ESTIMATE: Sourced = { source: 'common practice, no source', provenance: 'P', fromMemory: true };

/** Mean texture depth, from which the extra material follows, is a rate: texture.ts. */
export const profiles: readonly ProfileRow[] = [
  { csp: 1, madeBy: 'acid-etched', madeByFrom: CHIPS, peakValleyMm: [0.05, 0.2], depthFrom: ESTIMATE },
  { csp: 2, madeBy: 'grinding', madeByFrom: CHIPS, peakValleyMm: [0.1, 0.4], depthFrom: ESTIMATE },
  { csp: 3, madeBy: 'light shot blast', madeByFrom: CHIPS, peakValleyMm: [0.3, 0.8], depthFrom: ESTIMATE },
  { csp: 4, madeBy: 'light scarification', madeByFrom: CHIPS, peakValleyMm: [0.6, 1.2], depthFrom: ESTIMATE },
  { csp: 5, madeBy: 'medium shot blast', madeByFrom: CHIPS, peakValleyMm: [0.9, 1.8], depthFrom: ESTIMATE },
  { csp: 6, madeBy: 'medium scarification', madeByFrom: CHIPS, peakValleyMm: [1.3, 2.5], depthFrom: ESTIMATE },
  { csp: 7, madeBy: 'heavy abrasive blast', madeByFrom: CHIPS, peakValleyMm: [2, 3.5], depthFrom: ESTIMATE },
  { csp: 8, madeBy: 'scabbled', madeByFrom: CHIPS, peakValleyMm: [2.8, 4.5], depthFrom: ESTIMATE },
  { csp: 9, madeBy: 'heavy scarification or milled', madeByFrom: CHIPS, peakValleyMm: [3.5, 6], depthFrom: ESTIMATE },
  { csp: 10, madeBy: 'handheld breaker then blast', madeByFrom: CHIPS, peakValleyMm: [6, 10], depthFrom: ESTIMATE },
];
