import * as z from 'zod/mini';
import { common, text } from './base.ts';

export const recipeSchema = z.looseObject({
  ...common,
  name: text,
});
export type Recipe = z.infer<typeof recipeSchema>;
