import { onFloor, type Doc, type Held } from '../model/doc.ts';

/** The zone record that says what the rest of a floor's slab gets; null when nobody has made one. */
export function restOf(doc: Doc, floor: string): Held<'zone'> | null {
  return onFloor(doc, 'zone', floor).findLast((zone) => zone.covers === 'rest') ?? null;
}
