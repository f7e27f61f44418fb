import * as z from 'zod/mini';
import { finite, item, length, lengthOver0, loose, upstand } from './base.ts';

/** The edge that follows a corner. Open edges and doorways say what lies beyond: the same floor, or a stop. */
export const edgeSchema = loose({
  kind: z.enum(['wall', 'open', 'doorway', 'drop']),
  beyond: z.optional(z.enum(['run', 'stop'])),
  upstand: z.optional(upstand),
  /** Clear height of a doorway; its clear width is its length. */
  heightMm: z.optional(length),
  tag: z.optional(z.string()),
});
export type Edge = z.infer<typeof edgeSchema>;

export const cornerSchema = loose({ x: finite, y: finite, edge: edgeSchema });
export type Corner = z.infer<typeof cornerSchema>;

export const slabSchema = loose({
  ...item,
  outline: z.readonly(z.array(cornerSchema).check(z.minLength(3))),
  thicknessMm: z.optional(lengthOver0),
  builtUp: z.optional(z.enum(['onGround', 'suspended'])),
});
export type Slab = z.infer<typeof slabSchema>;
