import * as z from 'zod/mini';
import { finite, item, loose, point } from './base.ts';

export const serviceSchema = loose({
  ...item,
  kind: z.enum(['power', 'water', 'waste', 'parking']),
  at: point,
  volts: z.optional(finite),
  amps: z.optional(finite),
  phases: z.optional(finite),
  circuits: z.optional(finite),
});
export type Service = z.infer<typeof serviceSchema>;
