import { beforeEach, describe, expect, test } from 'vitest';
import { callOf, runCommand } from '../../../src/edit/run.ts';
import { setRateRows } from '../../../src/edit/setRateRows.ts';
import { applyCells, recordOf, type Doc } from '../../../src/model/doc.ts';
import { planStore, type PlanStore } from '../../../src/model/store.ts';
import { book, bookRow } from '../../../src/takeoff/rates/book.ts';
import { bookDifferences } from '../../../src/takeoff/rates/bookDifferences.ts';
import { defaultRateCells, rateRecordId } from '../../../src/takeoff/rates/defaults.ts';
import { machineRateCode } from '../../../src/takeoff/rates/machineRate.ts';
import { rateBook } from '../../../src/takeoff/rates/rateBook.ts';
import {
  changedCodes,
  ownRate,
  rowsLeft,
  rowsOfBook,
  type RateChange,
} from '../../../src/takeoff/rates/rateChanges.ts';
import type { RateRow } from '../../../src/takeoff/rates/rateRow.ts';
import { bookEdition, rowEdition } from '../../../src/takeoff/rates/rowEdition.ts';
import { docOf, jobCells } from '../../support/jobPlans.ts';

const EDGE = 'labour/edge_hand';
const CORNER = 'labour/corner';
const OLD = 'rate:labour-edge_hand';

let store: PlanStore;
const doc = (): Doc => store.getState();

/** A job whose copy was taken while the book had other figures for the edge. */
function jobOfAnOlderBook(): Doc {
  const edge = bookRow(EDGE) as RateRow;
  const older = { ...edge, low: 5, likely: 9, high: 12 };
  return applyCells(docOf(jobCells()), [
    ...defaultRateCells(),
    [OLD, 'low', 5],
    [OLD, 'likely', 9],
    [OLD, 'high', 12],
    [OLD, 'edition', rowEdition(older)],
  ]);
}

beforeEach(() => {
  store = planStore({ doc: jobOfAnOlderBook() });
});

function write(rows: readonly RateChange[]): void {
  expect(runCommand(store, callOf(setRateRows, { rows }))).not.toHaveProperty('refused');
}
const own = (code: string, low: number, likely: number, high: number): RateChange =>
  ownRate(doc(), code, { low, likely, high }) as RateChange;

describe('a job of an older book', () => {
  test('works with its own copy and is offered what is otherwise', () => {
    expect(rateBook(doc()).rate(EDGE).likely).toBe(9);
    const [only, ...more] = bookDifferences(doc());
    expect(more).toEqual([]);
    expect(only).toMatchObject({ code: EDGE, own: false, was: { likely: 9 }, now: { likely: 15 } });
  });

  test('takes a row, which is one step to undo', () => {
    write(rowsOfBook(doc(), [EDGE]));
    expect(rateBook(doc()).rate(EDGE)).toMatchObject({ low: 8, likely: 15, high: 25, provenance: 'P' });
    expect(bookDifferences(doc())).toEqual([]);
    store.undo();
    expect(rateBook(doc()).rate(EDGE).likely).toBe(9);
    expect(bookDifferences(doc()).length).toBe(1);
  });

  test('leaves a row: its figures stay, and it is told again only when the book changes again', () => {
    write(rowsLeft(doc(), [EDGE]));
    expect(rateBook(doc()).rate(EDGE).likely).toBe(9);
    expect(bookDifferences(doc())).toEqual([]);
    const newer = book.map((row) => (row.code === EDGE ? { ...row, likely: 16 } : row));
    expect(bookDifferences(doc(), newer).map(({ code }) => code)).toEqual([EDGE]);
  });

  test('that took no copy leans on the book and has no differences', () => {
    expect(bookDifferences(docOf(jobCells()))).toEqual([]);
  });

  test('is told of a row that the book did not have then', () => {
    const added = { ...(bookRow(EDGE) as RateRow), code: 'labour/brand_new' };
    expect(bookDifferences(doc(), [added])).toEqual([
      { code: 'labour/brand_new', term: added.term, was: null, now: added, own: false },
    ]);
  });
});

