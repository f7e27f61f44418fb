import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { moneyForField, parseMoney, shareOut, toMinor } from '../../src/model/money.ts';

const amount = fc.integer({ min: -1_000_000_000, max: 1_000_000_000 }).map(toMinor);
const weights = fc.array(fc.double({ min: 0, max: 1e6, noNaN: true }), { minLength: 1, maxLength: 12 });

describe('shares', () => {
  it('add up to the whole, whole cents each', () => {
    fc.assert(
      fc.property(amount, weights, (total, by) => {
        const parts = shareOut(total, by);
        expect(parts).toHaveLength(by.length);
        expect(parts.every((part) => Number.isSafeInteger(part))).toBe(true);
        expect(parts.reduce((sum, part) => sum + part, 0)).toBe(total);
      }),
    );
  });
  it('are never more than a cent from the exact share', () => {
    fc.assert(
      fc.property(amount, weights, (total, by) => {
        const sum = by.reduce((all, one) => all + one, 0);
        fc.pre(sum > 0);
        const parts = shareOut(total, by);
        for (const [index, part] of parts.entries()) {
          expect(Math.abs(part - (total * (by[index] ?? 0)) / sum)).toBeLessThan(1 + 1e-6);
        }
      }),
    );
  });
});

describe('an amount', () => {
  it('comes back as typed', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1e11 }), fc.constantFrom('USD', 'JPY', 'EUR'), (minor, currency) => {
        expect(parseMoney(moneyForField(minor, currency), currency)).toEqual({ ok: true, minor });
      }),
    );
  });
});
