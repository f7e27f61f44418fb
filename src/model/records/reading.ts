import * as z from 'zod/mini';
import { finite, item, loose, moment, point, text } from './base.ts';

export const readingSchema = loose({
  ...item,
  kind: text,
  at: point,
  value: z.nullable(finite),
  unit: text,
  limit: z.optional(text),
  passes: z.optional(z.nullable(z.boolean())),
  takenOn: z.optional(moment),
  takenBy: z.optional(text),
  instrument: z.optional(text),
  serial: z.optional(text),
  calibratedOn: z.optional(moment),
});
export type Reading = z.infer<typeof readingSchema>;
