import * as z from 'zod/mini';
import { finite, item, loose, point } from './base.ts';

export const dimensionSchema = loose({
  ...item,
  from: point,
  to: point,
  offsetMm: z.optional(finite),
});
export type Dimension = z.infer<typeof dimensionSchema>;
