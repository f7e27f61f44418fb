import type { Json, RecordId } from '../model/cell.ts';
import { typeOf } from '../model/cell.ts';
import type { Command } from './command.ts';

export type SetRateRowArgs = {
  /** Of the row in the rate book, the price list, or the pricing of the job. */
  readonly id: RecordId;
  /** Every slot when the job has no such row yet; else those that change. */
  readonly fields: { readonly [slot: string]: Json };
  readonly clear?: readonly string[];
};

const KINDS: readonly string[] = ['rate', 'price', 'pricing'];

/** A row of what the job is priced with. A job that leaned on the book so far gets its own row with the first change. */
export const setRateRow: Command<SetRateRowArgs> = {
  name: 'setRateRow',
  refuse: (_doc, { id }) => (KINDS.includes(typeOf(id)) ? null : 'wrongKind'),
  write: (_doc, { id, fields, clear = [] }) => [
    ...Object.entries(fields).map(([slot, value]) => [id, slot, value] as const),
    ...clear.map((slot) => [id, slot, undefined] as const),
  ],
};
