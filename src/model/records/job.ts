import * as z from 'zod/mini';
import { answer, clearance, common, loose, moment, text } from './base.ts';

export const jobSchema = loose({
  ...common,
  name: text.check(z.minLength(1)),
  number: z.optional(text),
  place: z.optional(text),
  customer: z.optional(text),
  units: z.enum(['metric', 'imperial']),
  /** Money: a crew copy has none. */
  currency: z.optional(text),
  startedAs: z.optional(z.enum(['blank', 'garage', 'warehouse', 'showroom', 'kitchen'])),
  startedOn: z.optional(moment),
  /** An invented example. Shown on every page of it. */
  invented: z.optional(z.boolean()),
  builtBefore1981: z.optional(answer),
  coatingOrTile: z.optional(answer),
  inSlab: z.optional(answer),
  gasAppliance: z.optional(answer),
  /** What lies in the slab has been found and marked: cutting may go on round it. */
  inSlabLocated: z.optional(clearance),
});
export type Job = z.infer<typeof jobSchema>;
