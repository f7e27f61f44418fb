/** Money is whole minor units (cents) everywhere; it is rounded once, where a price is made. */
import { showNumber } from './showNumber.ts';
import { parseNumber, type NumberFault } from './parseNumber.ts';

/** Whole minor units of the job's currency. */
export type Minor = number & { readonly minor: unique symbol };

/** Rounds half away from zero. */
function toMinor(minor: number): Minor {
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
