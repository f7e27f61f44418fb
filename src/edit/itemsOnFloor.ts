import type { RecordId } from '../model/cell.ts';
import { typeOf } from '../model/cell.ts';
import type { Doc, Fields } from '../model/doc.ts';
import { itemShape } from './itemShape.ts';

/** Every item of a floor that lies somewhere, openings with their walls; not its pages. */
export function itemsOnFloor(doc: Doc, floor: RecordId): readonly RecordId[] {
  const items: RecordId[] = [];
  for (const [id, fields] of doc) {
    if (fields['gone'] === true) continue;
    if (homeOf(doc, id, fields) === floor && itemShape(doc, id)) items.push(id);
  }
  return items;
}

/** The floor that an item lies on; an opening lies where its wall does. */
export function homeOf(doc: Doc, id: RecordId, fields: Fields): unknown {
  return typeOf(id) === 'opening' ? doc.get(fields['wall'] as RecordId)?.['floor'] : fields['floor'];
}

export function isAnythingDrawn(doc: Doc, floor: RecordId): boolean {
  return itemsOnFloor(doc, floor).length > 0;
}
