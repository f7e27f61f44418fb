import { csvText } from './csv.ts';
import type { Doc } from '../model/doc.ts';
import type { Units } from '../model/units.ts';
import { baseRow } from '../takeoff/rates/rateChanges.ts';
import { rateBook } from '../takeoff/rates/rateBook.ts';
import { rateUnit } from '../takeoff/rates/rateUnits.ts';

/** Columns of a rate book as a table, in this order. Reading asks for code, unit and the three figures. */
export const RATE_COLUMNS = [
  'Code',
  'Rate',
  'Unit',
  'Low',
  'Likely',
  'High',
  'Source',
  'Provenance',
  'From memory',
  'Note',
] as const;
export type RateColumn = (typeof RATE_COLUMNS)[number];

/** Text that would lose an apostrophe of its own when the file is read again gets one more. */
const APOSTROPHE = /^'+[=+\-@\t\r]/;

/** Converted figures have as many places as a double can be trusted to have. */
const FIGURES = 12;

/**
 * The rates of a job as CSV, in the units of the screen: every column, with source and provenance. Reading it again
 * changes nothing. Text that a spreadsheet would run as a formula is made safe (csv.ts).
 */
export function ratesCsv(doc: Doc, units: Units): string {
  const rows = rateBook(doc).rates.map((rate) => {
    const { unit, worth } = rateUnit(rate.unit, units);
    const shown = (value: number): number => (worth === 1 ? value : Number((value / worth).toPrecision(FIGURES)));
    return [
      rate.code,
      kept(rate.term),
      unit,
      shown(rate.low),
      shown(rate.likely),
      shown(rate.high),
      kept(rate.source),
      rate.provenance,
      rate.fromMemory ? 'yes' : 'no',
      kept(baseRow(rate.code)?.note ?? ''),
    ];
  });
  return csvText([[...RATE_COLUMNS], ...rows]);
}

function kept(text: string): string {
  return APOSTROPHE.test(text) ? `'${text}` : text;
}
