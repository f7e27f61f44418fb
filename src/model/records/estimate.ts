import * as z from 'zod/mini';
import { common, finite, json, loose, moment, text } from './base.ts';

/** Issued once and never changed: numbers, rates, prices and words as they were on that day. */
export const estimateSchema = loose({
  ...common,
  number: text,
  /** The how-manieth of its job: the next one gets one more. */
  running: z.optional(finite),
  issuedOn: moment,
  /** Lines that the price rests on, each with its working, so that it can be worked out again. */
  lines: z.array(json),
  /** Rates and prices that those lines used. */
  rates: z.array(json),
  /** Likely price, with tax where there is one. */
  totalMinor: finite,
  lowMinor: z.optional(finite),
  highMinor: z.optional(finite),
  currency: z.optional(text),
  units: z.optional(z.enum(['metric', 'imperial'])),
  /** Name, number, place and customer of the job. */
  job: z.optional(
    loose({
      name: text,
      number: z.optional(text),
      place: z.optional(text),
      customer: z.optional(text),
      invented: z.optional(z.boolean()),
    }),
  ),
  /** What the customer reads: one row for each zone, in minor units. */
  parts: z.optional(z.array(loose({ name: text, areaM2: finite, amountMinor: finite }))),
  assumptions: z.optional(z.array(text)),
  exclusions: z.optional(z.array(text)),
  /** Codes of what had to be said beside the price (samplePrices). */
  notices: z.optional(z.array(text)),
  /** Version of the engine, and of the rate book, that worked it out. */
  engine: z.optional(text),
  book: z.optional(text),
});
export type Estimate = z.infer<typeof estimateSchema>;
