import { PRACTICE, type RateRow } from './rateRow.ts';

/** A row that no document stands behind: a starting value to be replaced by the user's own. */
export function practiceRow(
  code: string,
  term: string,
  unit: string,
  [low, likely, high]: readonly [low: number, likely: number, high: number],
  note?: string,
): RateRow {
  return { code, term, unit, low, likely, high, ...PRACTICE, ...(note === undefined ? {} : { note }) };
}
