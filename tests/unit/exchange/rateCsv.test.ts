import Papa from 'papaparse';
import { describe, expect, test } from 'vitest';
import { ratesCsv } from '../../../src/exchange/rateCsv.ts';
import { readRateCsv, type ReadRates } from '../../../src/exchange/readRateCsv.ts';
import { applyCells, cellsFor, type Doc } from '../../../src/model/doc.ts';
import { book } from '../../../src/takeoff/rates/book.ts';
import { defaultRateCells } from '../../../src/takeoff/rates/defaults.ts';
import { rateCsvSentence } from '../../../src/words/rateWords.ts';
import { docOf, jobCells } from '../../support/jobPlans.ts';

const HEAD = 'Code,Unit,Low,Likely,High';
const job: Doc = applyCells(docOf(jobCells()), defaultRateCells());

const read = (...lines: string[]): ReadRates => readRateCsv(job, [HEAD, ...lines].join('\n'));
const faultsOf = (result: ReadRates): string[] => (result.ok ? [] : result.faults.map(rateCsvSentence));
const changesOf = (result: ReadRates) => (result.ok ? result.changes : []);

describe('the rate book as CSV', () => {
  const rows = Papa.parse<Record<string, string>>(ratesCsv(job, 'metric'), { header: true }).data;

  test('has every rate with unit, source and how it is known', () => {
    expect(rows.length).toBe(book.length);
    const edge = rows.find((row) => row['Code'] === 'labour/edge_hand');
    expect(edge).toMatchObject({
      Unit: 'm/h',
      Low: '8',
      Likely: '15',
      High: '25',
      Provenance: 'P',
      'From memory': 'no',
    });
    expect(edge?.['Source']).toBe('common practice, no source');
    expect(rows.find((row) => row['Code'] === 'labour/move_goods')?.['Unit']).toBe('min per m2');
  });

  test('is in feet where the job is; 15 m/h are 49.2125984252 ft/h (1 ft = 0.3048 m)', () => {
    const feet = Papa.parse<Record<string, string>>(ratesCsv(job, 'imperial'), { header: true }).data;
    const edge = feet.find((row) => row['Code'] === 'labour/edge_hand');
    expect(edge).toMatchObject({ Unit: 'ft/h', Likely: '49.2125984252' });
  });

  test.each(['metric', 'imperial'] as const)('read again changes nothing (%s)', (units) => {
    expect(readRateCsv(job, ratesCsv(job, units))).toEqual({ ok: true, changes: [], rows: book.length });
  });

  // CWE-1236: cells that begin with = + - @, tab or return run as formulas in spreadsheets.
  test('words of a rate cannot be taken for a formula, and come back as they were', () => {
    const own = { code: 'labour/corner', term: '=1+1', unit: 'min each', low: 1, likely: 2, high: 3 };
    const cells = cellsFor('rate:labour-corner', { ...own, source: "'=2+2", provenance: 'own', fromMemory: false });
    const doc = applyCells(job, cells);
    const text = ratesCsv(doc, 'metric');
    expect(text).toContain("'=1+1");
    expect(text).toContain("''=2+2");
    expect(readRateCsv(doc, text)).toMatchObject({ ok: true, changes: [] });
  });
});

