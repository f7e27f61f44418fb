import { describe, expect, test } from 'vitest';
import type { Doc } from '../../src/model/doc.ts';
import { evaluate, fixed } from '../../src/takeoff/formula.ts';
import type { Line, Term } from '../../src/takeoff/line.ts';
import { grooveVolume } from '../../src/takeoff/materialLines.ts';
import { rateBook } from '../../src/takeoff/rates/rateBook.ts';
import { takeoff } from '../../src/takeoff/takeoff.ts';
import { measured } from '../../src/takeoff/terms.ts';
import {
  crackCells,
  docOf,
  FLOOR,
  jobCells,
  recipeCells,
  rectangle,
  restCells,
  slabCells,
} from '../support/jobPlans.ts';

/*
 * Worked examples E04, E12, E13, E16, E20 of the trade, retyped. Each was recomputed by a second, independent
 * program. Their rates are common practice without a source; what is checked is the arithmetic.
 */
function line(doc: Doc, code: string): Line {
  const found = takeoff(doc, FLOOR).lines.find((each) => each.code === code);
  if (!found) throw new Error(`no line ${code}`);
  return found;
}

/** The line's own formula with other numbers for its terms. */
function withTerms(of: Line, values: Readonly<Record<string, number>>): number {
  const terms: Term[] = of.working.terms.map((term) => {
    const key = Object.keys(values).find((name) => term.name.startsWith(name));
    return key === undefined ? term : { ...term, value: fixed(values[key] ?? 0) };
  });
  return evaluate(of.working.formula, terms).likely;
}

const room = docOf(jobCells(), slabCells(rectangle(12_000, 8_000)));

describe('E04: only wall edges make an edge; a doorway that stops is a stop line (common practice)', () => {
  const outline = [
    [0, 0],
    [6_000, 0],
    [6_000, 6_000],
    [4_900, 6_000],
    [0, 6_000],
  ] as const;
  const garage = docOf(
    jobCells(),
    slabCells(outline, [{ kind: 'wall' }, { kind: 'wall' }, { kind: 'wall' }, { kind: 'doorway' }, { kind: 'wall' }]),
  );

  test('19.1 m of edge, 4.9 m of stop line', () => {
    expect(line(garage, 'edge').quantity.likely).toBeCloseTo(19.1, 9);
    expect(line(garage, 'stopLine').quantity.likely).toBeCloseTo(4.9, 9);
  });
});

describe('E12: chase 6 x 12 mm, 45 m, 10 % waste, cartridges of 600 mL (geometry; waste practice)', () => {
  const doc = docOf(
    jobCells(),
    slabCells(rectangle(50_000, 5_000)),
    crackCells('crack:C1', [
      [1_000, 2_500],
      [46_000, 2_500],
    ]),
  );

  test('3.24 L in place, 3.564 L to buy, 6 cartridges', () => {
    expect(line(doc, 'crackFiller').quantity.likely).toBeCloseTo(3.24, 9);
    expect(line(doc, 'crackFillerBuy').quantity.likely).toBeCloseTo(3.564, 9);
    expect(line(doc, 'order.crackFiller').quantity.likely).toBe(6);
  });

  test('E13: V groove 10 x 10 mm, 30 m: 1.5 L, 1.65 L to buy, 3 cartridges', () => {
    const terms = [measured('L', 30, 'm'), measured('w', 10, 'mm'), measured('d', 10, 'mm')];
    const volume = evaluate(grooveVolume('vee', 'L', 'w', 'd'), terms).likely;
    expect(volume).toBeCloseTo(1.5, 9);
    const buy = withTerms(line(doc, 'crackFillerBuy'), { volume });
    expect(buy).toBeCloseTo(1.65, 9);
    expect(withTerms(line(doc, 'order.crackFiller'), { 'crackFillerBuy|': buy })).toBe(3);
  });
});

describe('E16: dust of 93.0225 m2 at 0.3 mm (DENSITY: 2400 kg/m3; depth and bulk density practice)', () => {
  const doc = docOf(
    jobCells(),
    slabCells(rectangle(10_000, 9_302.25)),
    recipeCells('once', { times: 1 }),
    restCells({ recipe: 'recipe:once' }),
  );

  test('66.98 kg, 60.9 L loose, 4 bags of 20 kg', () => {
    expect(line(doc, 'dustMass').quantity.likely).toBeCloseTo(66.9762, 4);
    expect(line(doc, 'dustVolume').quantity.likely).toBeCloseTo(60.88745, 4);
    expect(line(doc, 'order.dustBag').quantity.likely).toBe(4);
  });
});

describe('E20: machine and hand hours of a room of 12 x 8 m, hard concrete, 2 passes (practice)', () => {
  test('2 x 93.0225 / (25 x 0.6 x 0.85) = 14.59 h', () => {
    const machine = withTerms(line(room, 'hours.machine'), {
      field: 93.0225,
      'times over': 2,
      hardness: 0.6,
      'room size': 1,
      obstructions: 0.85,
    });
    expect(machine).toBeCloseTo(14.591764705882351, 9);
  });

  test('the rate of the small grinder and the factor of hard concrete are those of the example', () => {
    const book = rateBook(room);
    expect(book.rate('methods/grinder_small').likely).toBe(25);
    expect(book.rate('factors/hardness/hard').likely).toBe(0.6);
  });

  test('40 m / 15 + 4 corners x 3 min = 2.87 h by hand', () => {
    const hand = line(room, 'hours.edge').quantity.likely + line(room, 'hours.corners').quantity.likely;
    expect(hand).toBeCloseTo(2.8666666666666667, 6);
  });
});
