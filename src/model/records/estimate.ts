import * as z from 'zod/mini';
import { common, finite, moment, text } from './base.ts';

export const estimateSchema = z.looseObject({
  ...common,
  number: text,
  issuedOn: moment,
  lines: z.array(z.unknown()),
  rates: z.array(z.unknown()),
  totalMinor: finite,
});
export type Estimate = z.infer<typeof estimateSchema>;
