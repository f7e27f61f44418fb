import type { Cell, RecordId } from '../model/cell.ts';
import { typeOf } from '../model/cell.ts';
import { recordsOf, type Doc } from '../model/doc.ts';
import { keyBetween, keysAfter } from '../model/order.ts';
import type { RecordType } from '../model/records/all.ts';
import type { Command } from './command.ts';

export type ReorderArgs = {
  readonly id: RecordId;
  /** The record of the same kind that it shall come before; null: last, on top. */
  readonly before: RecordId | null;
};

interface Ordered {
  readonly id: RecordId;
  readonly order?: string;
}

export const reorder: Command<ReorderArgs> = {
  name: 'reorder',
  refuse(doc, { id, before }) {
    const list = kindOf(doc, id);
    if (!list.some((record) => record.id === id)) return 'unknownRecord';
    if (before !== null && !list.some((record) => record.id === before)) return 'unknownRecord';
    return before === id ? 'noChange' : null;
  },
  write(doc, { id, before }) {
    const others = kindOf(doc, id).filter((record) => record.id !== id);
    const place = before === null ? others.length : others.findIndex((record) => record.id === before);
    const low = others[place - 1]?.order ?? null;
    const high = others[place]?.order ?? null;
    const keysAreSound = others.every(
      (record, index) => record.order && (others[index - 1]?.order ?? '') < record.order,
    );
    if (keysAreSound) return [[id, 'order', keyBetween(low, high)]];
    // Records of an old or merged file may lack keys or share one: then all get new ones.
    const all = others.map((record) => record.id).toSpliced(place, 0, id);
    return keysAfter(null, all.length).map((key, index): Cell => [all[index] ?? id, 'order', key]);
  },
};

function kindOf(doc: Doc, id: RecordId): readonly Ordered[] {
  return recordsOf(doc, typeOf(id) as RecordType) as readonly Ordered[];
}
