import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { applyCells, EMPTY_DOC } from '../../../src/model/doc.ts';
import { checkRecord } from '../../../src/model/records/all.ts';
import { partOf } from '../../../src/model/parts.ts';
import { defaultMachine } from '../../../src/takeoff/fleet.ts';
import { abrasives } from '../../../src/takeoff/rates/abrasives.ts';
import { book } from '../../../src/takeoff/rates/book.ts';
import { conductors } from '../../../src/takeoff/rates/conductors.ts';
import { defaultMoneyCells, defaultRateCells } from '../../../src/takeoff/rates/defaults.ts';
import { findingRows } from '../../../src/takeoff/rates/findings.ts';
import { limits } from '../../../src/takeoff/rates/limits.ts';
import { machineBodies } from '../../../src/takeoff/rates/machineBodies.ts';
import { methods, methodOf } from '../../../src/takeoff/rates/methods.ts';
import { noiseHours } from '../../../src/takeoff/rates/noiseHours.ts';
import { profiles } from '../../../src/takeoff/rates/profiles.ts';
import { rateBook } from '../../../src/takeoff/rates/rateBook.ts';
import { respirators } from '../../../src/takeoff/rates/respirators.ts';
import { shotSizes } from '../../../src/takeoff/rates/shotSizes.ts';
import { SILICA_FROM } from '../../../src/takeoff/rates/silicaTable.ts';
import { surveyReadings } from '../../../src/takeoff/rates/surveyReadings.ts';
import { systems } from '../../../src/takeoff/rates/systems.ts';
import { waits } from '../../../src/takeoff/rates/waits.ts';
import { testCounts } from '../../../src/takeoff/rates/testCounts.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import {
  docOf,
  FLOOR,
  jobCells,
  recipeCells,
  record,
  rectangle,
  slabCells,
  withCells,
  zoneCells,
} from '../../support/jobPlans.ts';
import { richJob } from '../../support/richJob.ts';

const sources = readFileSync(new URL('../../../docs/sources.md', import.meta.url), 'utf8');
const listed = new Set([...sources.matchAll(/^\| ([^|]+) \|/gm)].map((match) => match[1]?.trim()));
/** Said by what made the number, not by a document. */
const PLAIN = ['the plan', 'set in the job', 'arithmetic', 'line', 'invented sample, set yours'];

function isNamed(source: string): boolean {
  return PLAIN.includes(source) || listed.has(source.split(' ')[0]) || listed.has(source);
}

describe('the rate book', () => {
  test('has every row with low, likely and high in that order, a unit and a source that docs/sources.md lists', () => {
    expect(book.length).toBeGreaterThan(methods.length + waits.length + 80);
    expect(new Set(book.map((row) => row.code)).size).toBe(book.length);
    for (const row of book) {
      expect(row.low, row.code).toBeLessThanOrEqual(row.likely);
      expect(row.likely, row.code).toBeLessThanOrEqual(row.high);
      expect(row.unit, row.code).not.toBe('');
      expect(isNamed(row.source), `${row.code}: ${row.source}`).toBe(true);
    }
  });

  test('tables of methods, systems, abrasives and findings name listed sources', () => {
    const rows = [
      ...systems,
      ...abrasives,
      ...findingRows,
      ...machineBodies,
      ...surveyReadings,
      ...limits,
      ...testCounts,
      ...conductors,
      ...noiseHours,
      ...respirators,
      SILICA_FROM,
      ...methods.map((row) => row.cspFrom),
      ...profiles.flatMap((row) => [row.madeByFrom, row.depthFrom]),
      ...shotSizes.flatMap((row) => [row.sizeFrom, row.cspFrom]),
    ];
    for (const row of rows) expect(isNamed(row.source), row.source).toBe(true);
  });

  test('a method that a finding or a body names is there', () => {
    const named = findingRows.flatMap((row) => row.method ?? []);
    for (const method of named) expect(methodOf(method), method).not.toBeNull();
    for (const row of machineBodies) expect(methodOf(row.method), row.method).not.toBeNull();
    expect(methods.length).toBe(32);
    expect(findingRows.length).toBe(27);
  });

  test('every term of a takeoff names a source that is listed', () => {
    for (const line of takeoff(richJob(), FLOOR).lines) {
      for (const term of line.working.terms) expect(isNamed(term.source), `${line.key}: ${term.source}`).toBe(true);
    }
  });
});

