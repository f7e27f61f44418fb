import { itemWords } from './orderWords.ts';

/** Titles of lines of money, by code. Those of price and zones stand with the other lines. */
const MONEY_TITLES: Readonly<Record<string, string>> = {
  'money.labour': 'Labour',
  'money.night': 'Night premium',
  'money.equipment': 'Equipment',
  'money.delivery': 'Delivery of machines on hire',
  'money.power': 'Generator and fuel',
  'money.haul': 'Waste haul',
  'money.tip': 'Tip fee',
  'money.drums': 'Slurry taken away',
  'money.wasteTests': 'Tests of waste',
  'money.travel': 'Travel time',
  'money.driving': 'Driving',
  'money.lodging': 'Lodging and meals',
  'money.mobilisation': 'Mobilisation',
  'money.remobilisation': 'Re-mobilisation',
  'money.tests': 'Test material',
  'money.mockUp': 'Mock-up material',
  'money.other': 'Other costs',
  'money.direct': 'Direct cost',
  'money.contingency': 'Contingency',
  'money.overhead': 'Overhead',
  'money.cost': 'Cost',
  'money.margin': 'Margin',
  'money.markup': 'The same margin, as a markup on cost',
  'money.price': 'Price',
  'money.priceShare': 'Price, share of the zone',
  'money.tax': 'Tax',
  'money.priceWithTax': 'Price with tax',
  'extra.crackMetre': 'Extra, per m: crack over the counted, filled',
  'extra.coatingLayer': 'Extra, per m2: one more coating layer off',
  'extra.waitingHour': 'Extra, per h: crew waiting',
  'extra.visit': 'Extra, each: one more visit',
  'extra.cleanAgain': 'Extra, per m2: cleaned again before the primer',
  'extra.probe': 'Extra, each: RH probe',
  'extra.bag': 'Extra, each: bag of waste',
};

/** For how much of it an extra is. */
export const extraUnits: Readonly<Record<string, string>> = {
  'extra.crackMetre': 'm',
  'extra.coatingLayer': 'm2',
  'extra.waitingHour': 'h',
  'extra.visit': 'visit',
  'extra.cleanAgain': 'm2',
  'extra.probe': 'probe',
  'extra.bag': 'bag',
};

/** Title of a line of money, or null for any other code. */
export function moneyTitleOf(code: string): string | null {
  const title = MONEY_TITLES[code];
  if (title) return title;
  const [, item] = code.split('money.goods.');
  return item === undefined ? null : (itemWords[item] ?? item);
}

/** What the page of wages and prices says, section by section. */
export const moneyPage = {
  sections: {
    wages: 'Wages and crew',
    machines: 'Machines by the day',
    goods: 'Tooling and goods',
    travel: 'Travel and visits',
    waste: 'Waste',
    site: 'Power, tests, mock-up',
    business: 'Overhead, margin, contingency',
    tax: 'Tax and rounding',
    other: 'Other costs',
    words: 'What the price rests on',
  },
  older:
    'This job was priced before hire, travel, visits, waste and rounding were asked for: they cost nothing until they are set.',
  askNow: 'Start with the sample settings',
  inParts: 'Burden in parts',
  inOne: 'Burden as one figure',
  burdenSum: (percent: string): string => `Together ${percent} % on the wage.`,
  parts: {
    payrollTax: 'Payroll tax',
    unemployment: 'Unemployment insurance',
    injury: 'Insurance against injury',
    health: 'Health',
    holidays: 'Holidays',
    smallTools: 'Small tools, protective gear',
  },
  payrollNote: 'In the US the employer pays 7.65 % (IRS, read second-hand). Elsewhere set yours.',
  billable: 'Paid hours that are billed',
  night: 'Premium for work at night',
  nightNote: 'On the hours of zones that are worked at night.',
  hired: 'On hire',
  hiredNote: 'Machines on hire are paid for their least days and their delivery. Our own are paid by their days.',
  leastDays: 'Least days of hire',
  usedHere: 'What this job uses up',
  all: 'Show all prices',
  onlyUsed: 'Show what this job uses',
  noneUsed: 'This job uses none of them so far.',
  stay: 'The crew goes home',
  stays: { daily: 'Each night', lodging: 'After each visit' },
  travelHours: 'Hours, there and back',
  travelNote: 'Paid for the whole crew. Home each night: once a day. Lodging: once a visit.',
  distance: 'Distance, there and back',
  vehicles: 'Vehicles',
  paidBy: 'Driving is paid',
  paidBys: { km: 'By the km', mile: 'By the mile' },
  returns: 'Further visits',
  returnsNote: 'Readings, a second look: each is a re-mobilisation with its way.',
  haulTrips: 'Trips to take waste away',
  wasteTests: 'Laboratory tests of waste',
  wasteNote:
    'Plain concrete waste. Waste that holds lead, asbestos or old coatings is sampled first; licensed people take it.',
  power: 'Power comes from',
  powers: { site: 'The site', generator: 'Our generator' },
  powerNote:
    'The engine stands outside, away from doors and air inlets: carbon monoxide kills. Earthing and tie-in: a licensed electrician, by local code.',
  overheadBy: 'Overhead is',
  overheadBys: { percent: 'A share of cost', crewDay: 'By the crew day' },
  markup: (percent: string): string => `The same as a markup of ${percent} % on cost.`,
  leastNote: 'A least charge of 0 is none; the least crew days stand under wages.',
  taxOn: 'Tax is on',
  taxOns: { none: 'Nothing', materials: 'Materials', total: 'The price' },
  tax: 'Tax',
  taxNote: 'Which of them holds is local law: ask whoever does the books.',
  roundUp: 'Round the price up to',
  roundNote: 'After tax: what the customer pays ends on it.',
  otherNote:
    'Lump sums that follow from no rate: parking, waits for a lift, long cords and hoses, permits, insurance, money kept back.',
  otherName: 'What for',
  otherAmount: 'Amount',
  addOther: 'Add a cost',
  removeOther: (name: string): string => `Remove ${name}`,
  remove: 'Remove',
  unnamed: 'this cost',
  says: {
    persons: (count: string, hours: string): string => `${count} people, ${hours} h a day`,
    machines: (count: number): string => (count === 1 ? '1 on hire' : `${String(count)} on hire`),
    travel: (hours: string, distance: string): string => `${hours} h, ${distance}`,
    trips: (count: number): string => (count === 1 ? '1 trip' : `${String(count)} trips`),
    margin: (percent: string): string => `margin ${percent} %`,
    none: 'none',
    costs: (count: number): string => (count === 1 ? '1 cost' : `${String(count)} costs`),
  },
} as const;
