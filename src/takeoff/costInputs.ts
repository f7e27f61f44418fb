import type { Doc } from '../model/doc.ts';
import type { Line } from './line.ts';
import type { PricedAmount, RateBook } from './rates/rateBook.ts';
import type { ZoneWork } from './site.ts';

/** A cost knows the job and its prices, and no floor: the same lines price one floor or all of them. */
export interface CostSite {
  readonly doc: Doc;
  readonly book: RateBook;
}

/** Which tools are needed, and for how long. */
export interface ToolHours {
  readonly days: Line;
  /** Hours of the zones, line by line: they say which tools take findings and cracks. */
  readonly hours: readonly Line[];
  readonly zones: readonly ZoneWork[];
}

/** What the direct cost is worked out from. */
export interface CostInputs extends ToolHours {
  readonly crewHours: Line;
  /** Hours of the floor as a whole: set-up, moves, tear-down. Floors of one job share some of them. */
  readonly onSite: readonly Line[];
  /** Person-hours of zones that are worked at night. */
  readonly atNight: readonly Line[];
  /** Lines of material, dust and orders, zones and floor. */
  readonly material: readonly Line[];
  /** Quantities off the plan: tests, mock-up. */
  readonly quantities: readonly Line[];
}

/** The price of a code, or null with the code noted among what has no price. */
export function priceOrMissing({ book }: CostSite, code: string, missing: Set<string>): PricedAmount | null {
  const price = book.price(code);
  if (!price) missing.add(code);
  return price;
}
