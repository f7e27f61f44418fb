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
  'money.masking': 'Masking material',
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
  'extra.crackMetre': 'Extra: crack over the counted, filled',
  'extra.coatingLayer': 'Extra: one more coating layer off',
  'extra.waitingHour': 'Extra: crew waiting',
  'extra.visit': 'Extra: one more visit',
  'extra.probe': 'Extra: RH probe',
  'extra.bag': 'Extra: bag of waste',
};

/** For how much of it an extra is. */
export const extraUnits: Readonly<Record<string, string>> = {
  'extra.crackMetre': 'm',
  'extra.coatingLayer': 'm2',
  'extra.waitingHour': 'h',
  'extra.visit': 'visit',
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
