import * as z from 'zod/mini';
import { common, length, lengthOver0, loose, moment, text } from './base.ts';

/** What is paid on top of a wage, in parts, % of the wage. */
const burdenParts = loose({
  payrollTax: z.optional(length),
  unemployment: z.optional(length),
  injury: z.optional(length),
  health: z.optional(length),
  holidays: z.optional(length),
  smallTools: z.optional(length),
});

/** A lump sum that belongs to no rate: parking, permits, insurance. Whole minor units. */
const otherCost = loose({ name: text, amountMinor: length });

export const pricingSchema = loose({
  ...common,
  overheadPct: length,
  marginPct: length.check(z.lt(100)),
  burdenPct: length,
  /** Stand in the place of `burdenPct` when there are any. */
  burdenParts: z.optional(burdenParts),
  /** Share of paid hours that can be billed; all of them when left out. */
  billablePct: z.optional(lengthOver0.check(z.lte(100))),
  /** On wages of zones that are worked at night. */
  nightPremiumPct: z.optional(length),
  /** By certainty: measured, from a photograph, unknown coating. */
  contingencyPct: loose({ measured: length, photo: length, unknown: length }),
  certainty: z.enum(['measured', 'photo', 'unknown']),
  /** A share of direct cost, or so much for each day of the crew; never both. */
  overheadBy: z.optional(z.enum(['percent', 'crewDay'])),
  taxPct: z.optional(length),
  /** What the tax is on; the price when left out. */
  taxOn: z.optional(z.enum(['none', 'materials', 'total'])),
  /** The price is rounded up to whole ones of this, minor units; to whole minor units when left out. */
  roundUpTo: z.optional(lengthOver0),
  minimumCrewDays: length,
  crew: lengthOver0,
  hoursADay: lengthOver0,
  /** Methods of tools that come on hire: least days and delivery are paid for them. */
  hired: z.optional(z.readonly(z.array(text))),
  leastHireDays: z.optional(length),
  /** Where the power comes from; the site when left out. */
  power: z.optional(z.enum(['site', 'generator'])),
  /** Home each night, or lodging near the site; home when left out. */
  stay: z.optional(z.enum(['daily', 'lodging'])),
  /** There and back, for the whole crew, h. */
  travelHours: z.optional(length),
  /** There and back, km. */
  travelKm: z.optional(length),
  vehicles: z.optional(length),
  /** Visits besides those of the work: readings, a second look. */
  returnVisits: z.optional(length),
  haulTrips: z.optional(length),
  wasteTests: z.optional(length),
  otherCosts: z.optional(z.readonly(z.array(otherCost))),
  /** What the price rests on and what it leaves out; the usual sentences when left out. */
  assumptions: z.optional(z.readonly(z.array(text))),
  exclusions: z.optional(z.readonly(z.array(text))),
  /** Set when the user has looked at the money page: until then the price says "with sample wages and prices". */
  confirmedOn: z.optional(moment),
});
export type Pricing = z.infer<typeof pricingSchema>;
