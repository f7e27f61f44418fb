import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseLength } from '../../src/model/parseLength.ts';
import { feetAndInches, lengthForField } from '../../src/model/showLength.ts';
import { onGrid } from '../../src/model/units.ts';

const SIXTY_FOURTH_MM = 25.4 / 64;

describe('a length comes back as typed', () => {
  it('from every 64th of an inch, through the field in feet', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 12 * 64 * 1000 }), (parts) => {
        const mm = onGrid(parts * SIXTY_FOURTH_MM);
        expect(parseLength(lengthForField(mm, 'ft'), 'ft')).toEqual({ ok: true, mm });
        expect(parseLength(lengthForField(mm, 'in'), 'in')).toEqual({ ok: true, mm });
      }),
    );
  });
  it('from every tenth of a millimetre, through fields in m, cm and mm', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 10_000_000 }), fc.constantFrom('m', 'cm', 'mm'), (tenths, unit) => {
        const mm = onGrid(tenths / 10);
        expect(parseLength(lengthForField(mm, unit), unit)).toEqual({ ok: true, mm });
      }),
    );
  });
  it('feet and inches to 1/8 are never more than 1/16 in off, and read back alike', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 300_000, noNaN: true }), (mm) => {
        const shown = feetAndInches(mm);
        const back = parseLength(shown.replaceAll(',', ''), 'ft');
        expect(back.ok).toBe(true);
        if (back.ok) expect(Math.abs(back.mm - mm)).toBeLessThanOrEqual(25.4 / 16 + 1 / 320);
      }),
    );
  });
});

describe('whatever is typed', () => {
  it('is answered, on the grid and not negative, or refused with a code; nothing throws', () => {
    const pieces = fc.constantFrom(
      '1',
      '12',
      '6',
      '/',
      '.',
      ',',
      "'",
      '"',
      '-',
      ' ',
      'm',
      'mm',
      'cm',
      'ft',
      'in',
      '½',
      'x',
      '0',
    );
    const typed = fc.oneof(
      fc.string(),
      fc.array(pieces, { maxLength: 12 }).map((list) => list.join('')),
    );
    fc.assert(
      fc.property(typed, fc.constantFrom('ft', 'in', 'm', 'cm', 'mm'), (text, unit) => {
        const answer = parseLength(text, unit);
        if (!answer.ok) return;
        expect(answer.mm).toBeGreaterThanOrEqual(0);
        expect(onGrid(answer.mm)).toBe(answer.mm);
      }),
      { numRuns: 2000 },
    );
  });
});
