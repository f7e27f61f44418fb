import type { Cell, Json } from './cell.ts';
import type { Doc } from './doc.ts';

function same(a: Json | undefined, b: Json | undefined): boolean {
  return a === b || JSON.stringify(a) === JSON.stringify(b);
}

/** The cells that make `to` out of `from`. */
export function differenceOf(from: Doc, to: Doc): Cell[] {
  const cells: Cell[] = [];
  for (const [id, fields] of to) {
    const was = from.get(id);
    if (was === fields) continue;
    for (const [slot, value] of Object.entries(fields)) {
      if (!same(was?.[slot], value)) cells.push([id, slot, value]);
    }
  }
  for (const [id, was] of from) {
    const fields = to.get(id);
    if (was === fields) continue;
    for (const [slot, value] of Object.entries(was)) {
      if (value !== undefined && fields?.[slot] === undefined) cells.push([id, slot, undefined]);
    }
  }
  return cells;
}
