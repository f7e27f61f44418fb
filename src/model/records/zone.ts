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
  /** Who clears the floor of goods; left out: others do, as a price assumes. */
  goodsBy: z.optional(z.enum(['others', 'us'])),
  /** Floor that light goods stand on, m2, besides what is drawn as cleared before. */
  goodsM2: z.optional(length),
  /** Walls and openings are masked, over the protection that set-up holds. */
  maskWalls: z.optional(z.boolean()),
  /** A termination groove is cut along its stop lines. */
  groove: z.optional(z.boolean()),
  /** A patch worked first, to agree on, m2. */
  mockUpM2: z.optional(length),
  /** Tests that we make; left out: the profile is compared. */
  tests: z.optional(z.readonly(z.array(z.enum(['csp', 'rh', 'pull'])))),
});
export type Zone = z.infer<typeof zoneSchema>;
