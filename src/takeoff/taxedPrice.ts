import { add, divide, multiply, number, subtract, sumOf, term, wholeUp } from './formula.ts';
import type { Formula, Line, Term } from './line.ts';
import { moneyLine } from './moneyLine.ts';
import type { RateBook } from './rates/rateBook.ts';
import { chosen, lineTerm } from './terms.ts';

/** An amount that is not a line yet: cost over one less the margin. */
export interface Amount {
  readonly formula: Formula;
  readonly terms: readonly Term[];
}

interface Taxed {
  readonly price: Line;
  /** Tax, and the price with it; nothing where no tax is asked for. */
  readonly after: readonly Line[];
}

/**
 * The price and its tax, in whole minor units. What the customer pays in the end is rounded up to his unit; the price
 * before tax is what is left of it, so that price and tax make that amount to the cent. Tax is on the whole price, or on
 * materials at what they cost; which of them holds is a matter of local law.
 */
export function taxedPrice(book: RateBook, asked: Amount, materials: readonly Line[]): Taxed {
  const { taxPct = 0, taxOn = 'total' } = book.pricing;
  if (taxPct === 0 || taxOn === 'none' || (taxOn === 'materials' && materials.length === 0)) {
    const rounded = roundedUp(book, asked.formula);
    const terms = [...asked.terms, ...rounded.terms];
    return { price: moneyLine({ code: 'money.price', formula: rounded.formula, terms }), after: [] };
  }
  const percent = chosen('tax', taxPct, '%', book.pricingRecord);
  return taxOn === 'materials' ? onMaterials(book, asked, materials, percent) : onTotal(book, asked, percent);
}

function onTotal(book: RateBook, asked: Amount, percent: Term): Taxed {
  const withTax = add(number(1), divide(term('tax'), number(100)));
  const rounded = roundedUp(book, multiply(asked.formula, withTax));
  const total = moneyLine({
    code: 'money.priceWithTax',
    formula: rounded.formula,
    terms: [...asked.terms, percent, ...rounded.terms],
  });
  const price = moneyLine({
    code: 'money.price',
    formula: divide(term('price with tax'), withTax),
    terms: [lineTerm('price with tax', total), percent],
  });
  const tax = moneyLine({
    code: 'money.tax',
    formula: subtract(term('price with tax'), term('price')),
    terms: [lineTerm('price with tax', total), lineTerm('price', price)],
  });
  return { price, after: [tax, total] };
}

function onMaterials(book: RateBook, asked: Amount, materials: readonly Line[], percent: Term): Taxed {
  const terms = materials.map((line) => lineTerm(line.key, line));
  const tax = moneyLine({
    code: 'money.tax',
    formula: multiply(sumOf(terms.map(({ name }) => name)), divide(term('tax'), number(100))),
    terms: [...terms, percent],
  });
  const rounded = roundedUp(book, add(asked.formula, term('tax on materials')));
  const total = moneyLine({
    code: 'money.priceWithTax',
    formula: rounded.formula,
    terms: [...asked.terms, lineTerm('tax on materials', tax), ...rounded.terms],
  });
  const price = moneyLine({
    code: 'money.price',
    formula: subtract(term('price with tax'), term('tax')),
    terms: [lineTerm('price with tax', total), lineTerm('tax', tax)],
  });
  return { price, after: [tax, total] };
}

/** Up to whole ones of the customer's unit; whole minor units need no step of their own. */
function roundedUp({ pricing, pricingRecord }: RateBook, formula: Formula): Amount {
  const unit = Math.round(pricing.roundUpTo ?? 1);
  if (unit <= 1) return { formula, terms: [] };
  return {
    formula: multiply(wholeUp(divide(formula, term('rounded up to'))), term('rounded up to')),
    terms: [chosen('rounded up to', unit, 'minor', pricingRecord)],
  };
}
