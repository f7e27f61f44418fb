import { leftOver } from './costLines.ts';
import { divide, fixed, multiply, number, round, subtract, sumOf, term } from './formula.ts';
import type { Formula, Line, Term } from './line.ts';
import { makeLine } from './makeLine.ts';
import { MONEY } from './moneyLine.ts';
import type { RateBook } from './rates/rateBook.ts';
import { chosen, lineTerm } from './terms.ts';

/**
 * From direct cost to price, in minor units: contingency by certainty on direct, overhead on both, cost, and
 * price = cost / (1 - margin). A margin is not a markup. Rounded once, at the price.
 */
export function priceLines(book: RateBook, direct: readonly Line[]): Line[] {
  const { pricing, pricingRecord } = book;
  const set = (name: string, value: number): Term => chosen(name, value, '%', pricingRecord);
  const terms = direct.map((line) => lineTerm(line.key, line));
  const sum = money('money.direct', sumOf(terms.map(({ name }) => name)), terms);
  const contingency = money('money.contingency', percentOf('direct', 'contingency'), [
    lineTerm('direct', sum),
    set('contingency', pricing.contingencyPct[pricing.certainty]),
  ]);
  const overhead = money(
    'money.overhead',
    multiply(sumOf(['direct', 'contingency']), divide(term('overhead'), number(100))),
    [lineTerm('direct', sum), lineTerm('contingency', contingency), set('overhead', pricing.overheadPct)],
  );
  const cost = money('money.cost', sumOf(['direct', 'contingency', 'overhead']), [
    lineTerm('direct', sum),
    lineTerm('contingency', contingency),
    lineTerm('overhead', overhead),
  ]);
  const price = money(
    'money.price',
    round(divide(term('cost'), subtract(number(1), divide(term('margin'), number(100))))),
    [lineTerm('cost', cost), set('margin', pricing.marginPct)],
  );
  return [sum, contingency, overhead, cost, leftOver(price, cost), price, ...taxLines(book, price)];
}

function taxLines({ pricing, pricingRecord }: RateBook, price: Line): Line[] {
  if (!pricing.taxPct) return [];
  const tax = money('money.tax', round(percentOf('price', 'tax')), [
    lineTerm('price', price),
    chosen('tax', pricing.taxPct, '%', pricingRecord),
  ]);
  const terms = [lineTerm('price', price), lineTerm('tax', tax)];
  return [tax, money('money.priceWithTax', sumOf(['price', 'tax']), terms)];
}

function percentOf(of: string, percent: string): Formula {
  return multiply(term(of), divide(term(percent), number(100)));
}

function money(code: string, formula: Formula, terms: readonly Term[]): Line {
  return makeLine({ ...MONEY, code, formula, terms });
}

/**
 * The price shared out over the zones by their likely person-hours. Each share is the rounded price up to and with the zone
 * less the rounded price up to it, so that the shares add up to the price to the cent.
 */
export function priceShares(price: Line, zoneTotals: readonly Line[]): Line[] {
  const all = zoneTotals.reduce((sum, line) => sum + line.quantity.likely, 0);
  let before = 0;
  return zoneTotals.map((line) => {
    const upToHere = before + line.quantity.likely;
    const upTo = (name: string): Formula => round(divide(multiply(term('price'), term(name)), term('hours of all')));
    const share = makeLine({
      code: 'money.priceShare',
      trade: 'money',
      unit: 'minor',
      zone: line.zone,
      records: line.records,
      formula: subtract(upTo('hours with this zone'), upTo('hours before it')),
      terms: [
        lineTerm('price', price),
        hours('hours with this zone', upToHere, line.key),
        hours('hours before it', before, null),
        hours('hours of all', all, null),
      ],
    });
    before = upToHere;
    return share;
  });
}

function hours(name: string, value: number, from: string | null): Term {
  return { name, value: fixed(value), unit: 'h', source: 'line', provenance: 'A', fromMemory: false, from };
}
