import { rateUnit } from '../../takeoff/rates/rateUnits.ts';
import { minorDigits } from '../../model/money.ts';
import {
  showAreaRate,
  showArea,
  showHours,
  showMass,
  showNumber,
  showRun,
  showRunRate,
  showVolume,
  showVolumeInColumn,
  type Figure,
} from '../../model/showNumber.ts';
import { orderText } from '../../words/orderWords.ts';
import { showFineSize } from '../../model/showLength.ts';
import { MM_PER_IN, type Units } from '../../model/units.ts';

const superscripts: Readonly<Record<string, string>> = {
  m2: 'm²',
  ft2: 'ft²',
  'm2/h': 'm²/h',
  'ft2/h': 'ft²/h',
  m3: 'm³',
};

/** Square and cubic units as they are set on screen. */
export function unitOnScreen(unit: string): string {
  return superscripts[unit] ?? unit.replace('m2', 'm²').replace('ft2', 'ft²').replace('m3', 'm³').replace('ft3', 'ft³');
}

/** An amount with its sign, whole units on screen. */
export function moneyOnScreen(minor: number, currency: string): string {
  const main = minor / 10 ** minorDigits(currency);
  try {
    const style = { style: 'currency', currency, currencyDisplay: 'narrowSymbol', maximumFractionDigits: 0 } as const;
    return new Intl.NumberFormat('en-US', style).format(main);
  } catch {
    // People may write a currency that the platform does not know.
    return `${showNumber(main, 0)} ${currency}`;
  }
}

const byUnit: Readonly<Record<string, (value: number, units: Units) => Figure>> = {
  m2: showArea,
  m: showRun,
  h: showHours,
  'm2/h': showAreaRate,
  'm/h': showRunRate,
  L: showVolume,
  kg: showMass,
  mm: fineSize,
  '%': (value) => ({ figure: showNumber(value, Number.isInteger(value) ? 0 : 1), unit: '%' }),
  number: (value) => ({ figure: trimmed(value), unit: '' }),
  factor: (value) => ({ figure: showNumber(value, 2), unit: '' }),
};

/** A removal of a third of a millimetre is a hundredth of an inch and something: the something counts. */
function fineSize(mm: number, units: Units): Figure {
  const inches = mm / MM_PER_IN;
  if (units === 'imperial' && Math.abs(inches) < 0.1) return { figure: showNumber(inches, 3), unit: 'in' };
  // A texture of 0.17 mm is not 0.2 mm; a width of 0.3 mm stays as short as it is.
  const tenths = Math.abs(mm) * 10;
  if (units === 'metric' && tenths < 100 && Math.abs(tenths - Math.round(tenths)) > 1e-9)
    return { figure: showNumber(mm, 2), unit: 'mm' };
  return showFineSize(mm, units);
}

/** Whole numbers as they are, others as short as they may be. */
function trimmed(value: number): string {
  if (Number.isInteger(value)) return showNumber(value, 0);
  const text = showNumber(value, Math.abs(value) < 0.01 ? 4 : 2);
  return text.replace(/0+$/, '').replace(/\.$/, '');
}

/** What one bag, set or wheel is good for; converted it has no more places than it is known to. */
function asRated(value: number, unit: string, units: Units): Figure {
  const shown = rateUnit(unit, units);
  if (shown.unit === unit) return { figure: trimmed(value), unit };
  const converted = value / shown.worth;
  return { figure: showNumber(converted, Math.abs(converted) < 10 ? 1 : 0), unit: shown.unit };
}

/** A quantity of a takeoff line or term, in the units of the screen. Money is in minor units of `currency`. */
export function showQuantity(value: number, unit: string, units: Units, currency: string): Figure {
  if (unit === 'money' || unit === 'minor') return { figure: moneyOnScreen(value, currency), unit: '' };
  const show = byUnit[unit];
  const figure = show ? show(value, units) : asRated(value, unit, units);
  return { figure: figure.figure, unit: unitOnScreen(figure.unit) };
}

/** A figure of the table. Its row names one unit for all its cells, so a small amount does not take a smaller one. */
export function showInRow(value: number, unit: string, units: Units, currency: string): string {
  if (unit === 'L') return showVolumeInColumn(value, units).figure;
  if (isCounted(unit)) return inPieces(value);
  return showQuantity(value, unit, units, currency).figure;
}

/** Sets, wheels, bags, days: what is neither measured nor money. */
function isCounted(unit: string): boolean {
  return byUnit[unit] === undefined && unit !== 'money' && unit !== 'minor';
}

/** Pieces to 0.01, so that a column lines up; a trace of one in words. */
function inPieces(value: number): string {
  if (Number.isInteger(value)) return showNumber(value, 0);
  return value > 0 && value < 0.01 ? orderText.under : showNumber(value, 2);
}

/** The unit that stands beside the name of a row; feet and square feet where the screen shows them. */
export function unitShown(unit: string, units: Units): string {
  if (unit === 'money' || unit === 'minor') return '';
  // A figure well over the bounds at which small amounts take a smaller unit.
  return showQuantity(1000, unit, units, 'USD').unit;
}
