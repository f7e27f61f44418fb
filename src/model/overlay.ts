import type { Cell, RecordId } from './cell.ts';
import { carryIndex, fieldsAfter, type Doc, type Fields } from './doc.ts';

/**
 * A plan with cells laid over it, for looking at what would be: reads like `applyCells`, but the thousands of records
 * that nothing changes are not copied. It goes with the plan under it; what is written is never one.
 */
export function laidOver(doc: Doc, cells: readonly Cell[]): Doc {
  if (cells.length === 0) return doc;
  const over = fieldsAfter(doc, cells);

  function* entries(): MapIterator<[RecordId, Fields]> {
    for (const [id, fields] of doc) {
      const instead = over.get(id);
      if (instead === undefined) yield [id, fields];
      else if (instead) yield [id, instead];
    }
    for (const [id, fields] of over) if (fields && !doc.has(id)) yield [id, fields];
  }
  function* keys(): MapIterator<RecordId> {
    for (const [id] of entries()) yield id;
  }
  function* values(): MapIterator<Fields> {
    for (const [, fields] of entries()) yield fields;
  }

  const get = (id: RecordId): Fields | undefined => {
    const instead = over.get(id);
    return instead === undefined ? doc.get(id) : (instead ?? undefined);
  };
  const next: Doc = {
    get,
    has: (id) => get(id) !== undefined,
    get size() {
      return [...entries()].length;
    },
    forEach(on) {
      for (const [id, fields] of entries()) on(fields, id, next);
    },
    entries,
    keys,
    values,
    [Symbol.iterator]: entries,
  };
  carryIndex(doc, next, over.keys());
  return next;
}