describe('reading a table of rates', () => {
  test('takes a changed figure as the user’s own, whatever its source says', () => {
    const [change, ...more] = changesOf(read('labour/edge_hand,m/h,9,16,26', 'labour/corner,min each,2,3,5'));
    expect(more).toEqual([]);
    expect(change).toMatchObject({
      id: 'rate:labour-edge_hand',
      fields: { low: 9, likely: 16, high: 26, unit: 'm/h', source: 'own figure', provenance: 'own', fromMemory: false },
    });
  });

  test('a source of one’s own is kept, the source of the book does not stand behind another figure', () => {
    const head = `${HEAD},Source,Provenance`;
    const text = `${head}\nlabour/edge_hand,m/h,9,16,26,FRTR-97,R\nlabour/corner,min each,1,2,3,"common practice, no source",P`;
    expect(changesOf(readRateCsv(job, text)).map(({ fields }) => [fields['source'], fields['provenance']])).toEqual([
      ['FRTR-97', 'own'],
      ['own figure', 'own'],
    ]);
  });

  test('takes feet for metres, semicolons and decimal commas as spreadsheets of other countries write them', () => {
    const semicolons = '\ufeffCode;Unit;Low;Likely;High\r\nlabour/edge_hand;ft/h;30,5;50;80\r\n';
    const [change] = changesOf(readRateCsv(job, semicolons));
    expect(change?.fields['low']).toBeCloseTo(30.5 * 0.3048, 12);
    expect(change?.fields['likely']).toBeCloseTo(50 * 0.3048, 12);
  });

  test('figures of the book bring the row of the book back', () => {
    const own = { code: 'labour/corner', term: 'Corner', unit: 'min each', low: 1, likely: 2, high: 3 };
    const doc = applyCells(
      job,
      cellsFor('rate:labour-corner', { ...own, source: 'own figure', provenance: 'own', fromMemory: false }),
    );
    const result = readRateCsv(doc, `${HEAD}\nlabour/corner,min each,2,3,5`);
    // Left empty, source and provenance are those of the row.
    expect(changesOf(result)[0]?.fields).toMatchObject({ likely: 3, provenance: 'P' });
  });

  test.each([
    ['labour/edge_hand,m2/h,9,16,26', 'Line 2: "m2/h" is not the unit of this rate. Write m/h or ft/h.'],
    [
      'labour/no_such,m/h,9,16,26',
      'Line 2: no rate has the code "labour/no_such". Copy the code from a saved rate book.',
    ],
    [',m/h,9,16,26', 'Line 2: the code is missing. Copy it from a saved rate book.'],
    ['labour/edge_hand,m/h,26,16,9', 'Line 2: low, likely and high have to rise in that order.'],
    ['labour/edge_hand,m/h,0,16,26', 'Line 2: Low: 0 is no rate. It has to be more than 0.'],
    ['labour/edge_hand,m/h,9,fast,26', 'Line 2: Likely: "fast" is not a number. Type it like 12.5.'],
    ['labour/edge_hand,m/h,9,16,', 'Line 2: High: Type a number, for example 12.5.'],
    ['labour/edge_hand,m/h,9,"1,600",2600', 'Line 2: Likely: "1,600" can be read two ways. Type 1600 or 1.600.'],
    [
      'machine/gone/grinder_small,m2/h,9,16,26',
      'Line 2: this is the rate of a machine that this job does not have. Take the line out, or add the machine first.',
    ],
  ])('%s', (line, sentence) => {
    const [only, ...more] = faultsOf(read(line));
    expect(more).toEqual([]);
    expect(only).toBe(sentence);
  });

  test('one bad line, and nothing of the file is taken; each bad line is told with its own number', () => {
    const result = read(
      'labour/edge_hand,m/h,9,16,26',
      '',
      '"labour/corner","min each","2","3\n","5"',
      'labour/drain,min each,6,x,20',
      'labour/edge_hand,m/h,9,16,27',
    );
    expect(result.ok).toBe(false);
    // The third record is written over two lines.
    expect(faultsOf(result).map((sentence) => sentence.slice(0, 7))).toEqual(['Line 6:', 'Line 7:']);
    expect(faultsOf(result)[1]).toContain('stands in line 2 already');
  });

  test('a file without the columns, without rows, or with a provenance of its own making is told', () => {
    expect(faultsOf(readRateCsv(job, 'Code,Low\nlabour/corner,1'))[0]).toContain('no column named Unit, Likely, High');
    expect(faultsOf(readRateCsv(job, ''))[0]).toContain('no rates in this file');
    expect(faultsOf(readRateCsv(job, HEAD))[0]).toContain('no rates in this file');
    expect(faultsOf(readRateCsv(job, `${HEAD},Provenance\nlabour/corner,min each,1,2,3,sure`))[0]).toContain('"sure"');
    expect(faultsOf(readRateCsv(job, `${HEAD},Provenance\nlabour/corner,min each,1,2,3,"P`))[0]).toContain('quotation');
    expect(faultsOf(readRateCsv(job, 'x'.repeat(2_000_001)))[0]).toContain('too long');
  });
});
