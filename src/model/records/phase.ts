import * as z from 'zod/mini';
import { common, loose, recordId, text } from './base.ts';

export const phaseSchema = loose({
  ...common,
  name: text,
  floor: z.optional(recordId),
});
export type Phase = z.infer<typeof phaseSchema>;
