import * as z from 'zod/mini';
import { common, finite, loose, text } from './base.ts';

export const rateSchema = loose({
  ...common,
  /** Which row of the rate book this is: table and row, for example labour/edge_hand. */
  code: text,
  term: text,
  unit: text,
  low: finite,
  likely: finite,
  high: finite,
  source: text,
  /** R read, R2 second-hand, M from memory, P common practice without source, A arithmetic, own: the user's. */
  provenance: text,
  fromMemory: z.boolean(),
  /** Edition of the row in the rate book that this one was taken from, or last held against. */
  edition: z.optional(text),
});
export type Rate = z.infer<typeof rateSchema>;
