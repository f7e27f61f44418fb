import * as z from 'zod/mini';
import { finite, item, lengthOver0, loose, point, ring, upstand } from './base.ts';

export const obstructionSchema = loose({
  ...item,
  kind: z.enum(['column', 'pier', 'island', 'equipment', 'pit', 'drain', 'post', 'platform']),
  shape: z.discriminatedUnion('form', [
    loose({
      form: z.literal('rectangle'),
      at: point,
      widthMm: lengthOver0,
      depthMm: lengthOver0,
      turnDeg: finite,
    }),
    loose({ form: z.literal('circle'), at: point, diameterMm: lengthOver0 }),
    loose({ form: z.literal('polygon'), ring }),
  ]),
  /** What becomes of the floor under it. */
  under: z.enum(['none', 'outOfScope', 'byHand', 'clearedBefore']),
  upstand: z.optional(upstand),
});
export type Obstruction = z.infer<typeof obstructionSchema>;
