import * as z from 'zod/mini';
import { common, length, lengthOver0, loose, text } from './base.ts';

export const machineSchema = loose({
  ...common,
  /** An id of the methods table: what it does. */
  method: text,
  name: text,
  cutWidthMm: lengthOver0,
  bodyWidthMm: lengthOver0,
  bodyLengthMm: lengthOver0,
  heightMm: lengthOver0,
  turningMm: length,
  smallestOpeningMm: lengthOver0,
  /** Edge clearance: least distance of the head from a face, by kind of face. */
  clearanceMm: loose({ wall: length, obstruction: length, drop: length, stop: length }),
  lapMm: length,
  massKg: z.optional(lengthOver0),
  powerKw: z.optional(length),
  volts: z.optional(text),
  amps: z.optional(text),
  vacuumM3h: z.optional(length),
});
export type Machine = z.infer<typeof machineSchema>;
