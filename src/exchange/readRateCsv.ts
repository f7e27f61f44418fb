import { RATE_COLUMNS, type RateColumn } from './rateCsv.ts';
import { csvRecords, type CsvRecord } from './csvRecords.ts';
import { recordOf, type Doc } from '../model/doc.ts';
import { parseNumber, type NumberFault } from '../model/parseNumber.ts';
import { machineOfCode } from '../takeoff/rates/machineRate.ts';
import { baseRow, ownRate, OWN_FIGURE, rowsOfBook, type RateChange } from '../takeoff/rates/rateChanges.ts';
import { rateBook, type Priced } from '../takeoff/rates/rateBook.ts';
import type { RateRow } from '../takeoff/rates/rateRow.ts';
import { rateUnit } from '../takeoff/rates/rateUnits.ts';

/** What is wrong with a line of the file, for a sentence. */
export interface RateCsvFault {
  readonly line: number;
  readonly kind:
    | 'noRows'
    | 'tooLong'
    | 'column'
    | 'quotes'
    | 'code'
    | 'twice'
    | 'machine'
    | 'unit'
    | 'number'
    | 'positive'
    | 'order'
    | 'provenance'
    | 'fromMemory';
  /** What stands there, or the name of the column that is missing. */
  readonly what: string;
  /** The column it stands in, the unit that is meant, or the line that it stood in before. */
  readonly other?: string;
  readonly number?: NumberFault;
}

export type ReadRates =
  | { readonly ok: true; readonly changes: readonly RateChange[]; readonly rows: number }
  | { readonly ok: false; readonly faults: readonly RateCsvFault[] };

const MOST_CHARACTERS = 2_000_000;
const NEEDED: readonly RateColumn[] = ['Code', 'Unit', 'Low', 'Likely', 'High'];
const PROVENANCES: readonly string[] = ['', 'R', 'R2', 'R/P', 'M', 'P', 'A', 'own', 'measured'];
const BOUNDS = ['Low', 'Likely', 'High'] as const;

/**
 * What a table of rates changes in a job: only rows that say something else than the job. All or nothing: one bad line
 * and there are only faults, each with its line. A figure that is not the book's is the user's own and says so, whatever
 * its provenance column claims.
 */
export function readRateCsv(doc: Doc, text: string): ReadRates {
  if (text.length > MOST_CHARACTERS) return fail([{ line: 1, kind: 'tooLong', what: '' }]);
  const [head, ...records] = csvRecords(text);
  if (!head || records.length === 0) return fail([{ line: 1, kind: 'noRows', what: '' }]);
  const columns = columnsOf(head);
  const missing = NEEDED.filter((name) => !columns.has(name));
  if (missing.length > 0) return fail([{ line: head.line, kind: 'column', what: missing.join(', ') }]);

  const rates = new Map(rateBook(doc).rates.map((rate) => [rate.code, rate]));
  const lineOf = new Map<string, number>();
  const faults: RateCsvFault[] = [];
  const changes: RateChange[] = [];
  for (const record of records) {
    const cell = (name: RateColumn): string => record.cells[columns.get(name) ?? -1] ?? '';
    const read = readRow(doc, record, cell);
    const before = lineOf.get(read.code);
    if (read.faults.length > 0) faults.push(...read.faults);
    else if (before !== undefined)
      faults.push({ line: record.line, kind: 'twice', what: read.code, other: `${before}` });
    else if (read.row) changes.push(...changeOf(doc, rates.get(read.code) ?? null, read.row));
    lineOf.set(read.code, before ?? record.line);
  }
  return faults.length > 0 ? fail(faults) : { ok: true, changes, rows: records.length };
}

function fail(faults: readonly RateCsvFault[]): ReadRates {
  return { ok: false, faults };
}

function columnsOf(head: CsvRecord): ReadonlyMap<RateColumn, number> {
  const names = head.cells.map((cell) => cell.trim().toLowerCase());
  return new Map(
    RATE_COLUMNS.flatMap((column): [RateColumn, number][] => {
      const at = names.indexOf(column.toLowerCase());
      return at < 0 ? [] : [[column, at]];
    }),
  );
}

