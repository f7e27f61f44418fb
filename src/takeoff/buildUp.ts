import { add, divide, multiply, number, subtract, term } from './formula.ts';
import type { Formula, Term } from './line.ts';
import type { RateBook } from './rates/rateBook.ts';
import { chosen } from './terms.ts';

/**
 * A direct cost on its way to a price: contingency, overhead, and over one less the margin, as the price of the job is
 * made. Overhead is taken as its percentage also where the job pays it by the day: an extra has no days of its own.
 */
export function buildUp(
  book: RateBook,
  direct: Formula,
): { readonly formula: Formula; readonly terms: readonly Term[] } {
  const { pricing, pricingRecord } = book;
  const percent = (name: string, value: number): Term => chosen(name, value, '%', pricingRecord);
  const more = (name: string): Formula => add(number(1), divide(term(name), number(100)));
  return {
    formula: divide(
      multiply(direct, more('contingency'), more('overhead')),
      subtract(number(1), divide(term('margin'), number(100))),
    ),
    terms: [
      percent('contingency', pricing.contingencyPct[pricing.certainty]),
      percent('overhead', pricing.overheadPct),
      percent('margin', pricing.marginPct),
    ],
  };
}
