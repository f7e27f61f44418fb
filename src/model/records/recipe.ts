import * as z from 'zod/mini';
import { common, loose, recordId, text } from './base.ts';

export const recipeSchema = loose({
  ...common,
  name: text,
  /** Machines that work what the ones before them leave, biggest first: the same passes, in what is left of the floor. */
  followedBy: z.optional(z.readonly(z.array(recordId))),
});
export type Recipe = z.infer<typeof recipeSchema>;
