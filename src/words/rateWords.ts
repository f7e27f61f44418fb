import type { NumberFault } from '../model/parseNumber.ts';
import { numberFault } from './uiWords.ts';

interface CsvFault {
  readonly line: number;
  readonly kind: keyof typeof csvFaults;
  readonly what: string;
  readonly other?: string;
  readonly number?: NumberFault;
}

const csvFaults = {
  noRows: () => 'there are no rates in this file. Save the rate book as CSV, change it and open that.',
  tooLong: () => 'this file is too long for a rate book. Save the rate book as CSV, change it and open that.',
  column: ({ what }: CsvFault) =>
    `the first line has no column named ${what}. Keep the first line of a saved rate book.`,
  quotes: () => 'a quotation mark does not close. Put the whole text in marks, and double those inside.',
  code: ({ what }: CsvFault) =>
    what === ''
      ? 'the code is missing. Copy it from a saved rate book.'
      : `no rate has the code "${what}". Copy the code from a saved rate book.`,
  twice: ({ what, other }: CsvFault) => `"${what}" stands in line ${other} already. Take one of the two lines out.`,
  machine: () =>
    'this is the rate of a machine that this job does not have. Take the line out, or add the machine first.',
  unit: ({ what, other }: CsvFault) =>
    what === '' ? `the unit is missing. Write ${other}.` : `"${what}" is not the unit of this rate. Write ${other}.`,
  number: ({ what, other, number }: CsvFault) => `${other}: ${numberFault(number ?? 'notANumber', what)}`,
  positive: ({ what, other }: CsvFault) => `${other}: ${what} is no rate. It has to be more than 0.`,
  order: () => 'low, likely and high have to rise in that order.',
  provenance: ({ what }: CsvFault) =>
    `"${what}" says nothing about where a figure comes from. Write R, R2, R/P, M, P, A or own, or nothing.`,
  fromMemory: ({ what }: CsvFault) => `From memory: "${what}" is neither yes nor no.`,
} as const;

/** What is wrong with one line of a table of rates, and what to do. */
export function rateCsvSentence(fault: CsvFault): string {
  return `Line ${fault.line}: ${csvFaults[fault.kind](fault)}`;
}
