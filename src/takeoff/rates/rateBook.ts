import type { RecordId } from '../../model/cell.ts';
import { recordsOf, type Doc } from '../../model/doc.ts';
import type { Pricing } from '../../model/records/pricing.ts';
import type { Provenance } from '../line.ts';
import { book, bookRow } from './book.ts';
import { machineOfCode, machineRateCode } from './machineRate.ts';
import type { RateRow } from './rateRow.ts';
import type { PriceRow } from './priceRow.ts';
import { samplePrices, samplePricing, SAMPLE_SOURCE } from './samplePrices.ts';

/** A rate with the record of the job it was read from; null when the job has none and the book speaks. */
export interface Priced extends RateRow {
  readonly record: RecordId | null;
}

export interface PricedAmount extends PriceRow {
  readonly source: string;
  readonly provenance: Provenance;
  readonly record: RecordId | null;
}

/** What a job is priced with: its own records first, the book for what they leave out. */
export interface RateBook {
  /** Throws for a code that no table has: a mistake in the program, not in a job. */
  rate(code: string): Priced;
  /** Rate of a method: of this very machine where it has one of its own, else that of the method. */
  methodRate(method: string, machine: string | null): Priced;
  /** Every rate of the book as the job has it, then those that its machines have for themselves. */
  readonly rates: readonly Priced[];
  /** Whole minor units; null when nobody has set a price. */
  price(code: string): PricedAmount | null;
  /** Everything that has a price: the samples or what stands in their place, then what the job has besides. */
  readonly prices: readonly PricedAmount[];
  readonly pricing: Pricing;
  readonly pricingRecord: RecordId | null;
  /** null in a crew copy, which holds no money: then there is no price, also none from samples. */
  readonly currency: string | null;
}

const PROVENANCES: readonly string[] = ['R', 'R2', 'R/P', 'M', 'P', 'A', 'own', 'measured'];

function provenanceOf(text: string): Provenance {
  return PROVENANCES.includes(text) ? (text as Provenance) : 'own';
}

/** The rates and prices that a job is worked out with. Reads only; nothing of the book is written into the job. */
export function rateBook(doc: Doc): RateBook {
  const rates = new Map(recordsOf(doc, 'rate').map((record) => [record.code, record]));
  const prices = new Map(recordsOf(doc, 'price').map((record) => [record.code, record]));
  const pricing = recordsOf(doc, 'pricing')[0] ?? null;
  const price = (code: string): PricedAmount | null => {
    const own = prices.get(code);
    if (own) return { ...own, provenance: provenanceOf(own.provenance), record: own.id };
    const row = samplePrices.find((each) => each.code === code);
    return row ? { ...row, source: SAMPLE_SOURCE, provenance: 'P', record: null } : null;
  };
  const held = (code: string): Priced | null => {
    const own = rates.get(code);
    return own ? { ...own, provenance: provenanceOf(own.provenance), record: own.id } : null;
  };
  const rate = (code: string): Priced => {
    const own = held(code);
    if (own) return own;
    const row = bookRow(code);
    if (!row) throw new Error(`No rate named ${code}`);
    return { ...row, record: null };
  };
  const codes = new Set([...samplePrices.map(({ code }) => code), ...prices.keys()]);
  return {
    rate,
    methodRate: (method, machine) =>
      (machine ? held(machineRateCode(machine, method)) : null) ?? rate(`methods/${method}`),
    get rates() {
      const ofMachines = [...rates.keys()].filter((code) => machineOfCode(code) !== null);
      return [...book.map(({ code }) => code), ...ofMachines].map(rate);
    },
    price,
    prices: [...codes].flatMap((code) => price(code) ?? []),
    pricing: pricing ?? samplePricing,
    pricingRecord: pricing?.id ?? null,
    currency: recordsOf(doc, 'job')[0]?.currency || null,
  };
}
