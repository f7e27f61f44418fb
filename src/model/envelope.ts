import type { Json, RecordId } from './cell.ts';
import { typeOf } from './cell.ts';
import type { Doc, Fields } from './doc.ts';
import { isRecordId } from './id.ts';
import { brokenLinks, type BrokenLink } from './integrity.ts';
import { faultInSteps, migrate, steps, versionAfter, type RawRecords, type Step } from './migrations/steps.ts';
import { checkRecord, isRecordType } from './records/all.ts';
import type { KeptAside, Quarantine } from './store.ts';

/** The saved form of a job, job.json: docs/file-format.md tells it field by field. */
export const FORMAT = 'slabtooth';
export const VERSION = versionAfter(steps);
/** The oldest version of the app that may write what we write. Raised only when an older app would do harm. */
export const MIN_READER = 1;

/** Which versions a file speaks of. Kept when an older app writes a newer file, so that no step is run twice. */
export interface Head {
  readonly version: number;
  readonly minReader: number;
  /** A crew copy holds no money: it must never take the place of the whole job. */
  readonly copy: 'whole' | 'crew';
}
export const HEAD: Head = { version: VERSION, minReader: MIN_READER, copy: 'whole' };

export interface Opened {
  readonly ok: true;
  readonly doc: Doc;
  readonly quarantine: Quarantine;
  readonly head: Head;
  /** Written by a newer app that says we may not write it. */
  readonly readOnly: boolean;
  /** Names of the migrations that were run. */
  readonly migrated: readonly string[];
  readonly broken: readonly BrokenLink[];
}
export type EnvelopeFault =
  /** Not an object that says it is ours. */
  | 'notAJob'
  /** Ours, but without a version or without records. */
  | 'damagedJob'
  /** Nested deeper than any record is: not made by us. */
  | 'tooDeep'
  | 'migrationFailed';
export interface NotOpened {
  readonly ok: false;
  readonly fault: EnvelopeFault;
  readonly what: string;
}

const DEEPEST = 64;

type RawObject = { readonly [key: string]: unknown };

