import * as z from 'zod/mini';
import { common, length, lengthOver0, loose, recordId, text } from './base.ts';

export const openingSchema = loose({
  ...common,
  wall: recordId,
  tag: text,
  name: z.optional(text),
  /** Along the wall's path, from its first point to the near jamb. */
  atMm: length,
  widthMm: lengthOver0,
  heightMm: lengthOver0,
});
export type Opening = z.infer<typeof openingSchema>;
