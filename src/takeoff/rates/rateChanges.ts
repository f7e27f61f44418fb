import type { Json, RecordId } from '../../model/cell.ts';
import { recordOf, recordsOf, type Doc } from '../../model/doc.ts';
import { bookRow } from './book.ts';
import { rateFields, rateRecordId } from './defaults.ts';
import { machineOfCode } from './machineRate.ts';
import { rateBook } from './rateBook.ts';
import type { RateRow } from './rateRow.ts';
import { isSameRow, rowEdition } from './rowEdition.ts';

/** What is written to one rate record: an argument of the command that writes rates. */
export type RateChange = {
  readonly id: RecordId;
  readonly fields: { readonly [slot: string]: Json };
  readonly clear?: readonly string[];
};

export const OWN_FIGURE = 'own figure';

/** The row that a code goes back to: its own in the book, or the book's row of the method of a machine. */
export function baseRow(code: string): RateRow | null {
  const machine = machineOfCode(code);
  return bookRow(machine ? `methods/${machine.method}` : code);
}

/** The record of a code in this job, or the one that it would be written to. */
function recordOfCode(doc: Doc, code: string): RecordId {
  return recordsOf(doc, 'rate').find((record) => record.code === code)?.id ?? rateRecordId(code);
}

/** Low, likely and high of one's own. `source` says where they were found; nothing is needed. Null for an unknown code. */
export function ownRate(
  doc: Doc,
  code: string,
  bounds: Pick<RateRow, 'low' | 'likely' | 'high'>,
  source: string = OWN_FIGURE,
): RateChange | null {
  const base = baseRow(code);
  if (!base) return null;
  const { low, likely, high } = bounds;
  const own = { code, low, likely, high, source: source.trim() || OWN_FIGURE, provenance: 'own', fromMemory: false };
  const machine = recordOf(doc, 'machine', machineOfCode(code)?.machine ?? null);
  return {
    id: recordOfCode(doc, code),
    fields: { term: machine?.name ?? base.term, unit: base.unit, ...own, edition: rowEdition(base) },
    clear: ['gone'],
  };
}

/** The rows of these codes as the book has them; the rate that a machine has for itself goes. */
export function rowsOfBook(doc: Doc, codes: readonly string[]): readonly RateChange[] {
  return codes.flatMap((code): RateChange[] => {
    const id = recordOfCode(doc, code);
    if (machineOfCode(code)) return [{ id, fields: { gone: true } }];
    const row = bookRow(code);
    return row ? [{ id, fields: { ...rateFields(row) } }] : [];
  });
}

/** The rows as they are, and the book's editions of today looked at: they are told again when the book changes again. */
export function rowsLeft(doc: Doc, codes: readonly string[]): readonly RateChange[] {
  const held = new Map(recordsOf(doc, 'rate').map((record) => [record.code, record.id]));
  return codes.flatMap((code) => {
    const [id, row] = [held.get(code), bookRow(code)];
    return id && row ? [{ id, fields: { edition: rowEdition(row) } }] : [];
  });
}

/** Codes of what the job has otherwise than the book: own figures, rows of an older edition, rates of machines. */
export function changedCodes(doc: Doc): readonly string[] {
  return rateBook(doc).rates.flatMap((rate) => {
    if (machineOfCode(rate.code)) return [rate.code];
    const row = bookRow(rate.code);
    return row && rate.record && !isSameRow(rate, row) ? [rate.code] : [];
  });
}
