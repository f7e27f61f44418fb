import * as z from 'zod/mini';
import { item, lengthOver0, path } from './base.ts';

export const crackSchema = z.looseObject({
  ...item,
  path,
  /** Not measured yet: null. */
  widthMm: z.nullable(lengthOver0),
  depthMm: z.nullable(lengthOver0),
  behaviour: z.enum(['notJudged', 'static', 'working', 'structural']),
});
export type Crack = z.infer<typeof crackSchema>;
