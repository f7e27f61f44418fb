import { figureText, showArea, showNumber } from './showNumber.ts';
import { M2_PER_FT2, MM_PER_IN, type Units } from './units.ts';

const NUMBER = String.raw`\d+(?:\.\d+)?`;
const IN_100_M2 = new RegExp(`(${NUMBER}) in 100 m2`);
const AREA = new RegExp(`(${NUMBER}) m2\\b`);
const SIZE = new RegExp(`(?:(${NUMBER})( to |-))?(${NUMBER}) mm\\b`, 'g');

/** As exact as the measure is spoken: a crack to a hundredth, a cup to a tenth, a machine to the inch. */
function inches(mm: number): string {
  const wide = mm / MM_PER_IN;
  if (wide < 1) return showNumber(wide, wide < 0.1 ? 3 : 2);
  return showNumber(wide, wide < 10 ? 1 : 0);
}

/** The names of lines and terms carry measures, such as the width of a class of cracks: in feet and inches where the screen is. */
export function textInUnits(text: string, units: Units): string {
  if (units === 'metric') return text;
  return text
    .replace(IN_100_M2, (_, pieces: string) => `${showNumber(Number(pieces) * M2_PER_FT2 * 10, 1)} in 1,000 ft2`)
    .replace(AREA, (_, areaM2: string) => figureText(showArea(Number(areaM2), units)))
    .replace(SIZE, (_, from: string | undefined, between: string | undefined, to: string) =>
      from === undefined || between === undefined
        ? `${inches(Number(to))} in`
        : `${inches(Number(from))}${between}${inches(Number(to))} in`,
    );
}
