/** Measures inside the names of takeoff lines and terms. 1 ft = 0.3048 m, 1 in = 25.4 mm (NIST SP 811); sums by hand. */
import { expect, test } from 'vitest';
import { textInUnits } from '../../../src/model/textInUnits.ts';

test.each([
  ['Cracks, static, 0.3 to 6 mm', 'Cracks, static, 0.012 to 0.24 in'],
  ['Cracks, static, over 6 mm', 'Cracks, static, over 0.24 in'],
  ['Room size, for 42.8 m2', 'Room size, for 461 ft2'],
  ['Obstructions, 2.7 in 100 m2', 'Obstructions, 2.5 in 1,000 ft2'],
  ['Planetary walk-behind grinder 650-850 mm', 'Planetary walk-behind grinder 26-33 in'],
  ['Planetary walk-behind grinder to 550 mm', 'Planetary walk-behind grinder to 22 in'],
  ['Cup wheel 125-180 mm', 'Cup wheel 4.9-7.1 in'],
  ['Strip to 200 mm, cup of 125 mm', 'Strip to 7.9 in, cup of 4.9 in'],
  ['Net floor', 'Net floor'],
])('%s', (metric, imperial) => {
  expect(textInUnits(metric, 'imperial')).toBe(imperial);
  expect(textInUnits(metric, 'metric')).toBe(metric);
});
