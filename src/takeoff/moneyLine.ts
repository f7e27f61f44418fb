import { fixed } from './formula.ts';
import type { Term } from './line.ts';
import type { PricedAmount } from './rates/rateBook.ts';

/** What every line of money has in common: the whole floor, in whole minor units (cents) once it is rounded. */
export const MONEY = { trade: 'money', unit: 'minor', zone: null, records: [] } as const;

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
