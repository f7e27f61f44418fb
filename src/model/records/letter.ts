import * as z from 'zod/mini';
import { common, loose, moment, text } from './base.ts';

export const letterSchema = loose({
  ...common,
  to: text,
  body: text,
  on: z.optional(moment),
});
export type Letter = z.infer<typeof letterSchema>;
