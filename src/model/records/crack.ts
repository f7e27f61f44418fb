import * as z from 'zod/mini';
import { item, lengthOver0, loose, path } from './base.ts';

export const crackSchema = loose({
  ...item,
  path,
  /** Not measured yet: null. */
  widthMm: z.nullable(lengthOver0),
  depthMm: z.nullable(lengthOver0),
  behaviour: z.enum(['notJudged', 'static', 'working', 'structural']),
});
export type Crack = z.infer<typeof crackSchema>;
