import * as z from 'zod/mini';
import { common, recordId, text } from './base.ts';

export const phaseSchema = z.looseObject({
  ...common,
  name: text,
  floor: z.optional(recordId),
});
export type Phase = z.infer<typeof phaseSchema>;
