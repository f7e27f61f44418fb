import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Doc } from '../../src/model/doc.ts';
import type { Range } from '../../src/takeoff/line.ts';
import { evaluate } from '../../src/takeoff/formula.ts';
import { totalOf } from '../support/totalOf.ts';
import { logLinear } from '../../src/takeoff/scaleFactors.ts';
import { takeoff } from '../../src/takeoff/takeoff.ts';
import { crackCells, docOf, FLOOR, jobCells, rectangle, restCells, slabCells, zoneCells } from '../support/jobPlans.ts';

const side = fc.integer({ min: 2_000, max: 30_000 });
const hardness = fc.constantFrom('soft', 'medium', 'hard', 'veryHard');
const RUNS = { numRuns: 60 };

function room(width: number, depth: number, hard: 'soft' | 'medium' | 'hard' | 'veryHard' = 'medium'): Doc {
  return docOf(jobCells(), slabCells(rectangle(width, depth)), restCells({ hardness: hard }));
}

function noMore(a: Range, b: Range): void {
  for (const which of ['low', 'likely', 'high'] as const) expect(a[which]).toBeLessThanOrEqual(b[which] + 1e-6);
}

describe('laws of the takeoff', () => {
  test('more floor never takes fewer hours, less dust or less money', () => {
    fc.assert(
      fc.property(side, side, side, hardness, (width, depth, more, hard) => {
        const [small, large] = [
          takeoff(room(width, depth, hard), FLOOR),
          takeoff(room(width + more, depth, hard), FLOOR),
        ];
        for (const code of ['netFloor', 'edge', 'hours.machineAll', 'hours.crew', 'dustMass', 'money.price']) {
          noMore(totalOf(small, code), totalOf(large, code));
        }
      }),
      RUNS,
    );
  });

  test('more metres of crack never take less filler or fewer hours', () => {
    fc.assert(
      fc.property(fc.integer({ min: 100, max: 9_000 }), fc.integer({ min: 1, max: 9_000 }), (length, more) => {
        const doc = (metres: number): Doc =>
          docOf(
            jobCells(),
            slabCells(rectangle(20_000, 5_000)),
            crackCells('crack:C1', [
              [500, 2_500],
              [500 + metres, 2_500],
            ]),
          );
        const [short, long] = [takeoff(doc(length), FLOOR), takeoff(doc(length + more), FLOOR)];
        for (const code of ['crackFillerBuy', 'order.crackFiller', 'hours.crackChase', 'hours.crew']) {
          noMore(totalOf(short, code), totalOf(long, code));
        }
      }),
      RUNS,
    );
  });

  test('low is at most likely and likely at most high, every line comes out of its terms, zones make the whole', () => {
    fc.assert(
      fc.property(side, side, fc.double({ min: 0.1, max: 0.9, noNaN: true }), hardness, (width, depth, share, hard) => {
        const ring = rectangle(Math.round(width * share), depth);
        const doc = docOf(
          jobCells(),
          slabCells(rectangle(width, depth)),
          zoneCells('zone:1', ring, { hardness: hard }),
          restCells(),
        );
        const result = takeoff(doc, FLOOR);
        for (const { key, code, quantity, working } of result.lines) {
          expect(quantity.low, key).toBeLessThanOrEqual(quantity.likely + 1e-9);
          expect(quantity.likely, key).toBeLessThanOrEqual(quantity.high + 1e-9);
          const again = evaluate(working.formula, working.terms).likely;
          const near = code === 'field' ? result.measure.netM2 * 1e-4 + 1e-6 : 1e-9 + Math.abs(again) * 1e-12;
          expect(Math.abs(again - quantity.likely), key).toBeLessThanOrEqual(near);
        }
        expect(totalOf(result, 'netFloor').likely).toBeCloseTo((width * depth) / 1e6, 3);
      }),
      RUNS,
    );
  });

  test('the size of a room: flat outside its classes, rising between, through each middle', () => {
    const [middles, factors] = [
      [10, 32, 100, 450, 2000],
      [0.6, 0.75, 0.9, 1, 1.1],
    ];
    for (const [i, middle] of middles.entries())
      expect(logLinear(middle, middles, factors)).toBeCloseTo(factors[i] ?? 0, 12);
    expect(logLinear(1, middles, factors)).toBe(0.6);
    expect(logLinear(50_000, middles, factors)).toBe(1.1);
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 5_000, noNaN: true }),
        fc.double({ min: 1, max: 2, noNaN: true }),
        (m2, more) => {
          expect(logLinear(m2 * more, middles, factors)).toBeGreaterThanOrEqual(logLinear(m2, middles, factors));
          // Hours are m2 / factor: they must rise too.
          expect((m2 * more) / logLinear(m2 * more, middles, factors)).toBeGreaterThanOrEqual(
            m2 / logLinear(m2, middles, factors) - 1e-9,
          );
        },
      ),
    );
  });
});
