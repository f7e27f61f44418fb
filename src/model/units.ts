/**
 * The only conversions in the project. Plans are kept in millimetres, areas in m2, volumes in litres, masses in kg,
 * hours in hours; feet, gallons and pounds exist only while something is typed or shown.
 * Factors: NIST SP 811 (2008), Appendix B; products of exact ones are written as products.
 */
export type Units = 'metric' | 'imperial';

export const MM_PER_M = 1000;
export const MM_PER_IN = 25.4;
export const IN_PER_FT = 12;
export const MM_PER_FT = MM_PER_IN * IN_PER_FT;
export const M_PER_FT = 0.3048;
export const M2_PER_FT2 = 0.09290304;
export const M3_PER_FT3 = 0.028316846592;
export const L_PER_GAL = 3.785411784;
export const ML_PER_FL_OZ = 29.5735295625;
export const KG_PER_LB = 0.45359237;
/** International mile of 5,280 ft. */
export const KM_PER_MILE = (MM_PER_FT * 5280) / 1e6;
export const N_PER_LBF = 4.4482216152605;
/** 550 ft lbf/s. */
export const KW_PER_HP = (550 * M_PER_FT * N_PER_LBF) / 1000;
export const KPA_PER_PSI = (N_PER_LBF / (MM_PER_IN * MM_PER_IN)) * 1000;
export const M3H_PER_CFM = M3_PER_FT3 * 60;
export const KG_M3_PER_LB_FT3 = KG_PER_LB / M3_PER_FT3;
/** Moisture vapour emission: lb per 1000 ft2 in 24 h to g per m2 in 24 h. */
export const G_M2_PER_LB_1000FT2 = KG_PER_LB / M2_PER_FT2;
/** Millimetres in one thousandth of an inch, for coating thickness. */
export const MM_PER_MIL = 0.0254;

/** 0.1 mm, 1/64 in and 1 in all lie on it: a length comes back exactly as typed. */
export const GRID_PER_MM = 320;

/** The nearest point of the 1/320 mm grid. */
export function onGrid(mm: number): number {
  const snapped = Math.round(mm * GRID_PER_MM) / GRID_PER_MM;
  return snapped === 0 ? 0 : snapped;
}

/** Units in which a length field may stand. */
export type LengthUnit = 'ft' | 'in' | 'm' | 'cm' | 'mm';

const MM_PER: Readonly<Record<LengthUnit, number>> = {
  ft: MM_PER_FT,
  in: MM_PER_IN,
  m: MM_PER_M,
  cm: 10,
  mm: 1,
};

export function lengthToMm(value: number, unit: LengthUnit): number {
  return value * MM_PER[unit];
}

export function mmToLength(mm: number, unit: LengthUnit): number {
  return mm / MM_PER[unit];
}

/** The unit of a bare number in a field for room-sized lengths. */
export function fieldUnit(units: Units): 'ft' | 'm' {
  return units === 'imperial' ? 'ft' : 'm';
}

/** The unit of a bare number in a field for small sizes: thickness, clearance, crack width. */
export function smallFieldUnit(units: Units): 'in' | 'mm' {
  return units === 'imperial' ? 'in' : 'mm';
}
