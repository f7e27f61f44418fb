/** Figures of the takeoff table. Expected values by hand; 1 gal = 3.785411784 L (NIST SP 811, table B.9). */
import { describe, expect, test } from 'vitest';
import { showInRow, unitShown } from '../../../src/app/takeoff/showQuantity.ts';

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
  });
});
