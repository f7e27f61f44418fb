import * as z from 'zod/mini';
import { common, loose, text } from './base.ts';

export const personSchema = loose({
  ...common,
  name: text.check(z.minLength(1)),
  role: z.optional(text),
});
export type Person = z.infer<typeof personSchema>;
