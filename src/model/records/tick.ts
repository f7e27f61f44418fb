import * as z from 'zod/mini';
import { common, length, loose, moment, recordId, text } from './base.ts';

export const tickSchema = loose({
  ...common,
  /** What was ticked off: a zone, pass, crack or hold point. */
  of: recordId,
  what: text,
  done: z.boolean(),
  on: z.optional(moment),
  by: z.optional(text),
  actualHours: z.optional(length),
});
export type Tick = z.infer<typeof tickSchema>;
