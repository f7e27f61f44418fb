import { recordsOf, type Doc, type Held } from '../../model/doc.ts';
import { book } from './book.ts';
import type { RateRow } from './rateRow.ts';
import { isSameRow, rowEdition, type RateFigures } from './rowEdition.ts';

/** A row of the book that has become another since the job took it, or its owner last looked. */
export interface BookDifference {
  readonly code: string;
  readonly term: string;
  /** What the job works with, and goes on working with; null: the job took its copy before this row was there. */
  readonly was: RateFigures | null;
  readonly now: RateRow;
  /** A figure of the user's own: never taken over without being asked by name. */
  readonly own: boolean;
}

/**
 * What the book says otherwise than the job's copy, in the order of the book. A row is told until it is taken or left;
 * a row that was set by the user only when the book's own row has changed since. Reads only. A job without a copy of
 * the book has no differences: the book itself speaks.
 */
export function bookDifferences(doc: Doc, rows: readonly RateRow[] = book): readonly BookDifference[] {
  const records = new Map(recordsOf(doc, 'rate').map((record) => [record.code, record]));
  if (records.size === 0) return [];
  return rows.flatMap((now): BookDifference[] => {
    const held = records.get(now.code);
    if (!held) return [{ code: now.code, term: now.term, was: null, now, own: false }];
    if (!isNews(held, now)) return [];
    return [{ code: now.code, term: now.term, was: figuresOf(held), now, own: held.provenance === 'own' }];
  });
}

function figuresOf(held: Held<'rate'>): RateFigures {
  return held as RateFigures;
}

function isNews(held: Held<'rate'>, now: RateRow): boolean {
  if (isSameRow(figuresOf(held), now) || held.edition === rowEdition(now)) return false;
  // A figure of one's own from before editions were written down: nobody can say that the book has changed since.
  return held.provenance !== 'own' || held.edition !== undefined;
}
