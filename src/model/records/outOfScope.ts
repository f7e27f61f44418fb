import * as z from 'zod/mini';
import { item, loose, ring } from './base.ts';

export const outOfScopeSchema = loose({
  ...item,
  ring,
  reason: z.optional(z.string()),
});
export type OutOfScope = z.infer<typeof outOfScopeSchema>;
