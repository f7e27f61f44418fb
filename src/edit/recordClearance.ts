import type { RecordId } from '../model/cell.ts';
import type { Command } from './command.ts';

/** What clears a hold: a result, the date and the name of a person. */
export type ClearanceArgs = {
  readonly result: 'clear' | 'found';
  readonly on: string;
  readonly by: string;
  readonly reference?: string;
};

export type RecordClearanceArgs = {
  /** A finding, or the job for what lies in the slab. */
  readonly record: RecordId;
  readonly slot: 'asbestosTest' | 'leadTest' | 'inSlabLocated';
  /** Null takes it back: the hold stands again. */
  readonly clearance: ClearanceArgs | null;
};

/** Results are the record of a person who looked: a lock on the drawing does not keep them out. */
export const recordClearance: Command<RecordClearanceArgs> = {
  name: 'recordClearance',
  passesLocks: true,
  refuse(doc, { record, clearance }) {
    const fields = doc.get(record);
    if (!fields || fields['gone'] === true) return 'unknownRecord';
    if (clearance && (clearance.by.trim() === '' || clearance.on === '')) return 'clearanceIncomplete';
    return null;
  },
  write: (_doc, { record, slot, clearance }) => [[record, slot, clearance ?? undefined]],
};
