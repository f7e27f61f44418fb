import type { Cell, Json, RecordId } from '../model/cell.ts';
import { typeOf } from '../model/cell.ts';
import { recordOf, recordsOf, type Doc } from '../model/doc.ts';
import { keyAfter } from '../model/order.ts';
import type { RecordType } from '../model/records/all.ts';
import { nextTag, type TaggedType } from './tags.ts';

/** What every command that draws something is told. */
export type NewItem = {
  readonly id: RecordId;
  readonly floor: RecordId;
  readonly name?: string;
  readonly note?: string;
};

/** Slots of a new record; those that are undefined are not written. */
export type Slots = { readonly [slot: string]: Json | undefined };

export function refuseNewItem(doc: Doc, { id, floor }: NewItem, type: TaggedType): string | null {
  if (!recordOf(doc, 'floor', floor)) return 'unknownFloor';
  return refuseNewId(doc, id, type);
}

export function refuseNewId(doc: Doc, id: RecordId, type: RecordType): string | null {
  if (typeOf(id) !== type) return 'wrongKind';
  return doc.has(id) ? 'idTaken' : null;
}

/** Cells of a new item of a floor, with its tag and its place in the order. */
export function newItemCells(doc: Doc, args: NewItem, type: TaggedType, slots: Slots): Cell[] {
  return newRecordCells(doc, args.id, {
    floor: args.floor,
    tag: nextTag(doc, args.floor, type),
    name: args.name,
    note: args.note,
    ...slots,
  });
}

/** Cells of any new record, last among its kind unless an order is given. */
export function newRecordCells(doc: Doc, id: RecordId, slots: Slots): Cell[] {
  const ordered: Slots = { order: keyAfter(lastOrder(doc, id)), ...slots };
  return Object.entries(ordered)
    .filter(([, value]) => value !== undefined)
    .map(([slot, value]) => [id, slot, value] as const);
}

function lastOrder(doc: Doc, id: RecordId): string | null {
  const last = recordsOf(doc, typeOf(id) as RecordType).at(-1) as { readonly order?: string } | undefined;
  return last?.order ?? null;
}
