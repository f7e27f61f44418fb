import type { RecordId } from '../model/cell.ts';
import type { Command } from './command.ts';
import { newRecordCells } from './newItem.ts';

/** Ticking off a zone, pass, crack or hold point; the same id again changes the tick. */
export type RecordTickArgs = {
  readonly id: RecordId;
  readonly of: RecordId;
  readonly what: string;
  readonly done: boolean;
  readonly on?: string;
  readonly by?: string;
  readonly actualHours?: number;
};

export const recordTick: Command<RecordTickArgs> = {
  name: 'recordTick',
  refuse: (doc, { id, of }) => (!id.startsWith('tick:') ? 'wrongKind' : doc.has(of) ? null : 'unknownRecord'),
  write(doc, { id, of, what, done, on, by, actualHours }) {
    const order = doc.get(id)?.['order'];
    return newRecordCells(doc, id, { of, what, done, on, by, actualHours, ...(order === undefined ? {} : { order }) });
  },
};
