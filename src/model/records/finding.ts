import * as z from 'zod/mini';
import { clearance, finite, item, length, lengthOver0, loose, ring, text } from './base.ts';

export const findingSchema = loose({
  ...item,
  /** An id of the findings table in the rate book. */
  kind: text,
  ring,
  thicknessMm: z.optional(lengthOver0),
  layers: z.optional(finite),
  bond: z.optional(z.enum(['loose', 'fair', 'sound'])),
  ageYears: z.optional(length),
  depthMm: z.optional(lengthOver0),
  asbestosTest: z.optional(clearance),
  leadTest: z.optional(clearance),
});
export type Finding = z.infer<typeof findingSchema>;
