import { showNumber, type Figure } from './showNumber.ts';
import { IN_PER_FT, MM_PER_IN, mmToLength, onGrid, type LengthUnit, type Units } from './units.ts';

/** Inches as whole and reduced fraction: `6 1/2`, `3/8`, `0`. The font has no eighths: written with a slash. */
function inchText(parts: number, denominator: number): string {
  const whole = Math.floor(parts / denominator);
  let top = parts - whole * denominator;
  let bottom = denominator;
  if (top === 0) return String(whole);
  while (top % 2 === 0) {
    top /= 2;
    bottom /= 2;
  }
  return whole === 0 ? `${top}/${bottom}` : `${whole} ${top}/${bottom}`;
}

/** `12' 6 1/2"`, to the nearest 1/`denominator` inch. Under a foot only inches: `6 1/2"`. */
export function feetAndInches(mm: number, denominator: 8 | 16 | 32 | 64 = 8): string {
  const parts = Math.round((Math.abs(mm) / MM_PER_IN) * denominator);
  const sign = mm < 0 && parts > 0 ? '-' : '';
  const partsPerFoot = IN_PER_FT * denominator;
  const feet = Math.floor(parts / partsPerFoot);
  const inches = inchText(parts - feet * partsPerFoot, denominator);
  const shown = showNumber(feet, 0);
  if (feet === 0) return `${sign}${inches}"`;
  return inches === '0' ? `${sign}${shown}'` : `${sign}${shown}' ${inches}"`;
}

/** A length on screen: m to 0.01, or feet and inches to 1/8 (1/16 where a tape is read closer). */
export function showLength(mm: number, units: Units, denominator: 8 | 16 = 8): Figure {
  if (units === 'imperial') return { figure: feetAndInches(mm, denominator), unit: '' };
  return { figure: showNumber(mm / 1000, 2), unit: 'm' };
}

/** A small size (thickness, clearance, machine width): mm whole, or inches to 1/16. */
export function showSize(mm: number, units: Units): Figure {
  if (units === 'metric') return { figure: showNumber(mm, 0), unit: 'mm' };
  const parts = Math.round((mm / MM_PER_IN) * 16);
  return { figure: inchText(parts, 16), unit: 'in' };
}

/** A crack width or a removal: mm to 0.1, or inches to 0.01 (as crack gauges are marked; common practice, no source). */
export function showFineSize(mm: number, units: Units): Figure {
  if (units === 'metric') return { figure: showNumber(mm, 1), unit: 'mm' };
  return { figure: showNumber(mm / MM_PER_IN, 2), unit: 'in' };
}

const DECIMALS: Readonly<Record<LengthUnit, number>> = { m: 4, cm: 2, mm: 1, ft: 4, in: 4 };

/**
 * The text of a length in its field: what was typed, as far as the grid of the plan holds it. `parseLength` reads it
 * back. Feet and inches to the coarsest of 1/8 to 1/64 in that is exact, else to the nearest 1/16; inches under one,
 * as on a crack gauge, then in decimals.
 */
export function lengthForField(mm: number, field: LengthUnit): string {
  if (field === 'ft' || field === 'in') {
    const exact = ([8, 16, 32, 64] as const).find((bottom) => onGrid(exactMm(mm, bottom)) === onGrid(mm));
    if (field === 'ft') return feetAndInches(mm, exact ?? 16).replaceAll(',', '');
    if (exact === undefined && Math.abs(mm) < MM_PER_IN) return withoutZeros(showNumber(mm / MM_PER_IN, 3, false));
    return inchText(Math.round((mm / MM_PER_IN) * (exact ?? 16)), exact ?? 16);
  }
  const text = showNumber(mmToLength(mm, field), DECIMALS[field], false);
  return withoutZeros(text);
}

function withoutZeros(text: string): string {
  return text.includes('.') ? text.replace(/\.?0+$/, '') : text;
}

function exactMm(mm: number, denominator: number): number {
  return (Math.round((mm / MM_PER_IN) * denominator) / denominator) * MM_PER_IN;
}
