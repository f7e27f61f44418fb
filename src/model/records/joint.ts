import * as z from 'zod/mini';
import { item, lengthOver0, loose, path } from './base.ts';

export const jointSchema = loose({
  ...item,
  path,
  kind: z.enum(['control', 'construction', 'isolation']),
  treat: z.enum(['carried', 'filled']),
  widthMm: z.optional(lengthOver0),
  depthMm: z.optional(lengthOver0),
  /** Holds old filler: closed against shot, and sawn out before it is filled again. */
  oldFiller: z.optional(z.boolean()),
  /** Its edges are steel angle, which is ground by hand. */
  steelAngle: z.optional(z.boolean()),
});
export type Joint = z.infer<typeof jointSchema>;
