import Papa from 'papaparse';

/** One record of a CSV text and the line of the text that it begins in. */
export interface CsvRecord {
  readonly line: number;
  readonly cells: readonly string[];
  /** Quotes that do not close, or text behind a closing one. */
  readonly broken: boolean;
}

/** Text that was made safe for spreadsheets begins with an apostrophe before the mark of a formula. */
const MADE_SAFE = /^'+[=+\-@\t\r]/;

/** Records of a CSV text (RFC 4180; comma, semicolon or tab), without the empty ones, apostrophes of csv.ts taken off. */
export function csvRecords(text: string): readonly CsvRecord[] {
  const plain = text.startsWith(BYTE_ORDER_MARK) ? text.slice(1) : text;
  const records: CsvRecord[] = [];
  let read = 0;
  let line = 1;
  Papa.parse<string[]>(plain, {
    step: ({ data, errors, meta }) => {
      const broken = errors.some(({ type }) => type === 'Quotes');
      if (data.some((cell) => cell.trim() !== '')) records.push({ line, cells: data.map(asWritten), broken });
      line += lineEnds(plain.slice(read, meta.cursor));
      read = meta.cursor;
    },
  });
  return records;
}

const BYTE_ORDER_MARK = '\ufeff';

function asWritten(cell: string): string {
  return MADE_SAFE.test(cell) ? cell.slice(1) : cell;
}

function lineEnds(text: string): number {
  return text.match(/\r\n|\r|\n/g)?.length ?? 0;
}
