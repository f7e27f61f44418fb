import { KG_M3_PER_LB_FT3, KG_PER_LB, M2_PER_FT2, M_PER_FT, type Units } from '../../model/units.ts';

/** A rate is kept per square metre and metre; this is its unit on screen and what one of them is worth. */
export interface RateUnit {
  readonly unit: string;
  /** Shown value = kept value / worth. */
  readonly worth: number;
}

const starts = [
  ['m2/h', 'ft2/h', M2_PER_FT2],
  ['m2 per ', 'ft2 per ', M2_PER_FT2],
  ['m/h', 'ft/h', M_PER_FT],
  ['m per ', 'ft per ', M_PER_FT],
  ['kg per ', 'lb per ', KG_PER_LB],
  ['kg/m3', 'lb/ft3', KG_M3_PER_LB_FT3],
] as const;

export function rateUnit(unit: string, units: Units): RateUnit {
  if (units === 'metric') return { unit, worth: 1 };
  if (unit === 'm') return { unit: 'ft', worth: M_PER_FT };
  const hit = starts.find(([start]) => unit.startsWith(start));
  return hit ? { unit: hit[1] + unit.slice(hit[0].length), worth: hit[2] } : { unit, worth: 1 };
}
