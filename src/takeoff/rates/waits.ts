import { PRACTICE, type RateRow } from './rateRow.ts';
import { TEST_WAITS_H } from './testCounts.ts';

const [GLUE_LEAST, GLUE_MOST] = TEST_WAITS_H.pull.glue;
const { wait: PROBE, condition: CONDITION } = TEST_WAITS_H.f2170;

/** Hours on the clock in which nobody works: they lengthen the calendar and cost no hours. */
export const waits: readonly RateRow[] = [
  {
    code: 'waits/rh',
    term: 'RH probe, from drilling to its reading',
    unit: 'h',
    low: PROBE,
    likely: PROBE,
    high: PROBE,
    note: `72 h before the edition of 2018; the room conditioned for ${CONDITION} h before`,
    source: 'ASTM-F2170',
    provenance: 'R2',
    fromMemory: false,
  },
  {
    code: 'waits/pull',
    term: 'Glue of a pull-off dolly',
    unit: 'h',
    low: GLUE_LEAST,
    likely: 12,
    high: GLUE_MOST,
    ...PRACTICE,
  },
  {
    code: 'waits/drying',
    term: 'Drying after a wet clean or etch',
    unit: 'h',
    low: 24,
    likely: 48,
    high: 72,
    ...PRACTICE,
  },
  {
    code: 'waits/repair',
    term: 'Repair mortar, before it is ground',
    unit: 'h',
    low: 2,
    likely: 12,
    high: 24,
    ...PRACTICE,
  },
];
