import * as z from 'zod/mini';
import { item, ring } from './base.ts';

export const outOfScopeSchema = z.looseObject({
  ...item,
  ring,
  reason: z.optional(z.string()),
});
export type OutOfScope = z.infer<typeof outOfScopeSchema>;
