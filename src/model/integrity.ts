import type { Json, RecordId } from './cell.ts';
import { typeOf } from './cell.ts';
import type { Doc } from './doc.ts';
import type { RecordType } from './records/all.ts';

/** Broken links are listed and shown, never repaired behind anybody's back: after a merge the other half may yet come. */
export type LinkFault =
  /** The record it lies on or belongs to is not there: it is shown aside and not counted. */
  | 'parentMissing'
  | 'parentGone'
  /** What it refers to is not there: the record stands, the reference counts as not set. */
  | 'targetMissing'
  | 'targetGone'
  /** The link leads to a record of another kind. */
  | 'targetOfWrongKind'
  | 'jobMissing'
  | 'jobTwice';

export interface BrokenLink {
  readonly code: LinkFault;
  readonly record: RecordId | null;
  readonly slot: string;
  readonly target: string;
}

interface Link {
  /** A parent carries the record; a target is only referred to. */
  readonly as: 'parent' | 'target';
  /** Kinds it may lead to; null: any. */
  readonly to: readonly RecordType[] | null;
}
type Links = { readonly [slot: string]: Link };

const onFloor: Links = { floor: { as: 'parent', to: ['floor'] } };

/** Every slot that names another record. A test compares it with the schemas. */
export const linksOf: Readonly<Partial<Record<RecordType, Links>>> = {
  page: onFloor,
  slab: onFloor,
  wall: onFloor,
  opening: { wall: { as: 'parent', to: ['wall'] } },
  obstruction: onFloor,
  outOfScope: onFloor,
  steps: onFloor,
  crack: onFloor,
  joint: onFloor,
  finding: onFloor,
  zone: { ...onFloor, phase: { as: 'target', to: ['phase'] }, recipe: { as: 'target', to: ['recipe'] } },
  recipe: { followedBy: { as: 'target', to: ['machine'] } },
  pass: { recipe: { as: 'parent', to: ['recipe'] }, machine: { as: 'target', to: ['machine'] } },
  phase: { floor: { as: 'target', to: ['floor'] } },
  alternate: { zone: { as: 'parent', to: ['zone'] }, recipe: { as: 'target', to: ['recipe'] } },
  entrance: onFloor,
  service: onFloor,
  reading: onFloor,
  photo: onFloor,
  note: onFloor,
  dimension: onFloor,
  tick: { of: { as: 'parent', to: null } },
};

function linkFault(doc: Doc, link: Link, target: string): LinkFault | null {
  const fields = doc.get(target as RecordId);
  if (!fields) return link.as === 'parent' ? 'parentMissing' : 'targetMissing';
  const kinds: readonly string[] | null = link.to;
  if (kinds && !kinds.includes(typeOf(target as RecordId))) return 'targetOfWrongKind';
  if (fields['gone'] === true) return link.as === 'parent' ? 'parentGone' : 'targetGone';
  return null;
}

/** A slot names one record or a list of them. */
function targetsOf(value: Json | undefined): readonly string[] {
  return (Array.isArray(value) ? value : [value]).filter((target) => typeof target === 'string');
}

/** All broken links of a plan, in the order of its records. Records that are gone themselves are not judged. */
export function brokenLinks(doc: Doc): BrokenLink[] {
  const broken: BrokenLink[] = [];
  const jobs: RecordId[] = [];
  for (const [id, fields] of doc) {
    if (fields['gone'] === true) continue;
    const type = typeOf(id);
    if (type === 'job') jobs.push(id);
    if (!Object.hasOwn(linksOf, type)) continue;
    for (const [slot, link] of Object.entries(linksOf[type as RecordType] ?? {})) {
      for (const target of targetsOf(fields[slot])) {
        const code = linkFault(doc, link, target);
        if (code) broken.push({ code, record: id, slot, target });
      }
    }
  }
  if (jobs.length === 0) broken.push({ code: 'jobMissing', record: null, slot: '', target: '' });
  for (const extra of jobs.slice(1)) broken.push({ code: 'jobTwice', record: extra, slot: '', target: jobs[0] ?? '' });
  return broken;
}
