import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { moneyForField, parseMoney } from '../../src/model/money.ts';

describe('an amount', () => {
  it('comes back as typed', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1e11 }), fc.constantFrom('USD', 'JPY', 'EUR'), (minor, currency) => {
        expect(parseMoney(moneyForField(minor, currency), currency)).toEqual({ ok: true, minor });
      }),
    );
  });
});
