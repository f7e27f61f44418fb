import type { Json, RecordId } from '../model/cell.ts';
import { typeOf } from '../model/cell.ts';
import type { Command } from './command.ts';

export type SetRateRowsArgs = {
  readonly rows: readonly {
    /** Of a rate or a price. */
    readonly id: RecordId;
    readonly fields: { readonly [slot: string]: Json };
    readonly clear?: readonly string[];
  }[];
};

const KINDS: readonly string[] = ['rate', 'price'];

/** Several rows of what the job is priced with at once: differences of a newer book, a file, back to the book. */
export const setRateRows: Command<SetRateRowsArgs> = {
  name: 'setRateRows',
  refuse(doc, { rows }) {
    if (rows.some(({ id }) => !KINDS.includes(typeOf(id)))) return 'wrongKind';
    return rows.every(({ id, fields }) => rises({ ...doc.get(id), ...fields })) ? null : 'rateOrder';
  },
  write: (_doc, { rows }) =>
    rows.flatMap(({ id, fields, clear = [] }) => [
      ...Object.entries(fields).map(([slot, value]) => [id, slot, value] as const),
      ...clear.map((slot) => [id, slot, undefined] as const),
    ]),
};

/** Low, likely and high rise in that order, those that are written and those that stay. */
function rises({ low, likely, high }: { readonly [slot: string]: Json | undefined }): boolean {
  if (typeof low !== 'number' || typeof likely !== 'number' || typeof high !== 'number') return true;
  return low <= likely && likely <= high;
}
