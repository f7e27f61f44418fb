import { PRACTICE, type Sourced } from './rateRow.ts';

/** The body of a machine, mm. Turning 0: it turns on the spot. */
export interface BodyRow extends Sourced {
  readonly method: string;
  readonly widthMm: number;
  readonly lengthMm: number;
  readonly heightMm: number;
  readonly turningMm: number;
}

export const machineBodies: readonly BodyRow[] = [
  { method: 'buffer_screen', widthMm: 450, lengthMm: 700, heightMm: 1100, turningMm: 0, ...PRACTICE },
  { method: 'grinder_small', widthMm: 560, lengthMm: 1200, heightMm: 1150, turningMm: 0, ...PRACTICE },
  { method: 'grinder_large', widthMm: 800, lengthMm: 1700, heightMm: 1250, turningMm: 0, ...PRACTICE },
  { method: 'grinder_ride', widthMm: 1350, lengthMm: 2300, heightMm: 1500, turningMm: 3000, ...PRACTICE },
  { method: 'shot_small', widthMm: 450, lengthMm: 1500, heightMm: 1100, turningMm: 0, ...PRACTICE },
  { method: 'shot_medium', widthMm: 650, lengthMm: 1900, heightMm: 1250, turningMm: 0, ...PRACTICE },
  { method: 'shot_ride', widthMm: 1100, lengthMm: 3000, heightMm: 1900, turningMm: 6000, ...PRACTICE },
  { method: 'scarifier_small', widthMm: 450, lengthMm: 1000, heightMm: 1100, turningMm: 0, ...PRACTICE },
  { method: 'scarifier_large', widthMm: 650, lengthMm: 1500, heightMm: 1150, turningMm: 0, ...PRACTICE },
  { method: 'scrape_walk', widthMm: 500, lengthMm: 1000, heightMm: 1050, turningMm: 0, ...PRACTICE },
  { method: 'scrape_ride', widthMm: 750, lengthMm: 1700, heightMm: 1500, turningMm: 2200, ...PRACTICE },
];
