import { describe, expect, test } from 'vitest';
import type { Doc } from '../../../src/model/doc.ts';
import type { Line } from '../../../src/takeoff/line.ts';
import { missingPrice } from '../../../src/takeoff/rates/missingPrice.ts';
import { rateBook } from '../../../src/takeoff/rates/rateBook.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import {
  crackCells,
  docOf,
  findingCells,
  FLOOR,
  jobCells,
  record,
  recipeCells,
  rectangle,
  slabCells,
  withCells,
  zoneCells,
} from '../../support/jobPlans.ts';

const room = docOf(jobCells(), slabCells(rectangle(12_000, 8_000)));

function equipment(doc: Doc): ReadonlyMap<string, Line> {
  const lines = takeoff(doc, FLOOR).lines.filter((line) => line.code === 'money.equipment');
  return new Map(lines.map((line) => [line.key.split('|')[2] ?? '', line]));
}

describe('tools that stand on site (trade practice, no source: equipment is days x day rate)', () => {
  test('the first fleet brings a grinder, a hand grinder and a vacuum for each', () => {
    expect([...equipment(room).keys()]).toEqual(['grinder_small', 'hand_grinder', 'vacuum']);
  });

  test('the tool that takes a finding away is paid for: whole days of its own hours, not all days of the job', () => {
    const oil = findingCells('finding:F1', 'oil_deep', rectangle(2_000, 2_000, [1_000, 1_000]));
    const scarifier = equipment(withCells(room, oil)).get('scarifier_small');
    // 4 m2 are an hour at most: one day of 130.
    expect(scarifier?.quantity).toEqual({ low: 13_000, likely: 13_000, high: 13_000 });
    expect(scarifier?.records).toEqual(['finding:F1']);
  });

  test('a tool of the recipe takes the findings along and is not paid for twice', () => {
    const zone = zoneCells('zone:1', rectangle(12_000, 8_000), { recipe: 'recipe:a' });
    const oil = findingCells('finding:F1', 'oil_deep', rectangle(2_000, 2_000, [1_000, 1_000]));
    const doc = withCells(room, zone, recipeCells('a', { method: 'scarifier_small' }), oil);
    expect([...equipment(doc).keys()].filter((of) => of === 'scarifier_small')).toHaveLength(1);
  });

  test('cracks are chased with a hand grinder also where no pass names one for the edge', () => {
    const zone = zoneCells('zone:1', rectangle(12_000, 8_000), { recipe: 'recipe:a' });
    const bare = withCells(room, zone, recipeCells('a', { edgeMethod: null, edgeTimes: 0 }));
    const crack = crackCells('crack:C1', [
      [1_000, 1_000],
      [5_000, 1_000],
    ]);
    expect(equipment(bare).has('hand_grinder')).toBe(false);
    expect(equipment(withCells(bare, crack)).has('hand_grinder')).toBe(true);
  });
});

describe('a price that nobody has set', () => {
  const zone = zoneCells('zone:1', rectangle(12_000, 8_000), { recipe: 'recipe:a' });
  const peened = withCells(room, zone, recipeCells('a', { edgeMethod: 'hand_peener' }));

  test('is named, so that the money page can ask for it', () => {
    expect(takeoff(peened, FLOOR)).toMatchObject({
      missingPrices: ['day/hand_peener'],
      notAnOffer: ['priceMissing'],
    });
    expect(missingPrice('day/hand_peener')).toMatchObject({ code: 'day/hand_peener', unit: 'per day' });
  });

  test('is missing no longer once it is set, and then stands among the prices', () => {
    const set = record('price:peener', {
      code: 'day/hand_peener',
      term: 'Peener',
      unit: 'per day',
      amount: 5_000,
      source: 'own figure',
      provenance: 'own',
    });
    const doc = withCells(peened, set);
    expect(takeoff(doc, FLOOR)).toMatchObject({ missingPrices: [], notAnOffer: [] });
    expect(rateBook(doc).prices.map(({ code }) => code)).toContain('day/hand_peener');
  });
});
