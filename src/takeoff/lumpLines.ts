import type { CostSite } from './costInputs.ts';
import { term } from './formula.ts';
import type { Line } from './line.ts';
import { moneyLine } from './moneyLine.ts';
import { chosen } from './terms.ts';

/** Lump sums that somebody typed, minor units: parking, permits, insurance. Each is a line of its own. */
export function lumpLines({ book }: CostSite): Line[] {
  const costs = book.pricing.otherCosts ?? [];
  return costs.flatMap(({ name, amountMinor }, i) => {
    if (amountMinor === 0) return [];
    // A bar would make it read as the key of a line.
    const title = name.trim() === '' ? 'amount' : name.replaceAll('|', '/');
    return [
      moneyLine({
        code: 'money.other',
        of: String(i + 1),
        formula: term(title),
        terms: [chosen(title, amountMinor, 'minor', book.pricingRecord)],
      }),
    ];
  });
}
