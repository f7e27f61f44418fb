import type { Json, RecordId } from '../model/cell.ts';
import type { Command } from './command.ts';

/** One slot of one record; null where the record allows it, `clear` to take the slot away. */
export type SetFieldArgs = {
  readonly id: RecordId;
  readonly slot: string;
  readonly value?: Json;
  readonly clear?: true;
};

export const setField: Command<SetFieldArgs> = {
  name: 'setField',
  refuse(doc, { id, slot }) {
    const fields = doc.get(id);
    if (!fields || fields['gone'] === true) return 'unknownRecord';
    return FIXED.has(slot) ? 'slotFixed' : null;
  },
  write: (_doc, { id, slot, value, clear }) => [[id, slot, clear ? undefined : value]],
};

/** Given once: an item's number and floor, and what only its own commands may change. */
export const FIXED: ReadonlySet<string> = new Set(['tag', 'floor', 'gone', 'goneWith', 'doorTags']);
