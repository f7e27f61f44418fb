import type { CostInputs, CostSite } from './costInputs.ts';
import { directLines } from './costLines.ts';
import { extraLines } from './extraLines.ts';
import type { Line } from './line.ts';
import { priceLines, priceShares } from './priceLines.ts';

/** All money of some work, and codes of prices that it needs and nobody has set. */
export interface PricedWork {
  readonly lines: readonly Line[];
  readonly missingPrices: readonly string[];
}

/**
 * Direct cost, price with its shares by zone, and unit rates of extras, in whole minor units. The same for one floor
 * and for all floors of a job. `zoneTotals` are the person-hours of each zone.
 */
export function pricedWork(site: CostSite, inputs: CostInputs, zoneTotals: readonly Line[]): PricedWork {
  const direct = directLines(site, inputs);
  const priced = priceLines(site.book, direct.lines, inputs.days);
  const price = priced.find((line) => line.code === 'money.price');
  return {
    lines: [
      ...direct.lines,
      ...priced,
      ...(price ? priceShares(price, zoneTotals) : []),
      ...extraLines(site, inputs.zones),
    ],
    missingPrices: direct.missing,
  };
}
