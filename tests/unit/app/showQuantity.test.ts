/** Figures of the takeoff table. Expected values by hand; 1 gal = 3.785411784 L (NIST SP 811, table B.9). */
import { describe, expect, test } from 'vitest';
import { showInRow, showQuantity, unitShown } from '../../../src/app/takeoff/showQuantity.ts';

describe('a figure stands in the unit that is named beside its row', () => {
  test.each([
    [0.686, '0.69'],
    [1.06, '1.06'],
    [358.3, '358.3'],
  ])('%f L', (litres, figure) => {
    expect(showInRow(litres, 'L', 'metric', 'USD')).toBe(figure);
    expect(unitShown('L', 'metric')).toBe('L');
  });

  test('gallons', () => {
    expect(showInRow(0.686, 'L', 'imperial', 'USD')).toBe('0.18');
    expect(unitShown('L', 'imperial')).toBe('gal');
  });

  test('every other unit is shown as elsewhere', () => {
    expect(showInRow(0.5, 'm2', 'metric', 'USD')).toBe('0.50');
    expect(showInRow(394.2, 'kg', 'metric', 'USD')).toBe('394');
    // Pieces line up in their column, and a trace of one is no nothing.
    expect([0.5, 2, 0.0043].map((sets) => showInRow(sets, 'sets', 'metric', 'USD'))).toEqual([
      '0.50',
      '2',
      'under 0.01',
    ]);
  });
});

// 1 m2 = 10.7639 ft2 and 1 kg = 2.20462 lb (NIST SP 811): 120 m2 = 1291.7 ft2, 20 kg = 44.1 lb.
test.each([
  [120, 'm2 per wheel', '1,292', 'ft² per wheel'],
  [20, 'kg per bag', '44', 'lb per bag'],
  [2400, 'kg/m3', '150', 'lb/ft³'],
  [2, 'sets', '2', 'sets'],
])('%f %s in feet', (value, unit, figure, shown) => {
  expect(showQuantity(value, unit, 'imperial', 'USD')).toEqual({ figure, unit: shown });
  expect(showQuantity(1.5, unit, 'metric', 'USD').figure).toBe('1.5');
});

test.each([
  [0.17, '0.17'],
  [0.3, '0.3'],
  [1.4147, '1.41'],
  [12, '12.0'],
])('a thickness of %f mm keeps the hundredths that it has', (mm, figure) => {
  expect(showQuantity(mm, 'mm', 'metric', 'USD')).toEqual({ figure, unit: 'mm' });
});
