import type { RateRow } from './rateRow.ts';

/** What makes a row another row: its figures, their unit and where they come from. Not its wording. */
export type RateFigures = Pick<RateRow, 'unit' | 'low' | 'likely' | 'high' | 'source' | 'provenance' | 'fromMemory'>;

const SAID = [
  'unit',
  'low',
  'likely',
  'high',
  'source',
  'provenance',
  'fromMemory',
] as const satisfies readonly (keyof RateFigures)[];

/**
 * The edition of a row: eight hex digits that change when the row does (FNV-1a, 32 bits). It is written beside each rate
 * of a job, so that a job knows which edition of the book its copy came from. No secret, no signature.
 */
export function rowEdition(row: RateFigures): string {
  return digest(JSON.stringify(SAID.map((field) => row[field])));
}

/** The edition of a whole book: a digest of the editions of its rows, whatever order they stand in. */
export function bookEdition(rows: readonly RateRow[]): string {
  return digest(
    rows
      .map((row) => `${row.code} ${rowEdition(row)}`)
      .toSorted()
      .join('\n'),
  );
}

const OFFSET = 0x811c9dc5;
const PRIME = 0x01000193;

function digest(text: string): string {
  let hash = OFFSET;
  for (const character of text) hash = Math.imul(hash ^ (character.codePointAt(0) ?? 0), PRIME);
  return (hash >>> 0).toString(16).padStart(8, '0');
}

/** Whether two rows say the same, wording apart. */
export function isSameRow(a: RateFigures, b: RateFigures): boolean {
  return SAID.every((field) => a[field] === b[field]);
}