/** A row as the job would keep it. */
type ReadRow = Pick<RateRow, 'code' | 'low' | 'likely' | 'high' | 'source' | 'fromMemory'> & {
  readonly provenance: string;
};

interface Reading {
  readonly code: string;
  readonly row: ReadRow | null;
  readonly faults: readonly RateCsvFault[];
}

function readRow(doc: Doc, { line, broken }: CsvRecord, cell: (name: RateColumn) => string): Reading {
  const code = cell('Code').trim();
  const only = (kind: RateCsvFault['kind'], what: string, other?: string): Reading => ({
    code,
    row: null,
    faults: [{ line, kind, what, ...(other === undefined ? {} : { other }) }],
  });
  if (broken) return only('quotes', '');
  const base = baseRow(code);
  if (!base) return only('code', code);
  const machine = machineOfCode(code)?.machine;
  if (machine && !recordOf(doc, 'machine', machine)) return only('machine', code);
  const unit = cell('Unit').trim();
  const shown = (['metric', 'imperial'] as const).map((units) => rateUnit(base.unit, units));
  const meant = shown.find((each) => each.unit === unit);
  if (!meant) return only('unit', unit, [...new Set(shown.map((each) => each.unit))].join(' or '));
  const provenance = cell('Provenance').trim();
  if (!PROVENANCES.includes(provenance)) return only('provenance', provenance);
  const fromMemory = cell('From memory').trim().toLowerCase();
  if (!['', 'yes', 'no'].includes(fromMemory)) return only('fromMemory', fromMemory);

  const faults: RateCsvFault[] = [];
  const [low, likely, high] = BOUNDS.map((column) => {
    const read = numberIn(cell(column));
    if (!read.ok) faults.push({ line, kind: 'number', what: read.what, other: column, number: read.fault });
    else if (read.value === 0 && base.low > 0)
      faults.push({ line, kind: 'positive', what: cell(column).trim(), other: column });
    return read.ok ? read.value * meant.worth : 0;
  }) as [number, number, number];
  if (faults.length > 0) return { code, row: null, faults };
  if (low > likely || likely > high) return only('order', code);
  const source = cell('Source').trim();
  return { code, row: { code, low, likely, high, source, provenance, fromMemory: fromMemory === 'yes' }, faults };
}

/** Spreadsheets write very small numbers as powers of ten. */
function numberIn(cell: string): ReturnType<typeof parseNumber> {
  const text = cell.trim();
  return /^\d+(\.\d+)?e[+-]?\d+$/i.test(text) ? { ok: true, value: Number(text) } : parseNumber(text);
}

/** Nothing for a row that says what the job says; the book's row where it says what the book says; else one's own. */
function changeOf(doc: Doc, now: Priced | null, row: ReadRow): readonly RateChange[] {
  const base = baseRow(row.code);
  if (!base) return [];
  if (now && isAlike(now, row)) return [];
  if (machineOfCode(row.code) === null && isAlike(base, row)) return rowsOfBook(doc, [row.code]);
  // Another figure is not what the source said: the source of the book does not stand behind it.
  const bookSays = row.source === base.source || (row.source === now?.source && now.provenance !== 'own');
  const own = ownRate(doc, row.code, row, bookSays ? OWN_FIGURE : row.source);
  return own ? [own] : [];
}

/** As many figures as the file is written with. */
const CLOSE = 1e-9;

function isAlike(a: RateRow | Priced, row: ReadRow): boolean {
  const near = (x: number, y: number): boolean => Math.abs(x - y) <= CLOSE * Math.max(Math.abs(x), Math.abs(y));
  return (
    near(a.low, row.low) &&
    near(a.likely, row.likely) &&
    near(a.high, row.high) &&
    [a.source.trim(), ''].includes(row.source) &&
    ['', a.provenance].includes(row.provenance)
  );
}
