import type { RecordId } from '../model/cell.ts';
import { recordOf, type Doc } from '../model/doc.ts';
import type { ZoneId } from './prep.ts';

/** The number that people see of a record (C7, B3), its name, or its id when it has neither. */
export function tagOf(doc: Doc, id: string): string {
  const fields = doc.get(id as RecordId);
  const said = [fields?.['tag'], fields?.['name']].find((text) => typeof text === 'string' && text !== '');
  return typeof said === 'string' ? said : id;
}

/** Number and name of a zone; null for the rest of the slab, whose words are the caller's. */
export function zoneLabel(doc: Doc, zone: ZoneId): string | null {
  if (zone === 'rest') return null;
  const record = recordOf(doc, 'zone', zone);
  if (!record) return zone;
  return record.name ? `${record.tag} ${record.name}` : record.tag;
}
