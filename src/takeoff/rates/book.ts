import { consumables } from './consumables.ts';
import { factors } from './factors.ts';
import { labour } from './labour.ts';
import { methods } from './methods.ts';
import type { RateRow } from './rateRow.ts';
import { removals } from './removals.ts';
import { waits } from './waits.ts';

/** Every rate of the book as one list: methods (area or metres an hour), labour, factors, what a pass takes off, waits, consumables. */
export const book: readonly RateRow[] = [
  ...methods.map((row) => ({ ...row.rate, code: `methods/${row.id}`, term: row.term })),
  ...labour,
  ...factors,
  ...removals,
  ...waits,
  ...consumables,
];

const byCode = new Map(book.map((row) => [row.code, row]));

/** The row as the book has it, to go back to. */
export function bookRow(code: string): RateRow | null {
  return byCode.get(code) ?? null;
}
