import * as z from 'zod/mini';
import { common, moment, text } from './base.ts';

export const letterSchema = z.looseObject({
  ...common,
  to: text,
  body: text,
  on: z.optional(moment),
});
export type Letter = z.infer<typeof letterSchema>;
