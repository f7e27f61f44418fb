import * as z from 'zod/mini';
import { item, point, text } from './base.ts';

export const noteSchema = z.looseObject({
  ...item,
  at: point,
  text,
});
export type Note = z.infer<typeof noteSchema>;
