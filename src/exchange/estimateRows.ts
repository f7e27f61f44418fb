import { minorDigits } from '../model/money.ts';
import type { Estimate } from '../model/records/estimate.ts';
import { showNumber } from '../model/showNumber.ts';
import { M2_PER_FT2, M_PER_FT } from '../model/units.ts';
import type { FrozenLine } from '../takeoff/frozenEstimate.ts';
import { frozenLines } from '../takeoff/issuedEstimate.ts';
import type { Range } from '../takeoff/line.ts';
import { methodOf } from '../takeoff/rates/methods.ts';
import { extraUnits, moneyTitleOf } from '../words/moneyWords.ts';
import { noticeWords } from '../words/takeoffWords.ts';

/** A row of an estimate in words, its amounts in whole minor units; a markup in %. */
export interface EstimateRow {
  readonly key: string;
  readonly title: string;
  readonly unit: 'minor' | '%';
  readonly range: Range;
  /** A sum of the rows above it. */
  readonly isSum: boolean;
}

const SUMS: readonly string[] = ['money.direct', 'money.cost', 'money.price', 'money.priceWithTax'];
/** Costs stand as they were made; what follows from them in the order in which it adds up. */
const AFTER: readonly string[] = [
  'money.direct',
  'money.contingency',
  'money.overhead',
  'money.cost',
  'money.margin',
  'money.markup',
  'money.price',
  'money.tax',
  'money.priceWithTax',
];

/** How the price is made, cost by cost: they add up to the cent. */
export function buildUpRows(estimate: Pick<Estimate, 'lines'>): EstimateRow[] {
  const money = frozenLines(estimate).filter(({ code }) => code.startsWith('money.') && code !== 'money.priceShare');
  const costs = money.filter(({ code }) => !AFTER.includes(code));
  const after = AFTER.flatMap((code) => money.filter((line) => line.code === code));
  return [...costs, ...after].map(rowOf);
}

/** Price, tax and what the customer pays. */
export function totalRows(estimate: Pick<Estimate, 'lines'>): EstimateRow[] {
  const wanted = ['money.price', 'money.tax', 'money.priceWithTax'];
  return buildUpRows(estimate).filter(({ key }) => wanted.includes(key.split('|')[0] ?? ''));
}

export interface ExtraRow extends EstimateRow {
  /** For how much of it. */
  readonly per: string;
}

/** Unit rates that are printed beside the price and are not in it, in the units of the job and to the cent. */
export function extraRows({ lines, units = 'metric' }: Pick<Estimate, 'lines' | 'units'>): ExtraRow[] {
  return frozenLines({ lines })
    .filter(({ code }) => code.startsWith('extra.'))
    .map((line) => {
      const row = rowOf(line);
      const per = extraUnits[line.code] ?? '';
      const shown = units === 'imperial' ? IMPERIAL[per] : undefined;
      const of = (minor: number): number => Math.round(minor * (shown?.worth ?? 1));
      const { low, likely, high } = row.range;
      return {
        ...row,
        // They stand under a heading of their own, and their unit in a column.
        title: sentence(row.title.replace(/^Extra, [^:]+: /, '')),
        range: { low: of(low), likely: of(likely), high: of(high) },
        per: shown?.unit ?? per,
      };
    });
}

const IMPERIAL: Readonly<Record<string, { readonly unit: string; readonly worth: number }>> = {
  m: { unit: 'ft', worth: M_PER_FT },
  m2: { unit: 'ft2', worth: M2_PER_FT2 },
};

/** What has to be said beside the price, as sentences. */
export function noticeSentences({ notices = [] }: Pick<Estimate, 'notices'>): string[] {
  return notices.map((code) => {
    const words = sentence(noticeWords[code] ?? code);
    return words.endsWith('.') ? words : `${words}.`;
  });
}

function sentence(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

function rowOf(line: FrozenLine): EstimateRow {
  const { key, code, quantity, unit } = line;
  return { key, title: titleOf(line), unit: unit === '%' ? '%' : 'minor', range: quantity, isSum: SUMS.includes(code) };
}

function titleOf({ key, code, working }: FrozenLine): string {
  return moneyTitle(key, code, working.terms[0]?.name ?? '');
}

/** Title of a line of money with the tool or the name that tells it from others of its code. */
export function moneyTitle(key: string, code: string, name: string): string {
  const title = moneyTitleOf(code) ?? code;
  const of = key.split('|')[2];
  if (code === 'money.equipment' && of) return `${title}, ${methodOf(of)?.term.toLowerCase() ?? of}`;
  return code === 'money.other' && name !== '' ? name : title;
}

/** An amount to the cent, with its currency. */
export function toTheCent(minor: number, currency: string): string {
  return `${centsOf(minor, currency)} ${currency}`.trim();
}

/** An amount to the cent alone, for columns. */
export function centsOf(minor: number, currency: string): string {
  const digits = minorDigits(currency);
  return showNumber(minor / 10 ** digits, digits);
}

/** An amount or a markup as its row shows it. */
export function amountOf(row: Pick<EstimateRow, 'unit'>, value: number, currency: string): string {
  return row.unit === '%' ? `${showNumber(value, 1)} %` : centsOf(value, currency);
}
