import * as z from 'zod/mini';
import { item, length, lengthOver0, loose, point } from './base.ts';

export const entranceSchema = loose({
  ...item,
  at: point,
  /** Narrowest clear width and height on the way from the truck. */
  widthMm: z.nullable(lengthOver0),
  heightMm: z.nullable(lengthOver0),
  stairs: z.optional(length),
  liftKg: z.optional(z.nullable(lengthOver0)),
});
export type Entrance = z.infer<typeof entranceSchema>;
