import { expect, test } from 'vitest';
import { inSentences, rateFigures } from '../../../src/app/rates/rateFigures.ts';

const row = { source: 'x', provenance: 'P', fromMemory: false } as const;

test('figures are as short as they may be', () => {
  const shown = rateFigures({ ...row, unit: 'kg per m2', low: 0.05, likely: 0.1, high: 1200 }, 'metric');
  expect(shown).toEqual({ low: '0.05', likely: '0.1', high: '1,200', unit: 'kg per m2' });
});

// 1 ft2 = 0.09290304 m2 (NIST SP 811): 15, 25 and 140 m2/h are 161.46, 269.10 and 1506.9 ft2/h.
test('converted ones are shown as finely as the rate is known', () => {
  const shown = rateFigures({ ...row, unit: 'm2/h', low: 15, likely: 25, high: 140 }, 'imperial');
  expect(shown).toEqual({ low: '161', likely: '269', high: '1,510', unit: 'ft2/h' });
});

test('phrases of tables are read as sentences, with the signs of their units', () => {
  expect(inSentences('up to 0.1 m2', '', undefined, '50 ug/m3 and 4 ft2')).toBe('Up to 0.1 m². 50 µg/m³ and 4 ft²');
});
