import * as z from 'zod/mini';
import { item, loose, point, text } from './base.ts';

export const noteSchema = loose({
  ...item,
  at: point,
  text,
});
export type Note = z.infer<typeof noteSchema>;
