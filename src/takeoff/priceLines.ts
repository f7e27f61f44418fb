import { divide, fixed, largest, multiply, number, round, subtract, sumOf, term } from './formula.ts';
import { GOODS } from './goodsLines.ts';
import type { Formula, Line, Term } from './line.ts';
import { makeLine } from './makeLine.ts';
import { MONEY, moneyLine, priceTerm } from './moneyLine.ts';
import type { RateBook } from './rates/rateBook.ts';
import { taxedPrice } from './taxedPrice.ts';
import { chosen, lineTerm } from './terms.ts';

/**
 * From direct cost to price, in whole minor units: contingency by certainty on direct, overhead on both or by the crew
 * day, cost, and cost / (1 - margin), no less than the least charge. A margin is not a markup; both are shown. Then tax,
 * and last the customer's unit (common practice, no source).
 *
 *   direct + contingency + overhead = cost;  cost + margin = price;  price + tax = price with tax
 *
 * `days` are those of the crew on site; without them overhead is the percentage.
 */
export function priceLines(book: RateBook, direct: readonly Line[], days: Line | null): Line[] {
  const { pricing } = book;
  const percent = (name: string, value: number): Term => chosen(name, value, '%', book.pricingRecord);
  const terms = direct.map((line) => lineTerm(line.key, line));
  const sum = moneyLine({ code: 'money.direct', formula: sumOf(terms.map(({ name }) => name)), terms });
  const contingency = moneyLine({
    code: 'money.contingency',
    formula: percentOf('direct', 'contingency'),
    terms: [lineTerm('direct', sum), percent('contingency', pricing.contingencyPct[pricing.certainty])],
  });
  const overhead = overheadLine(book, sum, contingency, days);
  const cost = moneyLine({
    code: 'money.cost',
    formula: sumOf(['direct', 'contingency', 'overhead']),
    terms: [lineTerm('direct', sum), lineTerm('contingency', contingency), lineTerm('overhead', overhead)],
  });
  const least = book.price('leastCharge');
  const beforeTax = divide(term('cost'), subtract(number(1), divide(term('margin'), number(100))));
  const asked = {
    formula: least && least.amount > 0 ? largest(beforeTax, term('least charge')) : beforeTax,
    terms: [
      lineTerm('cost', cost),
      percent('margin', pricing.marginPct),
      ...(least && least.amount > 0 ? [priceTerm('least charge', least)] : []),
    ],
  };
  const { price, after } = taxedPrice(
    book,
    asked,
    direct.filter(({ code }) => isMaterial(code)),
  );
  return [sum, contingency, overhead, cost, marginLine(price, cost), markupLine(price, cost), price, ...after];
}

/** Goods that go into the job or are used up by it: what a tax on materials is on. */
function isMaterial(code: string): boolean {
  return code.startsWith(GOODS) || code === 'money.mockUp';
}

function overheadLine(book: RateBook, direct: Line, contingency: Line, days: Line | null): Line {
  const { pricing } = book;
  const byDay = book.price('overheadDay');
  if (pricing.overheadBy === 'crewDay' && byDay && days) {
    return moneyLine({
      code: 'money.overhead',
      formula: multiply(term('days on site'), term('overhead by the day')),
      terms: [lineTerm('days on site', days), priceTerm('overhead by the day', byDay)],
    });
  }
  return moneyLine({
    code: 'money.overhead',
    formula: multiply(sumOf(['direct', 'contingency']), divide(term('overhead'), number(100))),
    terms: [
      lineTerm('direct', direct),
      lineTerm('contingency', contingency),
      chosen('overhead', pricing.overheadPct, '%', book.pricingRecord),
    ],
  });
}

/** What is left over: the price less its cost. */
function marginLine(price: Line, cost: Line): Line {
  return moneyLine({
    code: 'money.margin',
    formula: subtract(term('price'), term('cost')),
    terms: [lineTerm('price', price), lineTerm('cost', cost)],
  });
}

/** The same margin told on the cost, %: what people who think in markups look for. The likely case alone. */
function markupLine(price: Line, cost: Line): Line {
  const likely = (name: string, line: Line): Term => ({
    ...lineTerm(name, line),
    value: fixed(line.quantity.likely),
    source: 'arithmetic',
  });
  return makeLine({
    ...MONEY,
    code: 'money.markup',
    unit: '%',
    formula: divide(multiply(subtract(term('price'), term('cost')), number(100)), largest(term('cost'), number(1))),
    terms: [likely('price', price), likely('cost', cost)],
  });
}

function percentOf(of: string, percent: string): Formula {
  return multiply(term(of), divide(term(percent), number(100)));
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
