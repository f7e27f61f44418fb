import fc from 'fast-check';
import { expect, test } from 'vitest';
import { ratesCsv } from '../../src/exchange/rateCsv.ts';
import { readRateCsv } from '../../src/exchange/readRateCsv.ts';
import { callOf, runCommand } from '../../src/edit/run.ts';
import { setRateRows } from '../../src/edit/setRateRows.ts';
import { applyCells, type Doc } from '../../src/model/doc.ts';
import { planStore } from '../../src/model/store.ts';
import { book } from '../../src/takeoff/rates/book.ts';
import { defaultRateCells } from '../../src/takeoff/rates/defaults.ts';
import { ownRate, type RateChange } from '../../src/takeoff/rates/rateChanges.ts';
import { rateBook } from '../../src/takeoff/rates/rateBook.ts';
import { docOf, jobCells } from '../support/jobPlans.ts';

const fresh: Doc = applyCells(docOf(jobCells()), defaultRateCells());

const figure = fc.double({ min: 1e-4, max: 1e6, noNaN: true, noDefaultInfinity: true });
const own = fc.record({
  code: fc.constantFrom(...book.map(({ code }) => code)),
  bounds: fc.tuple(figure, figure, figure),
  source: fc.oneof(
    fc.string({ unit: 'grapheme' }),
    fc.constantFrom('=1+1', "'=1", ' "a, b"', 'a\r\nb', '\ufeffx', ';;'),
  ),
});
const owns = fc.uniqueArray(own, { selector: ({ code }) => code, minLength: 1, maxLength: 12 });

function jobWith(rows: readonly { code: string; bounds: readonly number[]; source: string }[]): Doc {
  const store = planStore({ doc: fresh });
  const changes = rows.flatMap(({ code, bounds, source }): RateChange[] => {
    const [low = 1, likely = 1, high = 1] = bounds.toSorted((a, b) => a - b);
    return [ownRate(store.getState(), code, { low, likely, high }, source)].filter((each) => each !== null);
  });
  runCommand(store, callOf(setRateRows, { rows: changes }));
  return store.getState();
}

test('a rate book that is saved and read in another job is the same book there, and reading it twice changes nothing', () => {
  fc.assert(
    fc.property(owns, fc.constantFrom('metric' as const, 'imperial' as const), (rows, units) => {
      const from = jobWith(rows);
      const text = ratesCsv(from, units);
      expect(readRateCsv(from, text)).toEqual({ ok: true, changes: [], rows: book.length });

      const store = planStore({ doc: fresh });
      const read = readRateCsv(store.getState(), text);
      if (!read.ok) throw new Error(JSON.stringify(read.faults[0]));
      if (read.changes.length > 0) runCommand(store, callOf(setRateRows, { rows: read.changes }));
      for (const { code } of rows) {
        const [was, now] = [from, store.getState()].map((doc) => rateBook(doc).rate(code));
        const close = (a = 0, b = 1): boolean => Math.abs(a - b) <= 1e-9 * Math.abs(a);
        expect(close(was?.low, now?.low) && close(was?.likely, now?.likely) && close(was?.high, now?.high)).toBe(true);
        expect([now?.source, now?.provenance]).toEqual([was?.source, was?.provenance]);
      }
      expect(readRateCsv(store.getState(), text)).toMatchObject({ ok: true, changes: [] });
    }),
    { numRuns: 60 },
  );
});

test('whatever is opened as a table of rates, it is read or refused, and never throws', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme', maxLength: 400 }), (text) => {
      const read = readRateCsv(fresh, text);
      expect(read.ok ? read.changes.length >= 0 : read.faults.length > 0).toBe(true);
    }),
  );
});
