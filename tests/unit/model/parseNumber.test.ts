import { describe, expect, it } from 'vitest';
import { parseNumber } from '../../../src/model/parseNumber.ts';

describe('parseNumber', () => {
  it.each([
    ['12', 12],
    ['12.5', 12.5],
    ['12,5', 12.5],
    ['1,234.5', 1234.5],
    ['1.234,5', 1234.5],
    ['1,234,567', 1234567],
    ['1.234.567', 1234567],
    ['1 234,5', 1234.5],
    ['1234,567', 1234.567],
    ['0,125', 0.125],
    ['+7', 7],
  ])('%s is %d', (typed, value) => {
    expect(parseNumber(typed)).toEqual({ ok: true, value });
  });

  it.each([
    ['', 'empty'],
    ['x', 'notANumber'],
    ['1,23,4', 'notANumber'],
    ['1,234', 'ambiguousComma'],
    ['-4', 'negative'],
    ['1e5', 'notANumber'],
    ['Infinity', 'notANumber'],
  ])('%s is refused: %s', (typed, fault) => {
    expect(parseNumber(typed)).toMatchObject({ ok: false, fault });
  });

  it('takes negative numbers where they are allowed', () => {
    expect(parseNumber('-4,5', { negative: true })).toEqual({ ok: true, value: -4.5 });
    expect(parseNumber('\u22124', { negative: true })).toEqual({ ok: true, value: -4 });
  });
});
