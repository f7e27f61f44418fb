import * as z from 'zod/mini';
import { item, lengthOver0, loose, path } from './base.ts';

export const jointSchema = loose({
  ...item,
  path,
  kind: z.enum(['control', 'construction', 'isolation']),
  treat: z.enum(['carried', 'filled']),
  widthMm: z.optional(lengthOver0),
  depthMm: z.optional(lengthOver0),
});
export type Joint = z.infer<typeof jointSchema>;
