import * as z from 'zod/mini';
import { finite, item, point } from './base.ts';

export const dimensionSchema = z.looseObject({
  ...item,
  from: point,
  to: point,
  offsetMm: z.optional(finite),
});
export type Dimension = z.infer<typeof dimensionSchema>;
