import * as z from 'zod/mini';
import { common, loose, recordId, text } from './base.ts';

export const alternateSchema = loose({
  ...common,
  zone: recordId,
  recipe: recordId,
  name: text,
  chosen: z.optional(z.boolean()),
});
export type Alternate = z.infer<typeof alternateSchema>;
