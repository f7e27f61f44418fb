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

/** One rate that is being changed, in the book or beside Why. */
export const rateText = {
  rateOf: (name: string): string => `Rate: ${name}`,
  low: 'Low',
  likely: 'Likely',
  high: 'High',
  save: 'Keep this rate',
  back: "Back to the book's value",
  cancel: 'Leave it',
  order: 'Low, likely and high have to rise in that order.',
  positive: 'A rate is more than 0.',
  close: 'Done',
};

export const rateBookText = {
  title: 'Rate book of this job',
  intro:
    'The job keeps the rates it was priced with. Low, likely and high are as they are, not hours: a high rate makes few hours.',
  tables: 'Tables',
  table: 'Table',
  find: 'Find a rate',
  none: 'No rate has these words in its name.',
  noMachines: 'This job has no machine yet. A machine of its own list may have a rate of its own.',
  groups: { speed: 'How fast', changes: 'What slows it', used: 'What is used up', lookUp: 'To look up' },
  names: {
    machine: 'Machines of this job',
    clean: 'Wash, etch, blast, buff',
    takeOff: 'Scrape off',
    grind: 'Grind',
    rough: 'Shot, scarify, scabble',
    edges: 'Edges and details',
    repairs: 'Cracks, joints, spalls',
    site: 'Site work and waits',
    concrete: 'Concrete and coatings',
    room: 'Room and hours',
    removal: 'Taken off in a pass',
    tooling: 'Tool lives',
    goods: 'Fillers, bags, packs',
    chemicals: 'Washes and chemicals',
    coverings: 'Old coverings',
    texture: 'Texture to fill',
  },
  usedFor: {
    machine: 'Hours of this machine in its passes, in place of the rate of its method',
    clean: 'Hours of passes and of findings that are cleaned by it',
    takeOff: 'Hours of passes and of findings that it takes off',
    grind: 'Hours of passes, hand areas and edges',
    rough: 'Hours of passes',
    edges: 'Hours of edges, upstands and small things by hand',
    repairs: 'Hours of cracks, joints and spalls',
    site: 'Hours and waits of the whole job',
    concrete: 'Slows or speeds the rate of a pass',
    room: 'Slows the rate of a pass, or lengthens its hours',
    removal: 'Dust and waste of a pass',
    tooling: 'Tooling that the job wears off',
    goods: 'What is bought in packs',
    chemicals: 'Chemicals, rinses and their water',
    coverings: 'Waste of what comes off, where nobody has measured it',
    texture: 'Extra topping that a rough floor takes',
  },
  usedHere: (titles: string): string => `In this takeoff: ${titles}`,
  andMore: (count: number): string => `and ${count} more`,
  own: 'own',
  older: 'older book',
  bookHas: (low: string, likely: string, high: string): string => `Book: ${low}, ${likely}, ${high}`,
  ofMethod: (method: string): string => `As its method: ${method}`,
  change: 'Change',
  ownRate: 'Own rate',
  reset: 'Reset',
  resetOf: (name: string): string => `Reset to the book: ${name}`,
  changeOf: (name: string): string => `Change: ${name}`,
  sourceField: 'Where the figure comes from',
  sourceHelp: 'For example: three jobs of last year. May stay empty.',
  edition: (edition: string): string => `Edition ${edition} of the rate book.`,
  changedRows: (count: number): string =>
    count === 1 ? '1 rate is not the book’s.' : `${count} rates are not the book’s.`,
  resetAll: 'All back to the book',
  wasReset: (count: number): string =>
    count === 1 ? '1 rate is the book’s again.' : `${count} rates are the book’s again.`,
  saveCsv: 'Save CSV',
  openCsv: 'Open CSV',
  fileRead: (name: string, count: number): string =>
    count === 0
      ? `${name} says what the job says: nothing changes.`
      : `${count === 1 ? '1 rate' : `${count} rates`} taken from ${name}.`,
  fileFaults: (name: string): string => `Nothing of ${name} was taken.`,
  moreFaults: (count: number): string => `And ${count} more of the kind.`,
  notText: (name: string): string =>
    `${name} cannot be read as a rate book. Save the rate book as CSV, change it and open that.`,
  undo: 'Undo',
  differences: {
    title: (count: number): string =>
      count === 1 ? 'The rate book has changed in 1 row' : `The rate book has changed in ${count} rows`,
    says: 'This job goes on with the figures it was priced with. Take what you want; nothing changes by itself.',
    see: 'See them',
    hide: 'Hide them',
    was: 'Was',
    is: 'Is now',
    fresh: (count: number): string =>
      count === 1 ? '1 rate is new in the rate book' : `${count} rates are new in the rate book`,
    freshToo: (count: number): string =>
      count === 1
        ? '1 rate is new. Until this job has it, the book itself is used.'
        : `${count} rates are new. Until this job has them, the book itself is used.`,
    freshSays: 'The copy of this job does not have them: the book itself is used. Taken, they stay as they are now.',
    takeFresh: 'Take the new ones',
    notice: (count: number): string =>
      `The rate book has changed in ${count === 1 ? '1 row' : `${count} rows`}. This job goes on with the figures it was priced with.`,
    take: 'Take',
    takeOf: (name: string): string => `Take the book’s row: ${name}`,
    leave: 'Leave',
    leaveOf: (name: string): string => `Leave as it is: ${name}`,
    takeAll: 'Take all',
    takeAllButOwn: 'Take all but your own',
    leaveAll: 'Leave all',
    taken: (count: number): string =>
      count === 1 ? '1 row taken from the book.' : `${count} rows taken from the book.`,
    left: (count: number): string => (count === 1 ? '1 row left as it was.' : `${count} rows left as they were.`),
  },
  readOnly:
    'Nothing here is worked with: it is to be looked up. Local codes, the specification and the data sheet come first.',
};
