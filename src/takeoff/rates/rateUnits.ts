import { KG_M3_PER_LB_FT3, KG_PER_LB, L_PER_GAL, M2_PER_FT2, M_PER_FT, type Units } from '../../model/units.ts';

/** A rate is kept per square metre and metre; this is its unit on screen and what one of them is worth. */
export interface RateUnit {
  readonly unit: string;
  /** Shown value = kept value / worth. */
  readonly worth: number;
}

const FT2 = 100 * M2_PER_FT2;

/** What is spread over a floor is told by the hundred square feet where the trade works in feet. */
const whole: Readonly<Record<string, RateUnit>> = {
  m: { unit: 'ft', worth: M_PER_FT },
  'kg per m2': { unit: 'lb per 100 ft2', worth: KG_PER_LB / FT2 },
  'L per m2': { unit: 'gal per 100 ft2', worth: L_PER_GAL / FT2 },
  'min per m2': { unit: 'min per 100 ft2', worth: 1 / FT2 },
  'kg per m3': { unit: 'lb per ft3', worth: KG_M3_PER_LB_FT3 },
  'kg per L': { unit: 'lb per gal', worth: KG_PER_LB / L_PER_GAL },
};

const starts = [
  ['m2/h', 'ft2/h', M2_PER_FT2],
  ['m2 per ', 'ft2 per ', M2_PER_FT2],
  ['m/h', 'ft/h', M_PER_FT],
  ['m per ', 'ft per ', M_PER_FT],
  ['kg per ', 'lb per ', KG_PER_LB],
  ['kg/m3', 'lb/ft3', KG_M3_PER_LB_FT3],
  ['L per ', 'gal per ', L_PER_GAL],
] as const;

/** The unit that a rate kept in `unit` is shown in. Metric: as it is kept. */
export function rateUnit(unit: string, units: Units): RateUnit {
  if (units === 'metric') return { unit, worth: 1 };
  const known = whole[unit];
  if (known) return known;
  const hit = starts.find(([start]) => unit.startsWith(start));
  return hit ? { unit: hit[1] + unit.slice(hit[0].length), worth: hit[2] } : { unit, worth: 1 };
}
