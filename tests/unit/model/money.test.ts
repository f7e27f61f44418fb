import { describe, expect, it } from 'vitest';
import { moneyForField, parseMoney } from '../../../src/model/money.ts';

describe('money', () => {
  it('reads an amount, and refuses parts of a cent', () => {
    expect(parseMoney('1,250.50', 'USD')).toEqual({ ok: true, minor: 125_050 });
    expect(parseMoney('$24', 'USD')).toEqual({ ok: true, minor: 2400 });
    expect(parseMoney('0.29', 'USD')).toEqual({ ok: true, minor: 29 });
    expect(parseMoney('1.005', 'USD')).toMatchObject({ ok: false, fault: 'tooFine' });
    expect(parseMoney('99999999999999999', 'USD')).toMatchObject({ ok: false, fault: 'tooMuch' });
    expect(moneyForField(125_050, 'USD')).toBe('1250.50');
    expect(moneyForField(2400, 'USD')).toBe('24');
  });
});
