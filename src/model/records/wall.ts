import * as z from 'zod/mini';
import { item, lengthOver0, path } from './base.ts';

export const wallSchema = z.looseObject({
  ...item,
  path,
  thicknessMm: lengthOver0,
});
export type Wall = z.infer<typeof wallSchema>;
