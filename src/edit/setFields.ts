import type { Cell, Json, RecordId } from '../model/cell.ts';
import type { Command } from './command.ts';
import { FIXED } from './setField.ts';

/** The same slots of several records at once. `clear` names slots to take away. */
export type SetFieldsArgs = {
  readonly ids: readonly RecordId[];
  readonly fields: { readonly [slot: string]: Json };
  readonly clear?: readonly string[];
};

export const setFields: Command<SetFieldsArgs> = {
  name: 'setFields',
  refuse(doc, { ids, fields, clear = [] }) {
    const known = ids.every((id) => doc.has(id) && doc.get(id)?.['gone'] !== true);
    if (ids.length === 0 || !known) return 'unknownRecord';
    return [...Object.keys(fields), ...clear].some((slot) => FIXED.has(slot)) ? 'slotFixed' : null;
  },
  write: (_doc, { ids, fields, clear = [] }) =>
    ids.flatMap((id) => [
      ...Object.entries(fields).map(([slot, value]): Cell => [id, slot, value]),
      ...clear.map((slot): Cell => [id, slot, undefined]),
    ]),
};
