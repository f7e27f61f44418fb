import { add, divide, multiply, number, sumOf, term } from './formula.ts';
import type { Formula, Term } from './line.ts';
import { priceTerm } from './moneyLine.ts';
import type { RateBook } from './rates/rateBook.ts';
import { chosen } from './terms.ts';

/** What an hour of one person costs, as a formula with its terms; minor units. */
export interface Wage {
  readonly formula: Formula;
  readonly terms: readonly Term[];
}

const PARTS = {
  payrollTax: 'payroll tax',
  unemployment: 'unemployment insurance',
  injury: 'insurance against injury',
  health: 'health',
  holidays: 'holidays',
  smallTools: 'small tools and protective gear',
} as const;

/**
 * A paid hour: wage x (1 + burden), over the share of paid hours that can be billed where it is less than all. Burden is
 * one percentage, or the sum of its parts. Null while nobody has set a wage. Structure: common practice, no source.
 */
export function wageOf(book: RateBook): Wage | null {
  const { pricing, pricingRecord } = book;
  const wage = book.price('wage');
  if (!wage) return null;
  const percent = (name: string, value: number): Term => chosen(name, value, '%', pricingRecord);
  const parts = burdenTerms(book, percent);
  const paid = multiply(term('wage'), add(number(1), divide(sumOf(parts.map(({ name }) => name)), number(100))));
  const billable = pricing.billablePct ?? 100;
  const terms = [priceTerm('wage', wage), ...parts];
  if (billable === 100) return { formula: paid, terms };
  return {
    formula: divide(paid, divide(term('billable'), number(100))),
    terms: [...terms, percent('billable', billable)],
  };
}

function burdenTerms({ pricing }: RateBook, percent: (name: string, value: number) => Term): Term[] {
  const own = (Object.keys(PARTS) as (keyof typeof PARTS)[]).flatMap((part) => {
    const value = pricing.burdenParts?.[part];
    return value === undefined ? [] : [percent(PARTS[part], value)];
  });
  return own.length > 0 ? own : [percent('burden', pricing.burdenPct)];
}
