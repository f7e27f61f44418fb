/** Money is whole minor units (cents) everywhere; it is rounded once, where a price is made. */
import { showNumber, type Figure } from './showNumber.ts';
import { parseNumber, type NumberFault } from './parseNumber.ts';

/** Whole minor units of the job's currency. */
export type Minor = number & { readonly minor: unique symbol };

/** Rounds half away from zero, once: where a sum becomes a price. */
export function toMinor(minor: number): Minor {
  const rounded = Math.sign(minor) * Math.round(Math.abs(minor));
  return (rounded === 0 ? 0 : rounded) as Minor;
}

const digitsOf = new Map<string, number>();

/** Decimals of a currency (ISO 4217, as the platform knows it): 2 for USD, 0 for JPY; 2 when it is not known. */
export function minorDigits(currency: string): number {
  const known = digitsOf.get(currency);
  if (known !== undefined) return known;
  let digits = 2;
  try {
    digits =
      new Intl.NumberFormat('en-US', { style: 'currency', currency }).resolvedOptions().maximumFractionDigits ?? 2;
  } catch {
    // Not a currency code: people may write what they like; cents are the usual case.
  }
  digitsOf.set(currency, digits);
  return digits;
}

/** Whole units on screen, with cents on paper. */
export function showMoney(minor: number, currency: string, on: 'screen' | 'paper'): Figure {
  const digits = minorDigits(currency);
  return { figure: showNumber(minor / 10 ** digits, on === 'paper' ? digits : 0), unit: currency };
}

/** The amount in its field, cents only where there are some: what `parseMoney` reads back. */
export function moneyForField(minor: number, currency: string): string {
  const digits = minorDigits(currency);
  const scale = 10 ** digits;
  return showNumber(minor / scale, minor % scale === 0 ? 0 : digits, false);
}

export type ParsedMoney =
  | { readonly ok: true; readonly minor: Minor }
  | { readonly ok: false; readonly fault: NumberFault | 'tooFine' | 'tooMuch'; readonly what: string };

/** Reads an amount in main units (`1,250.50`); parts of a cent are refused. */
export function parseMoney(typed: string, currency: string): ParsedMoney {
  const parsed = parseNumber(typed.replaceAll(/[$€£]/g, ''));
  if (!parsed.ok) return parsed;
  const exact = parsed.value * 10 ** minorDigits(currency);
  if (!Number.isSafeInteger(Math.round(exact))) return { ok: false, fault: 'tooMuch', what: typed };
  if (Math.abs(exact - Math.round(exact)) > 1e-6 + exact * 1e-15) return { ok: false, fault: 'tooFine', what: typed };
  return { ok: true, minor: toMinor(exact) };
}

/**
 * Price at which `marginPct` of the price is left over the cost: cost / (1 - margin). Not a markup on the cost:
 * 30 % of 4,000 is 5,714.29, not 5,200 (identity; trade example E29). Null at 100 % and more, where there is none.
 */
export function priceFromCost(costMinor: number, marginPct: number): Minor | null {
  if (!(marginPct >= 0 && marginPct < 100)) return null;
  return toMinor((costMinor * 100) / (100 - marginPct));
}

/**
 * Shares a whole amount out by weights so that the parts add up to it exactly: each part is its exact share rounded
 * towards zero, and the cents left over go one each to the largest shares first (equal ones: the earlier first).
 * With no weight at all the parts are as equal as can be. Empty weights give no parts.
 */
export function shareOut(totalMinor: Minor, weights: readonly number[]): Minor[] {
  const clean = weights.map((weight) => (weight > 0 && Number.isFinite(weight) ? weight : 0));
  const sum = clean.reduce((total, weight) => total + weight, 0);
  const parts = clean.map((weight) => {
    const exact = sum > 0 ? totalMinor * (weight / sum) : totalMinor / clean.length;
    return toMinor(Math.trunc(exact));
  });
  let left = totalMinor - parts.reduce((total, part) => total + part, 0);
  const bySize = clean
    .map((weight, index) => ({ weight, index }))
    .filter(({ weight }) => sum === 0 || weight > 0)
    .toSorted((a, b) => b.weight - a.weight || a.index - b.index);
  const step = Math.sign(left);
  for (let turn = 0; left !== 0 && bySize.length > 0; turn++) {
    const { index } = bySize[turn % bySize.length] ?? { index: 0 };
    parts[index] = ((parts[index] ?? 0) + step) as Minor;
    left -= step;
  }
  return parts;
}
