import * as z from 'zod/mini';
import { common, finite, loose, recordId, text } from './base.ts';

export const passSchema = loose({
  ...common,
  recipe: recordId,
  /** An id of the methods table. */
  method: text,
  machine: z.nullable(recordId),
  abrasive: z.optional(text),
  /** Times over with the same machine and abrasive. */
  times: finite.check(z.gte(1)),
  /** What follows at the edge: a hand method, its abrasive, and how often. */
  edgeMethod: z.nullable(text),
  edgeAbrasive: z.optional(text),
  edgeTimes: finite.check(z.gte(0)),
});
export type Pass = z.infer<typeof passSchema>;
