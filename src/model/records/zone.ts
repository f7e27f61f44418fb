import * as z from 'zod/mini';
import { finite, item, length, loose, recordId, ring, text } from './base.ts';

/** ICRI concrete surface profile, 1 to 10. */
const cspClass = finite.check(z.gte(1), z.lte(10));

export const zoneSchema = loose({
  ...item,
  /** The ring, or whatever no other zone covers. */
  covers: z.enum(['ring', 'rest']),
  ring: z.optional(ring),
  /** What will be laid: an id of the systems table, and its whole thickness. */
  system: z.optional(z.nullable(loose({ kind: text, thicknessMm: z.optional(length) }))),
  /** A profile asked for outright, CSP; wins over the system's. */
  csp: z.optional(z.nullable(loose({ min: cspClass, max: cspClass }))),
  place: z.enum(['indoor', 'outdoor']),
  wetAllowed: z.boolean(),
  hardness: z.enum(['soft', 'medium', 'hard', 'veryHard']),
  slopePct: z.optional(length),
  traffic: z.optional(z.enum(['foot', 'light', 'forklift', 'heavy'])),
  noiseHours: z.optional(text),
  time: z.optional(z.enum(['normal', 'occupied', 'night', 'extremeWeather'])),
  phase: z.optional(z.nullable(recordId)),
  recipe: z.optional(z.nullable(recordId)),
});
export type Zone = z.infer<typeof zoneSchema>;
