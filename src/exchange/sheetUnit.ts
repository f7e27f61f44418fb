import { KG_PER_LB, L_PER_GAL, M2_PER_FT2, M_PER_FT, MM_PER_IN, type Units } from '../model/units.ts';

/** The unit that a quantity stands in on a sheet, and what one of it is worth in the unit of its line. */
export interface SheetUnit {
  readonly unit: string;
  readonly worth: number;
}

/** One unit for all of a column, the one that the screen shows beside the row. */
const IN_FEET: Readonly<Record<string, SheetUnit>> = {
  m2: { unit: 'ft2', worth: M2_PER_FT2 },
  m: { unit: 'ft', worth: M_PER_FT },
  L: { unit: 'gal', worth: L_PER_GAL },
  kg: { unit: 'lb', worth: KG_PER_LB },
  mm: { unit: 'in', worth: MM_PER_IN },
};

/** Shown value = value / worth; pieces, hours, days and percent are the same everywhere. */
export function sheetUnit(unit: string, units: Units): SheetUnit {
  return (units === 'imperial' ? IN_FEET[unit] : undefined) ?? { unit, worth: 1 };
}
