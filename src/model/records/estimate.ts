import * as z from 'zod/mini';
import { common, finite, json, loose, moment, text } from './base.ts';

export const estimateSchema = loose({
  ...common,
  number: text,
  issuedOn: moment,
  lines: z.array(json),
  rates: z.array(json),
  totalMinor: finite,
});
export type Estimate = z.infer<typeof estimateSchema>;
