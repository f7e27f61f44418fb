import type { RecordId } from '../model/cell.ts';
import { typeOf } from '../model/cell.ts';
import { recordsOf, type Doc, type Fields } from '../model/doc.ts';
import { HEAD, type Head } from '../model/envelope.ts';
import { partOf, type Part } from '../model/parts.ts';
import type { KeptAside, Quarantine } from '../model/store.ts';
import { imagesNamed, writeJobFile, type Images } from './jobFile.ts';
import { knownFields } from './knownFields.ts';

/**
 * The copy that leaves with the crew: what is there, what it gets, what was found and done. No prices, wages, costs,
 * margins, estimates, letters or currency, nothing from a newer app that we cannot judge, and no image that only such
 * records show. What somebody wrote into a note, a name or a photograph goes along as it is.
 */
export type PartOf = (id: RecordId, slot: string) => Part;

export interface CrewRecords {
  readonly doc: Doc;
  readonly quarantine: Quarantine;
}

function crewFields(id: RecordId, fields: Fields, part: PartOf, currencies: readonly string[]): Fields | null {
  const known = knownFields(id, fields);
  if (!known) return null;
  // A rate in money would be a wage by another name.
  const unit = known['unit'];
  if (typeOf(id) === 'rate' && typeof unit === 'string' && currencies.some((name) => unit.includes(name))) return null;
  const open = Object.entries(known).filter(([slot]) => part(id, slot) !== 'money');
  return open.length === 0 ? null : Object.fromEntries(open);
}

/** The records of a crew copy. `part` stands open so that a test can let a slot through and see that it is found. */
export function crewRecords(doc: Doc, quarantine: Quarantine, part: PartOf = partOf): CrewRecords {
  const currencies = recordsOf(doc, 'job').flatMap(({ currency }) => currency || []);
  const kept = new Map<RecordId, Fields>();
  for (const [id, fields] of doc) {
    const open = crewFields(id, fields, part, currencies);
    if (open) kept.set(id, open);
  }
  const aside = new Map<RecordId, KeptAside>();
  for (const [id, { fields, reason }] of quarantine) {
    const open = crewFields(id, fields, part, currencies);
    if (open) aside.set(id, { fields: open, reason });
  }
  return { doc: kept, quarantine: aside };
}

/** The bytes of a crew copy. It says of itself that it is one, and never takes the place of the whole job. */
export function writeCrewCopy(
  doc: Doc,
  quarantine: Quarantine,
  images: Images,
  head: Head = HEAD,
  part: PartOf = partOf,
): Uint8Array {
  const crew = crewRecords(doc, quarantine, part);
  const named = imagesNamed(crew.doc);
  const shown = new Map([...images].filter(([hash]) => named.has(hash)));
  return writeJobFile(crew.doc, crew.quarantine, shown, { ...head, copy: 'crew' });
}