describe('records of a new job', () => {
  test('parse, money is money and rates are not', () => {
    const rates = applyCells(EMPTY_DOC, defaultRateCells());
    const money = applyCells(EMPTY_DOC, defaultMoneyCells());
    expect(rates.size).toBe(book.length);
    for (const [id, fields] of [...rates, ...money]) expect(checkRecord(id, fields), id).toBeNull();
    for (const [id] of rates) expect(partOf(id, 'low')).toBe('plan');
    for (const [id] of money) expect(partOf(id, 'amount')).toBe('money');
  });

  test('price the job as the book does', () => {
    const doc = docOf(jobCells(), slabCells(rectangle(7_000, 6_000)));
    const price = (of: typeof doc) => takeoff(of, FLOOR).lines.find((line) => line.code === 'money.price')?.quantity;
    expect(price(withCells(doc, defaultRateCells(), defaultMoneyCells()))).toEqual(price(doc));
  });
});

test('the job speaks before the book, and a rate of its own says so', () => {
  const own = record('rate:mine', {
    code: 'methods/grinder_small',
    term: 'Our grinder',
    unit: 'm2/h',
    low: 20,
    likely: 40,
    high: 60,
    source: 'own',
    provenance: 'own',
    fromMemory: false,
  });
  const doc = docOf(jobCells(), slabCells(rectangle(12_000, 8_000)));
  const hours = (of: typeof doc) => takeoff(of, FLOOR).lines.find((line) => line.code === 'hours.machine');
  expect(rateBook(withCells(doc, own)).rate('methods/grinder_small')).toMatchObject({
    likely: 40,
    record: 'rate:mine',
  });
  const [before, after] = [hours(doc), hours(withCells(doc, own))];
  expect(after?.quantity.likely).toBeCloseTo(((before?.quantity.likely ?? 0) * 25) / 40, 9);
  expect(after?.working.terms.find((term) => term.name === 'rate')).toMatchObject({
    value: { low: 60, likely: 40, high: 20 },
    provenance: 'own',
    from: 'rate:mine',
  });
});

test('prices are samples until they are confirmed, and a tool without a price is said', () => {
  const doc = docOf(jobCells(), slabCells(rectangle(7_000, 6_000)));
  expect(takeoff(doc, FLOOR).notices).toEqual(['samplePrices']);
  const confirmed = withCells(doc, defaultMoneyCells(), [['pricing:job', 'confirmedOn', '2030-01-01']]);
  expect(takeoff(confirmed, FLOOR).notices).toEqual([]);
  expect(takeoff(richJob(), FLOOR).notAnOffer).toEqual(['priceMissing']);
});

test('two machines of one method: each is worked at its own rate, the second opinion by lanes too', () => {
  const machine = defaultMachine('grinder_small');
  if (!machine) throw new Error('no machine');
  const of = { code: 'machine/a/grinder_small', term: 'x', unit: 'm2/h', source: 'own figure', provenance: 'own' };
  const doc = docOf(
    jobCells(),
    slabCells(rectangle(12_000, 8_000)),
    zoneCells('zone:1', rectangle(12_000, 8_000), { recipe: 'recipe:a' }),
    record('machine:a', { ...machine, name: 'Ours' }),
    recipeCells('a', { method: 'grinder_small', machine: 'machine:a' }),
  );
  const own = record('rate:of-a', { ...of, low: 20, likely: 50, high: 60, fromMemory: false });
  const rateIn = (plan: typeof doc) =>
    takeoff(plan, FLOOR)
      .lines.filter((line) => ['hours.machine', 'hours.lanes'].includes(line.code))
      .map((line) => line.working.terms.find((term) => term.name === 'rate')?.value.likely);
  expect(new Set(rateIn(doc))).toEqual(new Set([25]));
  expect(new Set(rateIn(withCells(doc, own)))).toEqual(new Set([50]));
  // Of another machine: nothing to do with this one.
  const other = record('rate:of-b', {
    ...of,
    code: 'machine/b/grinder_small',
    low: 1,
    likely: 2,
    high: 3,
    fromMemory: false,
  });
  expect(new Set(rateIn(withCells(doc, other)))).toEqual(new Set([25]));
});
