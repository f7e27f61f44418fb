import type { RecordId } from '../model/cell.ts';
import { recordOf, type Doc } from '../model/doc.ts';

/**
 * The number that people see of a passage, by the name under which the engine answers it: an opening, a doorway in a
 * slab's outline (`slab:x#3`), or the way in. Null for one without a number.
 */
export function passageTag(doc: Doc, passage: string): string | null {
  const [record = '', edge] = passage.split('#');
  if (edge !== undefined) return recordOf(doc, 'slab', record as RecordId)?.outline[Number(edge)]?.edge.tag ?? null;
  const found = recordOf(doc, 'opening', record as RecordId) ?? recordOf(doc, 'entrance', record as RecordId);
  return found?.tag ?? null;
}