describe('a figure of one’s own', () => {
  test('is not told as a difference, and is never written over when everything else is taken', () => {
    write([own(CORNER, 1, 2, 3)]);
    expect(rateBook(doc()).rate(CORNER)).toMatchObject({ likely: 2, provenance: 'own', source: 'own figure' });
    const told = bookDifferences(doc());
    expect(told.map(({ code }) => code)).toEqual([EDGE]);
  });

  test('is told, as own, when the book’s row has changed since it was set', () => {
    write([own(CORNER, 1, 2, 3)]);
    const newer = book.map((row) => (row.code === CORNER ? { ...row, likely: 4 } : row));
    const told = bookDifferences(doc(), newer).find(({ code }) => code === CORNER);
    expect(told).toMatchObject({ own: true, was: { likely: 2 }, now: { likely: 4 } });
  });

  test('from before editions were written down is left in peace', () => {
    write([own(CORNER, 1, 2, 3)]);
    const without = applyCells(doc(), [['rate:labour-corner', 'edition', undefined]]);
    expect(bookDifferences(without).map(({ code }) => code)).toEqual([EDGE]);
  });

  test('goes back to the book row by row, or all of them at once', () => {
    write([own(CORNER, 1, 2, 3), own('consumables/shot', 1, 2, 3)]);
    expect(changedCodes(doc()).toSorted()).toEqual(['consumables/shot', CORNER, EDGE].toSorted());
    write(rowsOfBook(doc(), [CORNER]));
    expect(rateBook(doc()).rate(CORNER)).toMatchObject({ low: 2, likely: 3, high: 5, provenance: 'P' });
    write(rowsOfBook(doc(), changedCodes(doc())));
    expect(changedCodes(doc())).toEqual([]);
    for (const row of book) expect(rowEdition(rateBook(doc()).rate(row.code)), row.code).toBe(rowEdition(row));
    store.undo();
    expect(changedCodes(doc()).length).toBe(2);
  });

  test('that does not rise is refused and changes nothing', () => {
    const before = doc();
    expect(runCommand(store, callOf(setRateRows, { rows: [own(CORNER, 3, 2, 1)] }))).toEqual({ refused: 'rateOrder' });
    // One figure alone is held against those that stay: 2, 3, 5 minutes.
    const lowAlone = { id: rateRecordId(CORNER), fields: { low: 4 } };
    expect(runCommand(store, callOf(setRateRows, { rows: [lowAlone] }))).toEqual({ refused: 'rateOrder' });
    expect(doc()).toBe(before);
  });
});

describe('a rate that one machine has for itself', () => {
  const code = machineRateCode('machine:large', 'grinder_large');

  test('is used for that machine and no other, until it goes', () => {
    write([own(code, 20, 30, 40)]);
    const { methodRate } = rateBook(doc());
    expect(methodRate('grinder_large', 'machine:large')).toMatchObject({ likely: 30, unit: 'm2/h', provenance: 'own' });
    expect(methodRate('grinder_large', 'machine:other').likely).toBe(55);
    expect(methodRate('grinder_large', null).likely).toBe(55);
    write(rowsOfBook(doc(), [code]));
    expect(rateBook(doc()).methodRate('grinder_large', 'machine:large').likely).toBe(55);
    // Given once more, it is the same record again.
    write([own(code, 20, 31, 40)]);
    expect(rateBook(doc()).methodRate('grinder_large', 'machine:large').likely).toBe(31);
    expect(recordOf(doc(), 'rate', 'rate:machine-large-grinder_large')).not.toBeNull();
  });

  test('of a method that no book has is not made', () => {
    expect(ownRate(doc(), machineRateCode('machine:large', 'no_such'), { low: 1, likely: 2, high: 3 })).toBeNull();
  });
});

describe('an edition', () => {
  test('is another when a figure, the unit or the source is, and the same for the same row', () => {
    const row = bookRow(EDGE) as RateRow;
    const others = [
      { ...row, low: 8.1 },
      { ...row, unit: 'ft/h' },
      { ...row, source: 'FRTR-97' },
      { ...row, provenance: 'R' as const },
      { ...row, fromMemory: true },
    ];
    expect(new Set([row, ...others].map(rowEdition)).size).toBe(others.length + 1);
    const reworded: RateRow = { ...row, note: 'other words', term: 'Other words' };
    expect(rowEdition(reworded)).toBe(rowEdition(row));
    expect(rowEdition(row)).toMatch(/^[0-9a-f]{8}$/);
  });

  test('of the book does not ask in which order its rows stand', () => {
    expect(bookEdition(book.toReversed())).toBe(bookEdition(book));
    expect(bookEdition(book.slice(1))).not.toBe(bookEdition(book));
  });
});