function isObject(value: unknown): value is RawObject {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function deeperThan(value: unknown, levels: number): boolean {
  if (typeof value !== 'object' || value === null) return false;
  return levels === 0 || Object.values(value).some((inner) => deeperThan(inner, levels - 1));
}

function isVersion(value: unknown): value is number {
  return typeof value === 'number' && Number.isInteger(value) && value >= 1;
}

interface Sorted {
  readonly records: Map<RecordId, RawObject>;
  readonly aside: Map<RecordId, KeptAside>;
}

/** Records that are no records at all (no id, no fields) go aside under a made-up id, with all they held. */
function sortRecords(raw: RawObject): Sorted {
  const records = new Map<RecordId, RawObject>();
  const aside = new Map<RecordId, KeptAside>();
  for (const [id, fields] of Object.entries(raw)) {
    if (isRecordId(id) && isObject(fields)) records.set(id, fields);
    else if (isRecordId(id))
      aside.set(id, { fields: { value: fields as Json }, reason: 'the record: not a set of fields' });
    else
      aside.set(`unreadable:${aside.size + 1}`, { fields: { id, value: fields as Json }, reason: 'the record: no id' });
  }
  return { records, aside };
}

function readAside(raw: unknown): Map<RecordId, KeptAside> {
  const aside = new Map<RecordId, KeptAside>();
  if (!isObject(raw)) return aside;
  for (const [id, entry] of Object.entries(raw)) {
    const key: RecordId = isRecordId(id) ? id : `unreadable:aside-${aside.size + 1}`;
    if (isObject(entry) && isObject(entry['fields'])) {
      const reason = typeof entry['reason'] === 'string' ? entry['reason'] : 'not said';
      aside.set(key, { fields: entry['fields'] as Fields, reason });
    } else {
      aside.set(key, { fields: { id, value: entry as Json }, reason: 'the record: not a set of fields' });
    }
  }
  return aside;
}

/** A step may not know what to make of a record that was unreadable before it: then it stays as it was. */
function migrateAside(
  aside: ReadonlyMap<RecordId, KeptAside>,
  version: number,
  list: readonly Step[],
): Map<RecordId, KeptAside> {
  const moved = new Map<RecordId, KeptAside>();
  for (const [id, kept] of aside) {
    try {
      const fields = migrate({ [id]: kept.fields }, version, list).records[id];
      moved.set(id, fields ? { ...kept, fields: fields as Fields } : kept);
    } catch {
      moved.set(id, kept);
    }
  }
  return moved;
}

/**
 * Opens what `JSON.parse` gave of a job.json: read, migrate, parse each record, check links. Records that do not
 * parse are kept aside with the reason; those kept aside before are tried again.
 */
export function openEnvelope(json: unknown, list: readonly Step[] = steps): Opened | NotOpened {
  if (!isObject(json) || json['format'] !== FORMAT) return { ok: false, fault: 'notAJob', what: '' };
  const { version, minReader, records: rawRecords } = json;
  if (!isVersion(version) || !isVersion(minReader)) return { ok: false, fault: 'damagedJob', what: 'version' };
  if (!isObject(rawRecords)) return { ok: false, fault: 'damagedJob', what: 'records' };
  if (deeperThan(json, DEEPEST)) return { ok: false, fault: 'tooDeep', what: '' };
  const numbering = faultInSteps(list);
  if (numbering) throw new Error(numbering);

  const { records, aside } = sortRecords(rawRecords);
  let migrated: { readonly records: RawRecords; readonly ran: readonly string[] };
  try {
    migrated = migrate(Object.fromEntries(records), version, list);
  } catch (error) {
    return { ok: false, fault: 'migrationFailed', what: error instanceof Error ? error.message : String(error) };
  }

  const doc = new Map<RecordId, Fields>();
  const quarantine = new Map<RecordId, KeptAside>(aside);
  for (const [id, fields] of Object.entries(migrated.records)) {
    if (!isRecordId(id)) continue;
    const reason = checkRecord(id, fields);
    if (reason === null) doc.set(id, fields as Fields);
    else quarantine.set(id, { fields: fields as Fields, reason });
  }
  for (const [id, kept] of migrateAside(readAside(json['quarantine']), version, list)) {
    const readable = isRecordType(typeOf(id)) && checkRecord(id, kept.fields) === null;
    if (readable && !doc.has(id) && !quarantine.has(id)) doc.set(id, kept.fields);
    else quarantine.set(freeId(id, quarantine), kept);
  }

  const ours = versionAfter(list);
  const head: Head = {
    version: Math.max(version, ours),
    minReader: Math.max(minReader, MIN_READER),
    copy: json['copy'] === 'crew' ? 'crew' : 'whole',
  };
  return {
    ok: true,
    doc,
    quarantine,
    head,
    readOnly: minReader > ours,
    migrated: migrated.ran,
    broken: brokenLinks(doc),
  };
}

/** Two unreadable records may claim one id: both are kept. */
function freeId(id: RecordId, taken: Quarantine): RecordId {
  let free = id;
  for (let turn = 2; taken.has(free); turn++) free = `${id}-${turn}`;
  return free;
}

/** The same value with the keys of every object in alphabetical order. */
function inOrder(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(inOrder);
  if (!isObject(value)) return value;
  const keys = Object.keys(value).toSorted();
  return Object.fromEntries(keys.map((key) => [key, inOrder(value[key])]));
}

/** One record a line, in the order of their ids: two saved files can be compared line by line. */
function writeLines(entries: Iterable<readonly [string, unknown]>): string {
  const lines = [...entries]
    .toSorted(([a], [b]) => (a < b ? -1 : 1))
    .map(([id, value]) => `${JSON.stringify(id)}:${JSON.stringify(inOrder(value))}`);
  return lines.length === 0 ? '{}' : `{\n${lines.join(',\n')}\n}`;
}

/** The text of job.json. The same plan gives the same text, whatever order its records were made in. */
export function writeEnvelope(doc: Doc, quarantine: Quarantine, head: Head = HEAD): string {
  const { version, minReader, copy } = head;
  return [
    `{"format":${JSON.stringify(FORMAT)},"version":${version},"minReader":${minReader},"copy":${JSON.stringify(copy)},`,
    `"records":${writeLines(doc)},`,
    `"quarantine":${writeLines(quarantine)}}`,
    '',
  ].join('\n');
}
