import * as z from 'zod/mini';
import { item, lengthOver0, path } from './base.ts';

export const jointSchema = z.looseObject({
  ...item,
  path,
  kind: z.enum(['control', 'construction', 'isolation']),
  treat: z.enum(['carried', 'filled']),
  widthMm: z.optional(lengthOver0),
  depthMm: z.optional(lengthOver0),
});
export type Joint = z.infer<typeof jointSchema>;
