/**
 * What moves the price, checked against the takeoff itself: the same number written into the job's rate book, and the
 * whole job taken off again.
 */
import { expect, test } from 'vitest';
import { applyCells, recordOf, type Doc } from '../../../src/model/doc.ts';
import type { Cell, RecordId } from '../../../src/model/cell.ts';
import { costShares } from '../../../src/takeoff/costKinds.ts';
import { priceMoves } from '../../../src/takeoff/priceMoves.ts';
import { defaultMoneyCells, defaultRateCells } from '../../../src/takeoff/rates/defaults.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import { FLOOR } from '../../support/jobPlans.ts';
import { kitchen, showroom, warehouse } from '../../support/wholeJobs.ts';

const JOBS: readonly (readonly [string, () => Doc])[] = [
  ['warehouse', warehouse],
  ['kitchen', kitchen],
  ['showroom', showroom],
];

function priced(make: () => Doc): Doc {
  return applyCells(make(), [...defaultRateCells(), ...defaultMoneyCells()]);
}

function likelyPrice(doc: Doc): number {
  return takeoff(doc, FLOOR).lines.find(({ code }) => code === 'money.price')?.quantity.likely ?? Number.NaN;
}

test.each(JOBS)(
  '%s: with a rate set to its low or high the whole takeoff gives the price that was foretold',
  (_, make) => {
    const doc = priced(make);
    const found = priceMoves(takeoff(doc, FLOOR).lines);
    expect(found?.likely).toBe(likelyPrice(doc));
    const rates = (found?.moves ?? []).filter(({ key }) => recordOf(doc, 'rate', key as RecordId) !== null);
    expect(rates.length).toBeGreaterThan(5);
    for (const move of rates.slice(0, 6)) {
      for (const which of ['low', 'high'] as const) {
        const value = move.term.value[which];
        const record = move.key as RecordId;
        const set = ['low', 'likely', 'high'].map((slot): Cell => [record, slot, value]);
        expect(likelyPrice(applyCells(doc, set)), `${move.key} ${which}`).toBe(move[which]);
      }
    }
  },
);

test.each(JOBS)(
  '%s: the furthest comes first, what moves nothing is not there, nothing passes the range of all',
  (_, make) => {
    const { lines } = takeoff(priced(make), FLOOR);
    const { likely, moves } = priceMoves(lines) ?? { likely: Number.NaN, moves: [] };
    const price = lines.find(({ code }) => code === 'money.price')?.quantity;
    const swings = moves.map(({ low, high }) => Math.max(low, high, likely) - Math.min(low, high, likely));
    expect(swings).toEqual(swings.toSorted((a, b) => b - a));
    expect(swings.every((swing) => swing > 0)).toBe(true);
    for (const { low, high } of moves) {
      expect(Math.min(low, high)).toBeGreaterThanOrEqual(price?.low ?? Number.NaN);
      expect(Math.max(low, high)).toBeLessThanOrEqual(price?.high ?? Number.NaN);
    }
  },
);

test.each(JOBS)('%s: the kinds of cost add up to the price', (_, make) => {
  const { lines } = takeoff(priced(make), FLOOR);
  const price = lines.find(({ code }) => code === 'money.price')?.quantity;
  for (const which of ['low', 'likely', 'high'] as const) {
    const all = costShares(lines).flatMap((share) => share.lines);
    expect(all.reduce((sum, line) => sum + line.quantity[which], 0)).toBeCloseTo(price?.[which] ?? Number.NaN, 0);
  }
});

test('without a price nothing moves it', () => {
  expect(priceMoves([])).toBeNull();
});
