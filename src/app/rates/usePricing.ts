import { run, useDoc } from '../plan.ts';
import type { Json } from '../../model/cell.ts';
import type { Pricing } from '../../model/records/pricing.ts';
import { PRICING_ID, priceRecordId } from '../../takeoff/rates/defaults.ts';
import { rateBook, type RateBook } from '../../takeoff/rates/rateBook.ts';
import type { PriceField } from './MoneyField.tsx';

export interface PricingEdits {
  readonly book: RateBook;
  readonly pricing: Pricing;
  readonly setPricing: (fields: Readonly<Record<string, Json>>, clear?: readonly string[]) => void;
  readonly setPrice: (row: PriceField, amount: number) => void;
}

/** The pricing of the job and its price list, and how they are changed: each change is one step to undo. */
export function usePricing(): PricingEdits {
  const book = useDoc(rateBook);
  const { pricing, pricingRecord } = book;

  /** A job that leaned on the samples so far gets a pricing record of its own with the first change. */
  function setPricing(fields: Readonly<Record<string, Json>>, clear: readonly string[] = []): void {
    const base = pricingRecord ? {} : (pricing as unknown as Readonly<Record<string, Json>>);
    run('setRateRow', { id: pricingRecord ?? PRICING_ID, fields: { ...base, ...fields }, clear: [...clear] });
  }
  function setPrice(row: PriceField, amount: number): void {
    const fields = { code: row.code, term: row.term, unit: row.unit, amount, source: 'own figure', provenance: 'own' };
    run('setRateRow', { id: book.price(row.code)?.record ?? priceRecordId(row.code), fields });
  }
  return { book, pricing, setPricing, setPrice };
}
