/** Where a number comes from, in words, by its provenance mark (docs/sources.md). */
const provenanceSays: Readonly<Record<string, string>> = {
  R: "read in the issuer's own text",
  R2: 'read second-hand',
  M: 'from memory of a named document',
  P: 'common practice, no source',
  A: 'arithmetic',
  own: 'your own figure',
  measured: 'measured on the plan',
};

/** One phrase for a term's source: never more certain than it is. */
export function sourceSays(source: string, provenance: string, fromMemory: boolean): string {
  const says = provenanceSays[provenance] ?? provenance;
  if (source === 'set in the job') return 'set in this job';
  if (provenance === 'measured' || provenance === 'own' || provenance === 'A') return says;
  if (source === 'common practice, no source' || source === 'P') return 'common practice, no source';
  const memory = fromMemory && provenance !== 'M' ? ', from memory' : '';
  return `${source}, ${says}${memory}`;
}

export const takeoffText = {
  likely: 'Likely',
  low: 'Low',
  high: 'High',
  total: 'Total',
  work: 'Work',
  show: 'Show',
  lowToHigh: 'low to high',
  priceOf: (which: string): string => `Price, ${which}`,
  held: 'held',
  heldTitle: 'Held: no rate until the result is recorded',
  rest: 'Rest',
  onlyThisFloor: 'For this floor alone: the other floors have a takeoff and a price of their own.',
  money: 'Wages and prices',
  rateBook: 'Rate book',
  questions: 'The four questions',
  noneYet: 'No quantities yet',
  asOf: 'Old numbers: measuring again',
  from: (low: string, high: string): string => `${low} to ${high}`,
};

export const whyText = {
  why: (figure: string): string => `Why ${figure}`,
  pick: 'Why is it that much?',
  pickHelp: 'Press any figure: its sum, its rates and where they come from stand here.',
  less: 'less',
  over: 'divided by',
  most: 'or, if larger,',
  roundedUp: 'rounded up to whole',
  feeds: 'Goes into',
  feedsNothing: 'Goes into nothing else: it is an end of the sum.',
  sources: 'Rates and sources',
  inMetric: (figure: string): string => `This sum has metric conversions in it, so it stands in metric: ${figure}.`,
  range: (low: string, high: string): string => `Low ${low}, high ${high}.`,
  cases: (low: string, high: string): string => `${low} for the low, ${high} for the high.`,
  changeRate: 'Change the rate',
  showOnPlan: 'Show on the plan',
  shownOnPlan: 'Shown on the plan',
  close: 'Close Why',
  heldSays: 'A hold stands: it is measured, and nothing is priced from it.',
  whole: 'the whole floor',
  rest: 'rest of the slab',
  zone: (tag: string): string => `zone ${tag}`,
  pass: (number: number, name: string): string => `pass ${number}, ${name}`,
  one: 'the whole',
};

export const moneyText = {
  title: 'Wages and prices',
  intro: 'Invented to start with. Set yours, then confirm: until then every price says "with sample wages and prices".',
  wages: 'Wages',
  days: 'Day rates',
  prices: 'Prices',
  business: 'Overhead and margin',
  crew: 'Crew',
  crewSize: 'People',
  hoursADay: 'Hours a day',
  burden: 'Burden on wages',
  overhead: 'Overhead, of direct cost',
  margin: 'Margin, of the price',
  marginNote: 'Price = cost / (1 - margin). A margin is not a markup.',
  minimum: 'Minimum charge, crew days',
  certainty: 'How sure are the quantities',
  certainties: { measured: 'Measured', photo: 'From photos', unknown: 'Unknown coating' },
  contingency: 'Contingency',
  contingencyOf: { measured: 'if measured', photo: 'from photos', unknown: 'unknown coating' },
  currency: 'Currency, three letters',
  currencyFault: 'Type the three letters of a currency, for example USD or EUR.',
  confirm: 'These are mine',
  confirmed: (on: string): string => `Confirmed ${on}`,
  again: 'Not mine after all',
  setYours: 'set yours',
  notSet: 'no price yet',
  own: 'yours',
  notMoney: 'Type an amount, for example 32 or 32.50.',
  close: 'Done',
};

export const priceText = {
  title: 'Price range',
  likely: (price: string): string => `likely ${price}`,
  crew: (range: string): string => `crew ${range}`,
  why: 'Why',
  none: 'No price yet',
  noneHeld: 'A hold stands: there is no price before its result is recorded.',
  noneHelp: 'Draw the slab and give its zones a recipe, then the range stands here.',
};
