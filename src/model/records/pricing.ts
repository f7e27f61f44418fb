import * as z from 'zod/mini';
import { common, length, lengthOver0, loose, moment } from './base.ts';

export const pricingSchema = loose({
  ...common,
  overheadPct: length,
  marginPct: length.check(z.lt(100)),
  burdenPct: length,
  /** By certainty: measured, from a photograph, unknown coating. */
  contingencyPct: loose({ measured: length, photo: length, unknown: length }),
  certainty: z.enum(['measured', 'photo', 'unknown']),
  taxPct: z.optional(length),
  minimumCrewDays: length,
  crew: lengthOver0,
  hoursADay: lengthOver0,
  /** Set when the user has looked at the money page: until then the price says "with sample wages and prices". */
  confirmedOn: z.optional(moment),
});
export type Pricing = z.infer<typeof pricingSchema>;
