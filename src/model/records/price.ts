import * as z from 'zod/mini';
import { common, finite, loose, text } from './base.ts';

export const priceSchema = loose({
  ...common,
  code: text,
  term: text,
  unit: text,
  /** Whole minor units of the job's currency (cents). */
  amount: finite,
  source: text,
  provenance: text,
});
export type Price = z.infer<typeof priceSchema>;
