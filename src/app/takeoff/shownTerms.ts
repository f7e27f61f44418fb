import { sheetUnit } from '../../exchange/sheetUnit.ts';
import type { Units } from '../../model/units.ts';
import { evaluate } from '../../takeoff/formula.ts';
import type { Line, Range, Term } from '../../takeoff/line.ts';
import { rateUnit } from '../../takeoff/rates/rateUnits.ts';

/** One part in a thousand is rounding; more is a sum that does not hold. */
const TOLERANCE = 1e-3;

/** The terms of a line as they stand on screen, for sums that people check by eye. */
export function shownTerms(terms: readonly Term[], units: Units): readonly Term[] {
  return terms.map((term) => ({ ...term, value: over(term.value, worthOf(term.unit, units)) }));
}

/**
 * The units in which the sum of a line adds up by eye: those of the screen, or metric where the formula has a
 * conversion in it that holds for metres alone (mm to m, litres to m3).
 */
export function unitsOfSum(
  { quantity, unit, working }: Pick<Line, 'quantity' | 'unit' | 'working'>,
  units: Units,
): Units {
  if (units === 'metric') return units;
  const wanted = quantity.likely / worthOf(unit, units);
  const found = evaluate(working.formula, shownTerms(working.terms, units)).likely;
  return Math.abs(found - wanted) <= TOLERANCE * Math.max(Math.abs(wanted), 1e-9) ? units : 'metric';
}

function worthOf(unit: string, units: Units): number {
  const sheet = sheetUnit(unit, units);
  return sheet.unit === unit ? rateUnit(unit, units).worth : sheet.worth;
}

function over({ low, likely, high }: Range, worth: number): Range {
  return { low: low / worth, likely: likely / worth, high: high / worth };
}
