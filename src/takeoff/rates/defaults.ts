import type { Cell, RecordId } from '../../model/cell.ts';
import { cellsFor } from '../../model/doc.ts';
import { book } from './book.ts';
import type { RateRow } from './rateRow.ts';
import { rowEdition } from './rowEdition.ts';
import { samplePrices, samplePricing, SAMPLE_SOURCE } from './samplePrices.ts';

/**
 * The rate and money records of a new job. Their ids come from their codes (`rate:labour-edge_hand`), so that two
 * devices that start the same job write the same records.
 */
export function defaultRateCells(): Cell[] {
  return book.flatMap((row) => cellsFor(rateRecordId(row.code), rateFields(row)));
}

/** What a rate record of a job holds. */
export type RateFields = Pick<RateRow, Exclude<keyof RateRow, 'note'>> & { readonly edition: string };

/** A row of the book as a job keeps it, with the edition that it was taken from. */
export function rateFields(row: RateRow): RateFields {
  const { code, term, unit, low, likely, high, source, provenance, fromMemory } = row;
  return { code, term, unit, low, likely, high, source, provenance, fromMemory, edition: rowEdition(row) };
}

/** Sample prices and the pricing record: all of it money, none of it leaves with the crew. */
export function defaultMoneyCells(): Cell[] {
  const prices = samplePrices.flatMap((row) =>
    cellsFor(priceRecordId(row.code), { ...row, source: SAMPLE_SOURCE, provenance: 'P' }),
  );
  return [...prices, ...cellsFor(PRICING_ID, samplePricing)];
}

export const PRICING_ID = 'pricing:job' as const satisfies RecordId;

/** Id of the record that holds a rate of this code. */
export function rateRecordId(code: string): `rate:${string}` {
  return `rate:${code.replaceAll(/[^A-Za-z0-9_-]/g, '-')}`;
}

/** Id of the record that holds a price of this code. */
export function priceRecordId(code: string): `price:${string}` {
  return `price:${code.replaceAll(/[^A-Za-z0-9_-]/g, '-')}`;
}
