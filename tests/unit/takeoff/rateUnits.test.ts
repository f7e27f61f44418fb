import { expect, test } from 'vitest';
import { rateUnit } from '../../../src/takeoff/rates/rateUnits.ts';
import { book } from '../../../src/takeoff/rates/book.ts';

// NIST SP 811 (2008), Appendix B: 1 ft = 0.3048 m exactly.
test.each([
  ['m2/h', 'ft2/h', 0.3048 ** 2],
  ['m/h', 'ft/h', 0.3048],
  ['m', 'ft', 0.3048],
  ['m2 per set', 'ft2 per set', 0.3048 ** 2],
  ['min each', 'min each', 1],
  // What is spread over a floor: by 100 ft2. 1 lb = 0.45359237 kg, 1 gal = 3.785411784 L exactly.
  ['min per m2', 'min per 100 ft2', 1 / (30.48 * 0.3048)],
  ['kg per m2', 'lb per 100 ft2', 0.45359237 / (30.48 * 0.3048)],
  ['L per m2', 'gal per 100 ft2', 3.785411784 / (30.48 * 0.3048)],
  ['kg per m3', 'lb per ft3', 0.45359237 / 0.3048 ** 3],
])('%s is shown as %s', (unit, shown, worth) => {
  const found = rateUnit(unit, 'imperial');
  expect(found.unit).toBe(shown);
  expect(found.worth).toBeCloseTo(worth, 12);
});

test('metric is shown as it is kept', () => {
  for (const row of book) expect(rateUnit(row.unit, 'metric')).toEqual({ unit: row.unit, worth: 1 });
});
