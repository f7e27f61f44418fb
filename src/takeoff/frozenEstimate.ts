import type { Json, RecordId } from '../model/cell.ts';
import { recordsOf, type Doc } from '../model/doc.ts';
import type { Estimate } from '../model/records/estimate.ts';
import { ENGINE_VERSION } from './engineVersion.ts';
import type { JobPrice } from './jobPrice.ts';
import type { Line, Range } from './line.ts';
import { jobOf } from './questions.ts';
import type { PricedAmount } from './rates/rateBook.ts';
import { bookEdition } from './rates/rowEdition.ts';

/** What an issued estimate keeps of a line: enough to show it and to work it out again. */
export type FrozenLine = Pick<Line, 'key' | 'code' | 'trade' | 'unit' | 'zone' | 'quantity' | 'working'>;

/** A rate with its range, or a price with its amount, as it was. */
export interface FrozenRate {
  readonly code: string;
  readonly term: string;
  readonly unit: string;
  readonly low: number;
  readonly likely: number;
  readonly high: number;
  readonly source: string;
  /** Whole minor units. */
  readonly isPrice: boolean;
}

/** Everything of an estimate but its number and day. */
export type FrozenEstimate = Pick<
  Estimate,
  | 'lines'
  | 'rates'
  | 'totalMinor'
  | 'lowMinor'
  | 'highMinor'
  | 'currency'
  | 'units'
  | 'job'
  | 'parts'
  | 'assumptions'
  | 'exclusions'
  | 'notices'
  | 'engine'
  | 'book'
>;

export interface EstimateWords {
  readonly assumptions: readonly string[];
  readonly exclusions: readonly string[];
  /** What people call a zone of a floor. */
  zoneName(floor: RecordId, zone: Line['zone']): string;
}

/**
 * An estimate as it would be issued now: all money, every line that it rests on down to the plan, the rates and prices
 * those lines used, totals in whole minor units, and the words. Null where there is no price.
 */
export function frozenEstimate(doc: Doc, job: JobPrice, words: EstimateWords): FrozenEstimate | null {
  const total = totalOf(job.money);
  const record = jobOf(doc);
  if (!total || !record) return null;
  const lines = restsOn(job);
  return {
    lines: lines.map(frozenLine) as unknown as Json[],
    rates: [...ratesOf(doc, lines), ...pricesOf(job.askedPrices, lines)] as unknown as Json[],
    totalMinor: total.likely,
    lowMinor: total.low,
    highMinor: total.high,
    ...(job.book.currency === null ? {} : { currency: job.book.currency }),
    units: record.units,
    job: {
      name: record.name,
      ...(record.number === undefined ? {} : { number: record.number }),
      ...(record.place === undefined ? {} : { place: record.place }),
      ...(record.customer === undefined ? {} : { customer: record.customer }),
      ...(record.invented === undefined ? {} : { invented: record.invented }),
    },
    parts: job.zones.map(({ floor, zone, areaM2, share }) => ({
      name: words.zoneName(floor, zone),
      areaM2,
      amountMinor: share.quantity.likely,
    })),
    assumptions: [...words.assumptions],
    exclusions: [...words.exclusions],
    notices: [...job.notices],
    engine: ENGINE_VERSION,
    book: bookEdition(job.book.rates),
  };
}

/** What the customer pays: the price, with tax where there is one. */
export function totalOf(money: readonly Pick<Line, 'code' | 'quantity'>[]): Range | null {
  const of = (code: string): Range | null => money.find((line) => line.code === code)?.quantity ?? null;
  return of('money.priceWithTax') ?? of('money.price');
}

/** Money, and every line that it was worked out from. */
function restsOn({ money, work }: JobPrice): Line[] {
  const byKey = new Map([...work, ...money].map((line) => [line.key, line]));
  const found = new Map<string, Line>();
  const waiting = [...money];
  for (let line = waiting.pop(); line; line = waiting.pop()) {
    if (found.has(line.key)) continue;
    found.set(line.key, line);
    for (const { from } of line.working.terms) {
      const next = from === null ? undefined : byKey.get(from);
      if (next) waiting.push(next);
    }
  }
  // In the order in which they were made: causes before what rests on them.
  return [...byKey.values()].filter(({ key }) => found.has(key));
}

function frozenLine({ key, code, trade, unit, zone, quantity, working }: Line): FrozenLine {
  return { key, code, trade, unit, zone, quantity, working };
}

function ratesOf(doc: Doc, lines: readonly Line[]): FrozenRate[] {
  const used = new Set(lines.flatMap(({ working }) => working.terms.map(({ from }) => from)));
  return recordsOf(doc, 'rate')
    .filter(({ id }) => used.has(id))
    .map(({ code, term, unit, low, likely, high, source }) => ({
      code,
      term,
      unit,
      low,
      likely,
      high,
      source,
      isPrice: false,
    }));
}

/** Prices that a term of a line carries. Those of the samples have no record: they are told by amount and source. */
function pricesOf(asked: readonly PricedAmount[], lines: readonly Line[]): FrozenRate[] {
  const terms = lines.flatMap(({ working }) => working.terms.filter(({ unit }) => unit === 'minor'));
  const isUsed = (price: PricedAmount): boolean =>
    terms.some(({ from, source, value }) =>
      price.record === null ? source === price.source && value.likely === price.amount : from === price.record,
    );
  return asked.filter(isUsed).map(({ code, term, unit, amount, source }) => ({
    code,
    term,
    unit,
    low: amount,
    likely: amount,
    high: amount,
    source,
    isPrice: true,
  }));
}
