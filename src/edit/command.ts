import type { Cell, Json } from '../model/cell.ts';
import type { Doc } from '../model/doc.ts';

/**
 * One gesture, one command, one change, one undo step. Pure: ids, dates and rates come in through `args`.
 * `refuse` answers a code for a sentence; it greys the button and is asked again by the runner. What every
 * change must keep (locks, readable records, sound outlines, openings that fit) is asked once, in soundness.ts.
 */
export interface Command<A extends Json> {
  readonly name: string;
  /** May write to locked items: a page that is trued carries everything drawn on it. */
  readonly passesLocks?: true;
  refuse(doc: Doc, args: A): string | null;
  write(doc: Doc, args: A): readonly Cell[];
}

export interface Refusal {
  readonly refused: string;
}
