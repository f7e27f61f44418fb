import { showQuantity } from './showQuantity.ts';
import { showNumber, type Figure } from '../../model/showNumber.ts';
import type { Units } from '../../model/units.ts';
import type { Range } from '../../takeoff/line.ts';
import { countedUnit, orderText } from '../../words/orderWords.ts';
import { takeoffText } from '../../words/whyWords.ts';

/** What is measured; everything else on the list is counted in pieces. */
const MEASURED: readonly string[] = ['L', 'kg', 'm', 'min'];

/** A figure of the list in the units of the screen: pieces to 0.01, and a trace of one in words. */
export function orderFigure(value: number, unit: string, units: Units): Figure {
  // The list has no money, so that no currency is asked for.
  if (MEASURED.includes(unit)) return showQuantity(value, unit, units, 'USD');
  if (value > 0 && value < 0.01) return { figure: orderText.under, unit };
  const figure = showNumber(value, Number.isInteger(value) ? 0 : 2);
  return { figure, unit: countedUnit(Number(value.toFixed(2)), unit) };
}

/** Low to high, or null where they read the same. */
export function orderRange({ low, high }: Range, unit: string, units: Units): string | null {
  const [from, to] = [orderFigure(low, unit, units), orderFigure(high, unit, units)];
  if (from.figure === to.figure && from.unit === to.unit) return null;
  const measured = MEASURED.includes(unit) && from.unit !== to.unit;
  return takeoffText.from(
    measured ? `${from.figure} ${from.unit}` : from.figure,
    measured ? `${to.figure} ${to.unit}` : to.figure,
  );
}
