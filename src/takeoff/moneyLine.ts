import { fixed, round } from './formula.ts';
import type { Line, Term } from './line.ts';
import { makeLine, type LineParts } from './makeLine.ts';
import type { PricedAmount } from './rates/rateBook.ts';

/** What every line of money has in common: the whole floor, in whole minor units (cents). */
export const MONEY = { trade: 'money', unit: 'minor', zone: null, records: [] } as const;

export type MoneyParts = Pick<LineParts, 'code' | 'of' | 'formula' | 'terms'> & Partial<Pick<LineParts, 'records'>>;

/**
 * The one place where money is rounded: a line of money is whole minor units (cents), half up, as soon as it is made,
 * and every sum is of lines that are whole. So what is shown adds up to the price to the cent, on screen, in files and on
 * paper, and each line still comes out of its own terms.
 */
export function moneyLine(parts: MoneyParts): Line {
  return makeLine({ ...MONEY, ...parts, formula: round(parts.formula) });
}

/** An amount of the price list, minor units; the same in the low, likely and high case. */
export function priceTerm(name: string, price: PricedAmount): Term {
  return {
    name,
    value: fixed(price.amount),
    unit: 'minor',
    source: price.source,
    provenance: price.provenance,
    fromMemory: false,
    from: price.record,
  };
}
