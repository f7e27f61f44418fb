import { PRACTICE, type Sourced } from './rateRow.ts';

/** A size of cast steel shot. The size is of a standard, the profile that it gives is practice. */
export interface ShotRow {
  readonly shot: string;
  /** Nominal sieve opening. */
  readonly nominalIn: number;
  readonly nominalMm: number;
  readonly sizeFrom: Sourced;
  /** ICRI concrete surface profile. */
  readonly csp: readonly [min: number, max: number];
  readonly cspFrom: Sourced;
}

const SIEVE: Sourced = { source: 'SAE-J444', provenance: 'R2', fromMemory: false };

/** The number is the nominal opening in 1/10 000 in. */
export const shotSizes: readonly ShotRow[] = [
  { shot: 'S-170', nominalIn: 0.017, nominalMm: 0.43, sizeFrom: SIEVE, csp: [2, 3], cspFrom: PRACTICE },
  { shot: 'S-230', nominalIn: 0.023, nominalMm: 0.58, sizeFrom: SIEVE, csp: [3, 3], cspFrom: PRACTICE },
  { shot: 'S-280', nominalIn: 0.028, nominalMm: 0.71, sizeFrom: SIEVE, csp: [3, 4], cspFrom: PRACTICE },
  { shot: 'S-330', nominalIn: 0.033, nominalMm: 0.84, sizeFrom: SIEVE, csp: [4, 5], cspFrom: PRACTICE },
  { shot: 'S-390', nominalIn: 0.039, nominalMm: 0.99, sizeFrom: SIEVE, csp: [5, 7], cspFrom: PRACTICE },
  { shot: 'S-460', nominalIn: 0.046, nominalMm: 1.17, sizeFrom: SIEVE, csp: [6, 8], cspFrom: PRACTICE },
  { shot: 'S-550', nominalIn: 0.055, nominalMm: 1.4, sizeFrom: SIEVE, csp: [7, 9], cspFrom: PRACTICE },
];
