import * as z from 'zod/mini';
import { common, loose, text } from './base.ts';

export const recipeSchema = loose({
  ...common,
  name: text,
});
export type Recipe = z.infer<typeof recipeSchema>;
