import * as z from 'zod/mini';
import { finite, item, lengthOver0, loose, ring } from './base.ts';

export const stepsSchema = loose({
  ...item,
  ring,
  count: finite.check(z.gte(1)),
  riseMm: lengthOver0,
  goingMm: lengthOver0,
});
export type Steps = z.infer<typeof stepsSchema>;
