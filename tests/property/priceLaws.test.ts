import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Doc } from '../../src/model/doc.ts';
import type { Pricing } from '../../src/model/records/pricing.ts';
import type { Line } from '../../src/takeoff/line.ts';
import { defaultMoneyCells } from '../../src/takeoff/rates/defaults.ts';
import { samplePricing } from '../../src/takeoff/rates/samplePrices.ts';
import { takeoff } from '../../src/takeoff/takeoff.ts';
import { FLOOR, set, withCells } from '../support/jobPlans.ts';
import { kitchen, showroom } from '../support/wholeJobs.ts';

/*
 * Laws of a price, whatever the settings (identities): whole minor units everywhere, parts that make their sums to the
 * cent, a total that lies on the customer's unit, and no setting of cost that makes a price smaller.
 */
const CASES = ['low', 'likely', 'high'] as const;
const jobs = [kitchen(), showroom()].map((doc) => withCells(doc, defaultMoneyCells()));

const percent = fc.double({ min: 0, max: 40, noNaN: true });
const settings = fc.record({
  marginPct: percent,
  overheadPct: percent,
  overheadBy: fc.constantFrom('percent', 'crewDay'),
  nightPremiumPct: percent,
  billablePct: fc.double({ min: 60, max: 100, noNaN: true }),
  taxPct: fc.constantFrom(0, 7.25, 19),
  taxOn: fc.constantFrom('none', 'materials', 'total'),
  roundUpTo: fc.constantFrom(1, 5, 100, 5_000),
  certainty: fc.constantFrom('measured', 'photo', 'unknown'),
  leastHireDays: fc.integer({ min: 0, max: 6 }),
  power: fc.constantFrom('site', 'generator'),
  stay: fc.constantFrom('daily', 'lodging'),
  travelHours: fc.double({ min: 0, max: 6, noNaN: true }),
  returnVisits: fc.integer({ min: 0, max: 3 }),
  haulTrips: fc.integer({ min: 0, max: 4 }),
  wasteTests: fc.integer({ min: 0, max: 2 }),
  otherCosts: fc.array(fc.record({ name: fc.string(), amountMinor: fc.integer({ min: 0, max: 90_000 }) }), {
    maxLength: 3,
  }),
});

function priced(doc: Doc, pricing: Partial<Pricing>): readonly Line[] {
  const cells = Object.entries(pricing).flatMap(([slot, value]) => set('pricing:job', slot, value));
  return takeoff(withCells(doc, cells), FLOOR).lines.filter((line) => line.trade === 'money');
}

function sumOf(lines: readonly Line[], which: (typeof CASES)[number]): number {
  return lines.reduce((sum, line) => sum + line.quantity[which], 0);
}

const AFTER_DIRECT = /^money\.(direct|contingency|overhead|cost|margin|markup|price|priceShare|priceWithTax|tax)$/;

describe('a price', () => {
  test('adds up to the cent in all its parts, in each case', () => {
    fc.assert(
      fc.property(fc.constantFrom(...jobs), settings, (doc, pricing) => {
        const lines = priced(doc, pricing);
        const of = (code: string): readonly Line[] => lines.filter((line) => line.code === code);
        for (const which of CASES) {
          const one = (code: string): number => sumOf(of(code), which);
          const whole = lines.filter(({ unit }) => unit === 'minor').map(({ quantity }) => quantity[which]);
          expect(whole.every(Number.isInteger)).toBe(true);
          const direct = lines.filter(({ code }) => code.startsWith('money.') && !AFTER_DIRECT.test(code));
          expect(sumOf(direct, which)).toBe(one('money.direct'));
          expect(one('money.direct') + one('money.contingency') + one('money.overhead')).toBe(one('money.cost'));
          expect(one('money.cost') + one('money.margin')).toBe(one('money.price'));
          expect(sumOf(of('money.priceShare'), which)).toBe(one('money.price'));
          const total = of('money.priceWithTax').length > 0 ? one('money.priceWithTax') : one('money.price');
          expect(one('money.price') + one('money.tax')).toBe(total);
          expect(total % pricing.roundUpTo).toBe(0);
          expect(one('money.margin')).toBeGreaterThanOrEqual(0);
        }
      }),
      { numRuns: 25 },
    );
  });

  test('never falls when a cost, a premium or the margin rises', () => {
    const rising = fc.constantFrom<[keyof Pricing, number, number]>(
      ['marginPct', 10, 35],
      ['overheadPct', 5, 20],
      ['burdenPct', 10, 45],
      ['nightPremiumPct', 0, 30],
      ['leastHireDays', 0, 9],
      ['travelHours', 0, 5],
      ['travelKm', 10, 400],
      ['vehicles', 1, 3],
      ['returnVisits', 0, 2],
      ['haulTrips', 0, 3],
      ['wasteTests', 0, 3],
      ['minimumCrewDays', 0.5, 30],
    );
    fc.assert(
      fc.property(fc.constantFrom(...jobs), settings, rising, (doc, pricing, [slot, low, high]) => {
        const price = (value: number): number =>
          sumOf(
            priced(doc, { ...samplePricing, ...pricing, overheadBy: 'percent', [slot]: value }).filter(
              ({ code }) => code === 'money.price',
            ),
            'likely',
          );
        expect(price(high)).toBeGreaterThanOrEqual(price(low));
      }),
      { numRuns: 25 },
    );
  });
});
