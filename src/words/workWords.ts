/** What the readings of the takeoff say: the list of work, by phase, and what drives the price. English. */
export const workText = {
  where: 'Where',
  work: 'Work',
  quantity: 'Quantity',
  unit: 'Unit',
  low: 'Low',
  likely: 'Likely',
  high: 'High',
  hours: 'h',
  floor: 'Whole floor',
  together: 'Together',
  oneGo: 'All in one go',
  inNoPhase: 'In no phase',
  crewOn: (visit: string | null): string => (visit === null ? 'The crew on site' : `The crew on site, ${visit}`),
  zones: (names: readonly string[]): string =>
    names.length === 1 ? `Zone ${names.join('')}` : `Zones ${names.join(', ')}`,
  heldUntil: 'Held: no rate until the result is recorded',
  nothing: 'No zone is free to be worked: its hours stand here once the hold is cleared.',
  listCaption: 'Work with its quantities and hours',
} as const;

/** The ways to read a takeoff. */
export const readingWords = {
  label: 'Read it by',
  zones: 'Zones',
  work: 'Work',
  phases: 'Phases',
  drivers: 'Drivers',
  orders: 'Orders',
} as const;

export const sortWords = {
  /** Said of a heading that sorts: what a press does next. */
  sortsBy: (column: string): string => `${column}: sort`,
  inOrder: 'In the order of the work',
} as const;

export const sheetWords = {
  copy: 'Copy',
  save: 'Save CSV',
  copied: 'What is shown is on the clipboard: paste it into a spreadsheet.',
  notCopied: 'This browser does not let the page copy. Save it as CSV instead.',
} as const;

const COSTS: Readonly<Record<string, string>> = {
  labour: 'Labour',
  equipment: 'Machines and tools',
  goods: 'Tooling and goods',
  waste: 'Waste taken away',
  travel: 'Getting there',
  other: 'Other costs',
  contingency: 'Contingency',
  overhead: 'Overhead',
  margin: 'Margin',
};

/** A kind of cost, whose code is `cost.` and its name; null for any other code. */
export function costTitleOf(code: string): string | null {
  const [group, kind = ''] = code.split('.');
  return group === 'cost' ? (COSTS[kind] ?? kind) : null;
}

export const driverWords = {
  title: 'What drives the price',
  money: 'Where the money goes',
  moneyNote: 'Bars are the likely case and add up to the price. The line is low to high.',
  hours: 'Where the hours go',
  hoursNote: 'Hours of the work itself, all zones together, before people work side by side.',
  moves: 'What moves the price most',
  movesNote: (price: string): string =>
    `From the likely ${price}: each number alone at its low and at its high, all others likely. They do not add up.`,
  kind: 'Kind of cost',
  work: 'Work',
  uncertain: 'Number',
  likely: 'Likely',
  range: 'Low to high',
  priceAtLow: 'At its low',
  priceAtHigh: 'At its high',
  bar: 'Bar',
  from: (low: string, high: string): string => `${low} to ${high}`,
  all: (count: number): string => `Show all ${String(count)}`,
  fewer: 'Show the largest only',
  none: 'Nothing has a price yet: what drives it stands here when it has.',
  noMoves: 'No number of this price has a range.',
  drawing: 'Drawing the bars',
} as const;
