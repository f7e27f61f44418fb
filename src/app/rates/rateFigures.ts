import { showNumber } from '../../model/showNumber.ts';
import type { Units } from '../../model/units.ts';
import type { RateFigures } from '../../takeoff/rates/rowEdition.ts';
import { rateUnit } from '../../takeoff/rates/rateUnits.ts';

/** Low, likely and high of a rate and its unit, as they stand on the screen. */
export interface ShownFigures {
  readonly low: string;
  readonly likely: string;
  readonly high: string;
  readonly unit: string;
}

const DECIMALS = 3;
/** A converted rate is shown no finer than it was known: 25 m2/h are 269 ft2/h. */
const FIGURES = 3;

/** As short as they may be: `0.100` is 0.1, `50.000` is 50. */
export function rateFigures(rate: RateFigures, units: Units): ShownFigures {
  const { unit, worth } = rateUnit(rate.unit, units);
  const text = (kept: number): string => {
    const value = worth === 1 ? kept : Number((kept / worth).toPrecision(FIGURES));
    return showNumber(value, DECIMALS).replace(/\.?0+$/, '');
  };
  return { low: text(rate.low), likely: text(rate.likely), high: text(rate.high), unit };
}

/** Phrases of tables as sentences, one after the other, with the signs of units that people write. */
export function inSentences(...phrases: readonly (string | undefined)[]): string {
  return phrases
    .filter((phrase): phrase is string => phrase !== undefined && phrase !== '')
    .map((phrase) => phrase.charAt(0).toUpperCase() + phrase.slice(1))
    .join('. ')
    .replaceAll(/\b(m|ft|mm)2\b/g, '$1²')
    .replaceAll(/\b(m|ft)3\b/g, '$1³')
    .replaceAll(/\bug\b/g, 'µg');
}
