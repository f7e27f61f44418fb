import * as z from 'zod/mini';
import { item, lengthOver0, loose, path } from './base.ts';

export const wallSchema = loose({
  ...item,
  path,
  thicknessMm: lengthOver0,
});
export type Wall = z.infer<typeof wallSchema>;
