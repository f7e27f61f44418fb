import { describe, expect, test } from 'vitest';
import type { Doc } from '../../src/model/doc.ts';
import { evaluate, fixed } from '../../src/takeoff/formula.ts';
import type { Line } from '../../src/takeoff/line.ts';
import { grooveVolume } from '../../src/takeoff/materialLines.ts';
import { rateBook } from '../../src/takeoff/rates/rateBook.ts';
import { textureCode } from '../../src/takeoff/rates/texture.ts';
import { backerMm } from '../../src/takeoff/sealantLines.ts';
import { takeoff } from '../../src/takeoff/takeoff.ts';
import { measured } from '../../src/takeoff/terms.ts';
import { sandPatchMm } from '../../src/takeoff/textureLines.ts';
import { L_PER_GAL, M2_PER_FT2, MM_PER_IN } from '../../src/model/units.ts';
import { docOf, FLOOR, jobCells, record, recipeCells, rectangle, restCells, slabCells } from '../support/jobPlans.ts';

/*
 * Worked examples E14, E15, E17, E18, E19, E32 of the trade, retyped; E12, E13 and E16 stand in takeoffExamples. Lives,
 * wastes and depths are common practice without a source; what is checked is the arithmetic.
 */
function line(doc: Doc, code: string): Line {
  const found = takeoff(doc, FLOOR).lines.find((each) => each.code === code);
  if (!found) throw new Error(`no line ${code}`);
  return found;
}

test('E14: hairline 0.5 x 100 mm, 10 m: 0.5 L, 0.625 L with 25 % (geometry; waste practice)', () => {
  const terms = [measured('L', 10, 'm'), measured('w', 0.5, 'mm'), measured('d', 100, 'mm')];
  const volume = evaluate(grooveVolume('rectangle', 'L', 'w', 'd'), terms).likely;
  expect(volume).toBeCloseTo(0.5, 12);
  expect(volume * 1.25).toBeCloseTo(0.625, 12);
});

describe('E15: joint 12 mm wide, sealant 6 mm deep over backer, 60 m (UFC3-270-03: backer 25 % over the opening)', () => {
  const joint = record('joint:J1', {
    floor: FLOOR,
    tag: 'J1',
    kind: 'construction',
    treat: 'carried',
    widthMm: 12,
    path: [
      [1_000, 1_000],
      [61_000, 1_000],
    ],
  });
  const doc = docOf(jobCells(), slabCells(rectangle(62_000, 4_000)), joint);

  test('4.32 L in place, 4.968 L to buy', () => {
    expect(line(doc, 'sealant').quantity.likely).toBeCloseTo(4.32, 9);
    expect(line(doc, 'sealantBuy').quantity.likely).toBeCloseTo(4.968, 9);
  });

  test('backer rod of 15 mm, 60 m, two rolls of 50 m', () => {
    expect(line(doc, 'backerSize').quantity).toEqual(fixed(15));
    expect(backerMm(12, rateBook(doc).rate('consumables/backer_over'))).toBe(15);
    expect(line(doc, 'backerRod').quantity.likely).toBeCloseTo(60, 9);
    expect(line(doc, 'order.backerRod').quantity.likely).toBe(2);
  });
});

test('E17: sand patch of 25 mL spread to 150 mm is 1.41 mm deep (ASTM-E965)', () => {
  expect(sandPatchMm(25, 150)).toBeCloseTo(1.4147106052612919, 9);
});

describe('E18: extra topping of 100 m2 for CSP 3, 5, 7 (depths are estimates, common practice)', () => {
  test.each([
    [3, 17],
    [5, 45],
    [7, 100],
  ])('CSP %d: %d L', (csp, litres) => {
    const doc = docOf(
      jobCells(),
      slabCells(rectangle(10_000, 10_000)),
      restCells({ csp: { min: csp, max: csp }, system: { kind: 'trowel_mortar' } }),
    );
    expect(line(doc, 'textureFill').quantity.likely).toBeCloseTo(litres, 9);
  });

  test('a profile between two chips: smooth in the low case, rough in the high one, between them likely', () => {
    const doc = docOf(
      jobCells(),
      slabCells(rectangle(10_000, 10_000)),
      restCells({ csp: { min: 2, max: 3 }, system: { kind: 'flake_broadcast' } }),
    );
    const { quantity } = line(doc, 'textureFill');
    expect(quantity.low).toBeCloseTo(5, 9);
    expect(quantity.likely).toBeCloseTo(13.5, 9);
    expect(quantity.high).toBeCloseTo(25, 9);
  });
});

describe('E19: 500 ft2 at 20 mil, texture 0.17 mm (231 in3 in a gallon)', () => {
  const areaMm2 = 500 * M2_PER_FT2 * 1e6;
  const filmMm = 0.02 * MM_PER_IN;
  const doc = docOf(
    jobCells(),
    slabCells(rectangle(10_000, areaMm2 / 10_000)),
    restCells({ csp: { min: 3, max: 3 }, system: { kind: 'high_build', thicknessMm: filmMm } }),
  );
  const gallons = (code: string): number => line(doc, code).quantity.likely / L_PER_GAL;

  test('6.23 gal of film, 2.09 gal for the texture, 8.32 gal together', () => {
    expect(rateBook(doc).rate(textureCode(3)).likely).toBe(0.17);
    // Slabs lie on a grid of 1/320 mm, which moves the area by less than 1 in a million.
    expect(gallons('toppingFilm')).toBeCloseTo(6.233766232470906, 4);
    expect(gallons('textureFill')).toBeCloseTo(2.0861028730709728, 4);
    expect(gallons('toppingFilm') + gallons('textureFill')).toBeCloseTo(8.319869105541878, 4);
  });
});

describe('E32: 400 m2, shot 0.1 kg/m2 in bags of 25 kg, screens of 55 m2 (practice)', () => {
  const doc = docOf(
    jobCells(),
    slabCells(rectangle(20_000, 20_000)),
    recipeCells('shot', { method: 'shot_small', times: 1 }),
    restCells({ recipe: 'recipe:shot' }),
  );
  const field = (of: Doc, m2: number, code: string): Line => {
    const found = line(of, code);
    const terms = found.working.terms.map((term) => (term.name === 'field' ? { ...term, value: fixed(m2) } : term));
    return { ...found, quantity: evaluate(found.working.formula, terms) };
  };
  /** The order line with one use of another size. */
  const ordered = (of: Doc, code: string, used: number): number => {
    const { working } = line(of, code);
    const terms = working.terms.map((term) => (term.source === 'line' ? { ...term, value: fixed(used) } : term));
    return evaluate(working.formula, terms).likely;
  };

  test('40 kg of shot, 2 bags, also with a tenth to spare', () => {
    const used = field(doc, 400, 'shotLoss').quantity.likely;
    expect(used).toBeCloseTo(40, 9);
    expect(ordered(doc, 'orderPacks.shot', used)).toBe(2);
  });

  test('8 screens', () => {
    const screens = docOf(
      jobCells(),
      slabCells(rectangle(20_000, 20_000)),
      recipeCells('screen', { method: 'buffer_screen', times: 1 }),
      restCells({ recipe: 'recipe:screen' }),
    );
    const used = field(screens, 400, 'screenWear').quantity.likely;
    expect(used).toBeCloseTo(400 / 55, 9);
    expect(ordered(screens, 'order.screen', used)).toBe(8);
  });
});
