import type { Sourced } from './rateRow.ts';

/** Hours a day that a sound level is permitted without hearing protection. */
export interface NoiseRow extends Sourced {
  readonly hours: number;
  /** Slow response. */
  readonly levelDbA: number;
}

const TABLE_D2: Sourced = { source: 'CFR1926.52', provenance: 'R', fromMemory: false };

/** 29 CFR 1926.52 table D-2. Stricter rules hold elsewhere: see limits.ts (80, 85 and 87 dBA). */
export const noiseHours: readonly NoiseRow[] = [
  { hours: 8, levelDbA: 90, ...TABLE_D2 },
  { hours: 6, levelDbA: 92, ...TABLE_D2 },
  { hours: 4, levelDbA: 95, ...TABLE_D2 },
  { hours: 3, levelDbA: 97, ...TABLE_D2 },
  { hours: 2, levelDbA: 100, ...TABLE_D2 },
  { hours: 1.5, levelDbA: 102, ...TABLE_D2 },
  { hours: 1, levelDbA: 105, ...TABLE_D2 },
  { hours: 0.5, levelDbA: 110, ...TABLE_D2 },
  { hours: 0.25, levelDbA: 115, ...TABLE_D2 },
];
