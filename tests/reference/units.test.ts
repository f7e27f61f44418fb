import { describe, expect, it } from 'vitest';
import {
  G_M2_PER_LB_1000FT2,
  KG_M3_PER_LB_FT3,
  KG_PER_LB,
  KPA_PER_PSI,
  KW_PER_HP,
  L_PER_GAL,
  M2_PER_FT2,
  M3H_PER_CFM,
  M3_PER_FT3,
  MM_PER_FT,
  MM_PER_IN,
  MM_PER_MIL,
  ML_PER_FL_OZ,
  N_PER_LBF,
} from '../../src/model/units.ts';

function expectNear(actual: number, expected: number, relative: number): void {
  expect(Math.abs(actual / expected - 1)).toBeLessThan(relative);
}

describe('NIST SP 811 (2008), Appendix B: factors', () => {
  it.each([
    ['foot in mm', MM_PER_FT, 304.8],
    ['inch in mm', MM_PER_IN, 25.4],
    ['thousandth of an inch in mm', MM_PER_MIL, 0.0254],
    ['square foot in m2', M2_PER_FT2, 0.09290304],
    ['cubic foot in m3', M3_PER_FT3, 0.028316846592],
    ['US gallon in L', L_PER_GAL, 3.785411784],
    ['US fluid ounce in mL', ML_PER_FL_OZ, 29.5735295625],
    ['pound in kg', KG_PER_LB, 0.45359237],
    ['pound-force in N', N_PER_LBF, 4.4482216152605],
    ['psi in kPa', KPA_PER_PSI, 6.894757293168],
    ['cubic foot a minute in m3/h', M3H_PER_CFM, 1.69901079552],
    ['mechanical horsepower in kW', KW_PER_HP, 0.745699871582],
    ['lb/ft3 in kg/m3', KG_M3_PER_LB_FT3, 16.01846337396],
    ['lb per 1000 ft2 in 24 h in g/m2', G_M2_PER_LB_1000FT2, 4.882427636],
  ])('%s', (_name, ours, printed) => {
    expectNear(ours, printed, 1e-9);
  });
});

describe('worked conversions (E05 of the trade examples; factors NIST SP 811; tolerance 1e-6)', () => {
  it.each([
    ['48 ft2/h in m2/h', 48 * M2_PER_FT2, 4.45934592],
    ['128 ft2/h in m2/h', 128 * M2_PER_FT2, 11.89158912],
    ['40.6 ft2/h in m2/h', 40.6 * M2_PER_FT2, 3.771863424],
    ['125 cfm in m3/h', 125 * M3H_PER_CFM, 212.37634944],
    ['200 psi in MPa', (200 * KPA_PER_PSI) / 1000, 1.3789514586336],
    ['1.5 MPa in psi', 1500 / KPA_PER_PSI, 217.55660659532523],
    ['3 lb moisture emission in g/m2', 3 * G_M2_PER_LB_1000FT2, 14.647282908],
    ['150 lb/ft3 in kg/m3', 150 * KG_M3_PER_LB_FT3, 2402.769506094],
  ])('%s', (_name, ours, expected) => {
    expectNear(ours, expected, 1e-6);
  });
});
