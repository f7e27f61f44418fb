import * as z from 'zod/mini';
import { common, finite, lengthOver0, loose, point, recordId, text } from './base.ts';

export const pageSchema = loose({
  ...common,
  floor: recordId,
  name: text,
  /** SHA-256 of the image file, in hex; the image travels beside the job. */
  image: text,
  widthPx: lengthOver0,
  heightPx: lengthOver0,
  /** Where pixel 0,0 lies on the floor, mm. */
  origin: point,
  /** Until the page is trued: a guess that makes it visible, never a quantity. */
  guessMmPerPx: lengthOver0,
  dimensions: z.array(loose({ from: point, to: point, lengthMm: lengthOver0, by: z.enum(['mouse', 'pen', 'finger']) })),
  /** Two pixels on a line that is level on the floor; without it the longest dimension is. */
  levelLine: z.optional(z.nullable(loose({ from: point, to: point }))),
  /** Something stood on the floor before the page came: truing moves the page, not what is drawn. */
  drawnBefore: z.optional(z.boolean()),
  hidden: z.optional(z.boolean()),
  fade: z.optional(finite),
});
export type Page = z.infer<typeof pageSchema>;
