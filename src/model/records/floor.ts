import * as z from 'zod/mini';
import { common, finite, loose, text } from './base.ts';

export const floorSchema = loose({
  ...common,
  name: text.check(z.minLength(1)),
  level: z.optional(finite),
  /** Turn of north, degrees clockwise from up on the page. */
  northDeg: z.optional(finite),
  /** How many doorway tags (D1, D2 ...) were given: an edge that goes takes its tag along, and none is given twice. */
  doorTags: z.optional(finite),
  /** "Looked, none found" is an answer: kinds that were looked for without finding any. */
  noneFound: z.optional(z.array(text)),
});
export type Floor = z.infer<typeof floorSchema>;
