import type { RecordId } from '../model/cell.ts';
import { recordOf, type Doc } from '../model/doc.ts';
import { standInMethod, type ZoneId } from './prep.ts';
import { methodOf } from './rates/methods.ts';
import { restOf } from './restOf.ts';

/** The number that people see of a record (C7, B3), its name, or its id when it has neither; of a machine that stands in, what the book calls it. */
export function tagOf(doc: Doc, id: string): string {
  const fields = doc.get(id as RecordId);
  const said = [fields?.['tag'], fields?.['name']].find((text) => typeof text === 'string' && text !== '');
  if (typeof said === 'string') return said;
  return methodOf(standInMethod(id) ?? '')?.term ?? id;
}

/** Number and name of a zone of a floor; null for a rest of the slab without a record, whose words are the caller's. */
export function zoneLabel(doc: Doc, floor: string, zone: ZoneId): string | null {
  const record = zone === 'rest' ? restOf(doc, floor) : recordOf(doc, 'zone', zone);
  if (!record) return zone === 'rest' ? null : zone;
  return record.name ? `${record.tag} ${record.name}` : record.tag;
}
