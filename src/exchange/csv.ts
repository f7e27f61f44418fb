import Papa from 'papaparse';
import type { Doc } from '../model/doc.ts';
import type { Takeoff } from '../takeoff/port.ts';
import type { Shown } from './takeoffRows.ts';
import { takeoffSheet } from './takeoffSheet.ts';

/** Text that a spreadsheet would take for a formula. Numbers of our own never begin so: they are written as numbers. */
const FORMULA = /^[=+\-@\t\r]/;

/**
 * Cells as CSV text (RFC 4180, lines end with CR LF). Text that begins like a formula gets an apostrophe before it, so
 * that opening the file runs nothing. With a tab between them, spreadsheets take them from the clipboard.
 */
export function csvText(rows: readonly (readonly (string | number | null)[])[], delimiter: ',' | '\t' = ','): string {
  return Papa.unparse(
    rows.map((row) => row.map((cell) => (typeof cell === 'string' && FORMULA.test(cell) ? `'${cell}` : (cell ?? '')))),
    { newline: '\r\n', delimiter },
  );
}

/** The takeoff of one floor as CSV: work in rows; low, likely and high of each zone and of the whole floor in columns. */
export function takeoffCsv(doc: Doc, takeoff: Takeoff, currency: string, shown: Shown = {}): string {
  return csvText(takeoffSheet(doc, takeoff, currency, shown));
}
