import type { RecordId } from '../model/cell.ts';
import { recordOf, type Doc } from '../model/doc.ts';

/** What people call a passage: the tag of an opening, of a doorway in a slab's outline (`slab:x#3`), or of the way in. */
export function passageName(doc: Doc, passage: string): string {
  const [record = '', edge] = passage.split('#');
  if (edge !== undefined) {
    const slab = recordOf(doc, 'slab', record as RecordId);
    return slab?.outline[Number(edge)]?.edge.tag ?? 'The doorway';
  }
  const found = recordOf(doc, 'opening', record) ?? recordOf(doc, 'entrance', record);
  return found?.tag ?? 'The way in';
}
