import type { RecordId } from '../model/cell.ts';
import { typeOf } from '../model/cell.ts';
import type { Doc, Fields } from '../model/doc.ts';
import type { Corner } from '../model/records/slab.ts';

/** The letter people see before an item's number. Doorways in a slab's edge share D with openings. */
const LETTERS = {
  slab: 'S',
  wall: 'W',
  opening: 'D',
  obstruction: 'B',
  outOfScope: 'X',
  steps: 'ST',
  crack: 'C',
  joint: 'J',
  finding: 'F',
  zone: 'Z',
  entrance: 'M',
  reading: 'R',
  note: 'N',
  dimension: 'L',
} as const;
export type TaggedType = keyof typeof LETTERS;

/** The tag of a new item: one more than the highest ever given on this floor. Items that are gone keep theirs. */
export function nextTag(doc: Doc, floor: RecordId, type: TaggedType): string {
  return tagOf(type, highestTag(doc, floor, type) + 1);
}

export function tagOf(type: TaggedType, number: number): string {
  return `${LETTERS[type]}${number}`;
}

/** A half-drawn item asks again on every move of the hand; the plan it asks of stays the same. */
const highestKnown = new WeakMap<Doc, Map<string, number>>();

export function highestTag(doc: Doc, floor: RecordId, type: TaggedType): number {
  const known = highestKnown.get(doc) ?? new Map<string, number>();
  highestKnown.set(doc, known);
  const key = `${floor} ${type}`;
  const highest = known.get(key) ?? readHighest(doc, floor, type);
  known.set(key, highest);
  return highest;
}

function readHighest(doc: Doc, floor: RecordId, type: TaggedType): number {
  let highest = type === 'opening' ? doorTagsGiven(doc, floor) : 0;
  for (const [id, fields] of doc) {
    const kind = typeOf(id);
    if (kind === type && floorOf(doc, fields) === floor) highest = Math.max(highest, numberIn(fields['tag']));
    if (kind === 'slab' && type === 'opening' && fields['floor'] === floor) {
      for (const corner of (fields['outline'] ?? []) as unknown as readonly Corner[]) {
        highest = Math.max(highest, numberIn(corner.edge.tag));
      }
    }
  }
  return highest;
}

/** A doorway's tag leaves the outline with its edge, so the floor remembers how many were given. */
function doorTagsGiven(doc: Doc, floor: RecordId): number {
  const given = doc.get(floor)?.['doorTags'];
  return typeof given === 'number' ? given : 0;
}

function floorOf(doc: Doc, fields: Fields): unknown {
  return fields['floor'] ?? doc.get(fields['wall'] as RecordId)?.['floor'];
}

function numberIn(tag: unknown): number {
  return typeof tag === 'string' ? Number(/\d+$/.exec(tag)?.[0] ?? 0) : 0;
}
