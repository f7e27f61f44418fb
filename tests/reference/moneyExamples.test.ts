import { describe, expect, test } from 'vitest';
import { applyCells, EMPTY_DOC, type Doc } from '../../src/model/doc.ts';
import type { Pricing } from '../../src/model/records/pricing.ts';
import { evaluate, term } from '../../src/takeoff/formula.ts';
import type { Line } from '../../src/takeoff/line.ts';
import { moneyLine } from '../../src/takeoff/moneyLine.ts';
import { priceLines } from '../../src/takeoff/priceLines.ts';
import { defaultMoneyCells } from '../../src/takeoff/rates/defaults.ts';
import { rateBook } from '../../src/takeoff/rates/rateBook.ts';
import { measured } from '../../src/takeoff/terms.ts';
import { wageOf } from '../../src/takeoff/wage.ts';
import { jobCells } from '../support/jobPlans.ts';

/*
 * Worked examples E29, E30 and E31 of the trade, retyped. Each was recomputed by a second, independent program. Margin is
 * an identity; the payroll tax of E30 is PAYROLL (IRS, restated), all else in them is somebody's own figure.
 */
function withPricing(pricing: Partial<Pricing>, wage = 3_000): Doc {
  const cells = Object.entries(pricing).map(([slot, value]) => ['pricing:job', slot, value] as const);
  return applyCells(EMPTY_DOC, [...jobCells(), ...defaultMoneyCells(), ['price:wage', 'amount', wage], ...cells]);
}

function cost(of: string, minor: number): Line {
  return moneyLine({ code: 'money.example', of, formula: term(of), terms: [measured(of, minor, 'minor')] });
}

function likely(lines: readonly Line[], code: string): number {
  return lines.find((line) => line.code === code)?.quantity.likely ?? Number.NaN;
}

describe('E29: margin is not markup (identity)', () => {
  const none = { measured: 0, photo: 0, unknown: 0 };
  const book = rateBook(withPricing({ marginPct: 30, overheadPct: 0, contingencyPct: none, roundUpTo: 1 }));
  const priced = priceLines(book, [cost('all of it', 400_000)], null);

  test('cost 4,000 at 30 % is a price of 5,714.29, not of 5,200', () => {
    expect(likely(priced, 'money.cost')).toBe(400_000);
    expect(likely(priced, 'money.price')).toBe(571_429);
    expect(likely(priced, 'money.price') - 520_000).toBe(51_429);
  });

  test('both are shown: a margin of 30 % is a markup of 42.86 %', () => {
    expect(likely(priced, 'money.markup')).toBeCloseTo(30 / 0.7, 3);
  });
});

describe('E30: what a paid and a billed hour costs (PAYROLL for the payroll tax; the rest are inputs)', () => {
  const burdenParts = { payrollTax: 7.65, unemployment: 1, injury: 9, health: 6, holidays: 5 };
  const hour = (pricing: Partial<Pricing>): number => {
    const wage = wageOf(rateBook(withPricing(pricing)));
    return wage ? evaluate(wage.formula, wage.terms).likely : Number.NaN;
  };

  test('30 an hour and a burden of 28.65 % in parts: 38.595', () => {
    expect(hour({ burdenParts })).toBeCloseTo(3_859.5, 9);
  });
  test('of which 85 % can be billed: 45.40588 a billed hour', () => {
    expect(hour({ burdenParts, billablePct: 85 })).toBeCloseTo(4_540.588235294118, 9);
  });
  test('the payroll tax alone is 2.295 of it', () => {
    expect(hour({ burdenParts: { payrollTax: 7.65 } }) - 3_000).toBeCloseTo(229.5, 9);
  });
});

describe('E31: price build-up of a small job (practice)', () => {
  // 11 crew hours x 2 x 37 an hour.
  const costs = { labour: 81_400, equipment: 35_000, tooling: 18_000, filler: 6_000, waste: 4_000, travel: 9_500 };
  const direct = Object.entries(costs).map(([of, minor]) => cost(of, minor));
  const settings = { certainty: 'measured', overheadPct: 12, marginPct: 25 } as const;
  const priced = priceLines(rateBook(withPricing({ ...settings, roundUpTo: 1 })), direct, null);

  test('814 + 725 = 1,539; + 5 %; + 12 %; / 0.75 = 2,413.15', () => {
    expect(likely(priced, 'money.direct')).toBe(153_900);
    expect(likely(priced, 'money.direct') + likely(priced, 'money.contingency')).toBe(161_595);
    // 1,809.864, to the cent.
    expect(likely(priced, 'money.cost')).toBe(180_986);
    expect(likely(priced, 'money.price')).toBe(241_315);
  });

  test('rounded up to whole tens of the customer: 2,420', () => {
    const tens = priceLines(rateBook(withPricing({ ...settings, roundUpTo: 1_000 })), direct, null);
    expect(likely(tens, 'money.price')).toBe(242_000);
    expect(likely(tens, 'money.cost') + likely(tens, 'money.margin')).toBe(242_000);
  });
});
