import { describe, expect, it } from 'vitest';
import { moneyForField, parseMoney, priceFromCost, shareOut, showMoney, toMinor } from '../../../src/model/money.ts';

describe('money', () => {
  it('shows whole units on screen and cents on paper', () => {
    expect(showMoney(123_450, 'USD', 'screen')).toEqual({ figure: '1,235', unit: 'USD' });
    expect(showMoney(123_450, 'USD', 'paper')).toEqual({ figure: '1,234.50', unit: 'USD' });
    expect(showMoney(500, 'JPY', 'paper')).toEqual({ figure: '500', unit: 'JPY' });
    expect(showMoney(500, 'shells', 'paper')).toEqual({ figure: '5.00', unit: 'shells' });
  });
  it('reads an amount, and refuses parts of a cent', () => {
    expect(parseMoney('1,250.50', 'USD')).toEqual({ ok: true, minor: 125_050 });
    expect(parseMoney('$24', 'USD')).toEqual({ ok: true, minor: 2400 });
    expect(parseMoney('0.29', 'USD')).toEqual({ ok: true, minor: 29 });
    expect(parseMoney('1.005', 'USD')).toMatchObject({ ok: false, fault: 'tooFine' });
    expect(parseMoney('99999999999999999', 'USD')).toMatchObject({ ok: false, fault: 'tooMuch' });
    expect(moneyForField(125_050, 'USD')).toBe('1250.50');
    expect(moneyForField(2400, 'USD')).toBe('24');
  });
  it('has no price at a margin of 100 % or more, or below nothing', () => {
    expect(priceFromCost(400_000, 100)).toBeNull();
    expect(priceFromCost(400_000, -1)).toBeNull();
    expect(priceFromCost(400_000, 0)).toBe(400_000);
  });
  it('gives the cents left over to the largest share first', () => {
    expect(shareOut(toMinor(100), [1, 1, 1])).toEqual([34, 33, 33]);
    expect(shareOut(toMinor(101), [1, 2, 1])).toEqual([25, 51, 25]);
    expect(shareOut(toMinor(10), [0, 0, 0])).toEqual([4, 3, 3]);
    expect(shareOut(toMinor(-100), [1, 1, 1])).toEqual([-34, -33, -33]);
    expect(shareOut(toMinor(5), [0, 1])).toEqual([0, 5]);
    expect(shareOut(toMinor(5), [])).toEqual([]);
  });
});
