import * as z from 'zod/mini';
import { item, loose, moment, point, text } from './base.ts';

export const photoSchema = loose({
  ...item,
  at: point,
  image: text,
  takenOn: z.optional(moment),
});
export type Photo = z.infer<typeof photoSchema>;
