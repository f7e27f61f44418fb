import { KG_PER_LB, L_PER_GAL, M2_PER_FT2, M_PER_FT, ML_PER_FL_OZ, type Units } from './units.ts';

/** A number ready to be set: screens and paper give the unit a smaller size. The unit may be empty (feet and inches). */
export interface Figure {
  readonly figure: string;
  readonly unit: string;
}

/** Figure and unit as one text, for sentences, lists and screen readers. */
export function figureText({ figure, unit }: Figure): string {
  return unit === '' || unit === '%' ? figure + unit : `${figure} ${unit}`;
}

const formats = new Map<string, Intl.NumberFormat>();

/** Grouped by threes, always the same number of decimals, never "-0". */
export function showNumber(value: number, decimals: number, grouped = true): string {
  const key = `${decimals} ${grouped}`;
  let format = formats.get(key);
  if (!format) {
    format = new Intl.NumberFormat('en-US', {
      minimumFractionDigits: decimals,
      maximumFractionDigits: decimals,
      useGrouping: grouped,
      signDisplay: 'negative',
    });
    formats.set(key, format);
  }
  return format.format(value);
}

/** m2 to 0.01; ft2 to 1, to 0.1 under 100. */
export function showArea(areaM2: number, units: Units): Figure {
  if (units === 'metric') return { figure: showNumber(areaM2, 2), unit: 'm2' };
  const areaFt2 = areaM2 / M2_PER_FT2;
  return { figure: showNumber(areaFt2, Math.abs(areaFt2) < 99.95 ? 1 : 0), unit: 'ft2' };
}

/** A run of edge, crack or joint: m to 0.01, or decimal feet to 0.1 (a tape length is `showLength`). */
export function showRun(lengthM: number, units: Units): Figure {
  if (units === 'metric') return { figure: showNumber(lengthM, 2), unit: 'm' };
  return { figure: showNumber(lengthM / M_PER_FT, 1), unit: 'ft' };
}

export function showHours(hours: number): Figure {
  return { figure: showNumber(hours, 1), unit: 'h' };
}

/** Volume to 0.1 L or 0.1 gal; under one litre in mL or fl oz. */
export function showVolume(litres: number, units: Units): Figure {
  const small = Math.abs(litres) < 1;
  if (units === 'metric') {
    return small ? { figure: showNumber(litres * 1000, 0), unit: 'mL' } : { figure: showNumber(litres, 1), unit: 'L' };
  }
  if (small) return { figure: showNumber((litres * 1000) / ML_PER_FL_OZ, 1), unit: 'fl oz' };
  return { figure: showNumber(litres / L_PER_GAL, 1), unit: 'gal' };
}

/** Volume in a column of others, all in L or gal: to 0.1, to 0.01 under ten. */
export function showVolumeInColumn(litres: number, units: Units): Figure {
  const volume = units === 'metric' ? litres : litres / L_PER_GAL;
  return { figure: showNumber(volume, Math.abs(volume) < 9.995 ? 2 : 1), unit: units === 'metric' ? 'L' : 'gal' };
}

/** Mass to 1 kg or 1 lb, to 0.1 under ten. */
export function showMass(massKg: number, units: Units): Figure {
  const mass = units === 'metric' ? massKg : massKg / KG_PER_LB;
  return { figure: showNumber(mass, Math.abs(mass) < 9.95 ? 1 : 0), unit: units === 'metric' ? 'kg' : 'lb' };
}

/** How much floor in an hour. */
export function showAreaRate(m2PerHour: number, units: Units): Figure {
  if (units === 'metric') return { figure: showNumber(m2PerHour, 1), unit: 'm2/h' };
  return { figure: showNumber(m2PerHour / M2_PER_FT2, 0), unit: 'ft2/h' };
}

/** How much edge, crack or joint in an hour. */
export function showRunRate(mPerHour: number, units: Units): Figure {
  if (units === 'metric') return { figure: showNumber(mPerHour, 1), unit: 'm/h' };
  return { figure: showNumber(mPerHour / M_PER_FT, 0), unit: 'ft/h' };
}
