import type { RecordId } from '../model/cell.ts';
import { recordOf, type Doc } from '../model/doc.ts';

/**
 * Machines follow each other biggest first, each once: what a machine leaves is too narrow for its head, so a wider one
 * gets to none of it. `first` is the machine of the first pass; null: one of the book, whose width nobody has set here.
 */
export function cascadeFault(doc: Doc, first: RecordId | null, followers: readonly RecordId[]): string | null {
  const machines = followers.map((id) => recordOf(doc, 'machine', id));
  if (machines.includes(null)) return 'unknownMachine';
  const all = first === null ? followers : [first, ...followers];
  if (new Set(all).size < all.length) return 'followerTwice';
  const widths = all.map((id) => recordOf(doc, 'machine', id)?.cutWidthMm ?? Infinity);
  return widths.every((width, i) => i === 0 || width <= (widths[i - 1] ?? Infinity)) ? null : 'followerBigger';
}
