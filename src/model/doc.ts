import type { Cell, Json, RecordId } from './cell.ts';
import { typeOf } from './cell.ts';
import type { RecordOf, RecordType } from './records/all.ts';

export type Fields = { readonly [slot: string]: Json | undefined };
export type Doc = ReadonlyMap<RecordId, Fields>;

/** A record with its id, for reading. The same object as long as the record does not change. */
export type Held<T extends RecordType> = RecordOf<T> & { readonly id: `${T}:${string}` };

export const EMPTY_DOC: Doc = new Map();
const NONE: readonly object[] = [];

/** A new plan with the cells written; records that nothing changes keep their identity. */
export function applyCells(doc: Doc, cells: readonly Cell[]): Doc {
  if (cells.length === 0) return doc;
  const next = new Map(doc);
  const touched = fieldsAfter(doc, cells);
  for (const [id, fields] of touched) {
    if (fields) next.set(id, fields);
    else next.delete(id);
  }
  carryIndex(doc, next, touched.keys());
  return next;
}

/** What the records that cells touch come to; null: nothing is left of one. */
export function fieldsAfter(doc: Doc, cells: readonly Cell[]): ReadonlyMap<RecordId, Fields | null> {
  const fresh = new Map<RecordId, Record<string, Json | undefined>>();
  for (const [id, slot, value] of cells) {
    let fields = fresh.get(id);
    if (!fields) {
      fields = { ...doc.get(id) };
      fresh.set(id, fields);
    }
    if (value === undefined) delete fields[slot];
    else fields[slot] = value;
  }
  return new Map(Array.from(fresh, ([id, fields]) => [id, Object.keys(fields).length > 0 ? fields : null]));
}

/** The cells that would bring back what `cells` are about to overwrite. */
export function cellsBefore(doc: Doc, cells: readonly Cell[]): Cell[] {
  const seen = new Set<string>();
  const before: Cell[] = [];
  for (const [id, slot] of cells) {
    const key = `${id} ${slot}`;
    if (seen.has(key)) continue;
    seen.add(key);
    before.push([id, slot, doc.get(id)?.[slot]]);
  }
  return before;
}

const heldOf = new WeakMap<Fields, object>();
/** Lists by type. A list that no change has touched is the same list in the next plan. */
type TypeIndex = ReadonlyMap<string, readonly object[]>;
const indexOf = new WeakMap<Doc, TypeIndex>();
const floorsOf = new WeakMap<readonly object[], Map<string, readonly object[]>>();

function hold(id: RecordId, fields: Fields): object {
  let held = heldOf.get(fields);
  if (!held) {
    held = { ...fields, id };
    heldOf.set(fields, held);
  }
  return held;
}

function byOrder(a: object, b: object): number {
  const x = a as { order?: string; id: string };
  const y = b as { order?: string; id: string };
  const left = x.order ?? '';
  const right = y.order ?? '';
  if (left !== right) return left < right ? -1 : 1;
  if (x.id === y.id) return 0;
  return x.id < y.id ? -1 : 1;
}

function indexByType(doc: Doc): TypeIndex {
  const known = indexOf.get(doc);
  if (known) return known;
  const lists = new Map<string, object[]>();
  for (const [id, fields] of doc) {
    if (fields['gone'] === true) continue;
    const type = typeOf(id);
    const list = lists.get(type);
    if (list) list.push(hold(id, fields));
    else lists.set(type, [hold(id, fields)]);
  }
  for (const list of lists.values()) list.sort(byOrder);
  indexOf.set(doc, lists);
  return lists;
}

/** Takes the lists of a plan over to the plan that follows: only those with a touched record are made anew. */
export function carryIndex(doc: Doc, next: Doc, touched: Iterable<RecordId>): void {
  const was = indexOf.get(doc);
  if (!was) return;
  const idsByType = new Map<string, RecordId[]>();
  for (const id of touched) {
    const type = typeOf(id);
    const ids = idsByType.get(type);
    if (ids) ids.push(id);
    else idsByType.set(type, [id]);
  }
  const index = new Map(was);
  for (const [type, ids] of idsByType) index.set(type, listAfter(was.get(type) ?? NONE, next, ids));
  indexOf.set(next, index);
}

function listAfter(was: readonly object[], next: Doc, touched: readonly RecordId[]): readonly object[] {
  const fresh = touched.flatMap((id) => {
    const fields = next.get(id);
    return fields && fields['gone'] !== true ? [hold(id, fields)] : [];
  });
  const [only] = fresh;
  if (only && touched.length === 1) {
    // A drag asks for this sixty times a second: a record that keeps its place needs no sorting.
    const at = placeOf(was, only);
    if (at >= 0) return listWith(was, at, only);
  }
  const changed = new Set<string>(touched);
  const others = was.filter((held) => !changed.has((held as { id: string }).id));
  return [...others, ...fresh].toSorted(byOrder);
}

/** A list with another record in one place, and with it what is known of its floors. */
function listWith(was: readonly object[], at: number, record: object): readonly object[] {
  const list = was.with(at, record);
  const floors = floorsOf.get(was);
  if (!floors || floorOf(was[at]) !== floorOf(record)) return list;
  const next = new Map(floors);
  const floor = floorOf(record);
  const items = floors.get(floor);
  if (items) next.set(floor, items.with(placeOf(items, record), record));
  floorsOf.set(list, next);
  return list;
}

function floorOf(record: object | undefined): string {
  const { floor = '' } = (record ?? {}) as { readonly floor?: string };
  return floor;
}

/** Where in a sorted list a record of the same id and order stands, or -1. */
function placeOf(list: readonly object[], record: object): number {
  let low = 0;
  let high = list.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (byOrder(list[middle] as object, record) < 0) low = middle + 1;
    else high = middle;
  }
  const found = list[low];
  return found && byOrder(found, record) === 0 ? low : -1;
}

/** All records of one type that are not gone, in paint order. The list is shared: do not change it. */
export function recordsOf<T extends RecordType>(doc: Doc, type: T): readonly Held<T>[] {
  return (indexByType(doc).get(type) ?? NONE) as readonly Held<T>[];
}

/** One record, or null when it is missing, gone, or of another type. */
export function recordOf<T extends RecordType>(doc: Doc, type: T, id: string | null | undefined): Held<T> | null {
  if (!id || typeOf(id as RecordId) !== type) return null;
  const fields = doc.get(id as RecordId);
  if (!fields || fields['gone'] === true) return null;
  return hold(id as RecordId, fields) as Held<T>;
}

/** The items of one floor, of one type: the same list as long as no record of the type changes. */
export function onFloor<T extends RecordType>(doc: Doc, type: T, floor: string): readonly Held<T>[] {
  const list = recordsOf(doc, type);
  const byFloor = floorsOf.get(list) ?? new Map<string, readonly object[]>();
  floorsOf.set(list, byFloor);
  const known = byFloor.get(floor);
  if (known) return known as readonly Held<T>[];
  const items = list.filter((record) => floorOf(record) === floor);
  byFloor.set(floor, items);
  return items;
}

/** Cells that write every field of a new record. */
export function cellsFor<T extends RecordType>(id: `${T}:${string}`, fields: RecordOf<T>): Cell[] {
  return Object.entries(fields).map(([slot, value]) => [id, slot, value as Json] as const);
}
