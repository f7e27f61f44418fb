/** What the takeoff says in each way to read it: the list of work, by phase, and what drives the price. English. */
export const workText = {
  where: 'Where',
  work: 'Work',
  quantity: 'Quantity',
  unit: 'Unit',
  low: 'Low',
  likely: 'Likely',
  high: 'High',
  highHours: 'High, h',
  hoursHead: 'Hours',
  floor: 'Whole floor',
  together: 'Together',
  oneGo: 'All in one go',
  inNoPhase: 'In no phase',
  crewOn: (visit: string | null): string => (visit === null ? 'Crew hours on site' : `Crew hours on site, ${visit}`),
  zones: (names: readonly string[]): string =>
    names.length === 1 ? `Zone ${names.join('')}` : `Zones ${names.join(', ')}`,
  heldUntil: 'Held: no rate until the result is recorded',
  noHours: 'No hours',
  priceAt: (marginPct: number): string => `Price at a margin of ${String(marginPct)} %`,
  listCaption: 'Work with its quantities and hours',
} as const;

/** The ways to read a takeoff. */
export const wayWords = {
  label: 'Read it by',
  zones: 'Zones',
  work: 'Work',
  phases: 'Phases',
  drivers: 'Drivers',
  orders: 'Orders',
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
  moneyNote: 'Bars are the likely case and add up to the price. The frame runs from low to high.',
  hours: 'Where the hours go',
  hoursNote: 'Hours of the work itself in all zones, before people work side by side. The frame runs from low to high.',
  moves: 'What moves the price most',
  movesNote: (price: string): string =>
    `From the likely ${price}: each number alone where it makes it cheapest (open bar) and dearest (solid bar), all others likely. They do not add up.`,
  part: 'Part',
  kind: 'Kind of cost',
  work: 'Work',
  uncertain: 'Number',
  likely: 'Likely',
  priceThen: 'Price then',
  bar: 'Bar',
  from: (low: string, high: string): string => `${low} to ${high}`,
  all: (count: number): string => `Show all ${String(count)}`,
  fewer: 'Show the largest only',
  none: 'Nothing has a price yet: what drives it stands here when it has.',
  noMoves: 'No number of this price has a range.',
} as const;
