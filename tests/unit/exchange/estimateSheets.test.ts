import Papa from 'papaparse';
import { describe, expect, test } from 'vitest';
import { recordsOf, type Doc } from '../../../src/model/doc.ts';
import type { Estimate } from '../../../src/model/records/estimate.ts';
import { estimateCsv } from '../../../src/exchange/estimateCsv.ts';
import { estimateNow } from '../../../src/exchange/estimateNow.ts';
import { buildUpRows, extraRows, toTheCent } from '../../../src/exchange/estimateRows.ts';
import { estimateSheets } from '../../../src/exchange/estimateSheets.ts';
import { takeoffCsv } from '../../../src/exchange/csv.ts';
import { defaultMoneyCells } from '../../../src/takeoff/rates/defaults.ts';
import { requiredCsp } from '../../../src/takeoff/profile.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import { estimateText } from '../../../src/words/estimateWords.ts';
import { FLOOR, set, withCells } from '../../support/jobPlans.ts';
import { kitchen, showroom } from '../../support/wholeJobs.ts';

const taxed = (doc: Doc): Doc =>
  withCells(doc, defaultMoneyCells(), set('pricing:job', 'taxPct', 8.25), set('pricing:job', 'taxOn', 'total'));

function estimateOf(doc: Doc): Estimate {
  const { frozen } = estimateNow(doc);
  if (!frozen) throw new Error('there is no price');
  return { ...frozen, number: '26-007-1', issuedOn: '2030-02-01' } as unknown as Estimate;
}

/** Words of the sheets in reading order, markup taken out. */
function wordsOf(estimate: Estimate, reader: 'customer' | 'house'): string {
  return estimateSheets(estimate, 'A4', reader)
    .map(({ svg }) => svg.replaceAll(/<[^>]+>/g, ' '))
    .join(' ');
}

describe.each([
  ['showroom, metric', taxed(showroom())],
  ['kitchen, in feet', taxed(kitchen())],
])('the estimate of a %s', (_, doc) => {
  const estimate = estimateOf(doc);
  const total = toTheCent(estimate.totalMinor, 'USD').replace(' USD', '');

  test('says the same total on paper, as CSV and in the takeoff, to the cent', () => {
    expect(wordsOf(estimate, 'customer')).toContain(total);
    expect(wordsOf(estimate, 'house')).toContain(total);
    const main = estimate.totalMinor / 100;
    const rows = Papa.parse<string[]>(estimateCsv(estimate)).data;
    expect(Number(rows.find((row) => row[1] === 'Price with tax')?.[4])).toBe(main);
    const table = Papa.parse<string[]>(takeoffCsv(doc, takeoff(doc, FLOOR), 'USD')).data;
    const price = table.find((row) => row[1] === 'Price with tax');
    expect(price?.map(Number)).toContain(main);
  });

  test('adds up by eye: zones to the price, price and tax to the total, costs to the price', () => {
    const likely = (key: string): number =>
      buildUpRows(estimate).find((row) => row.key.startsWith(`${key}|`))?.range.likely ?? Number.NaN;
    const zones = (estimate.parts ?? []).reduce((sum, part) => sum + part.amountMinor, 0);
    expect(zones).toBe(likely('money.price'));
    expect(likely('money.price') + likely('money.tax')).toBe(estimate.totalMinor);
    const rows = buildUpRows(estimate);
    const direct = rows.findIndex((row) => row.key.startsWith('money.direct'));
    const costs = rows.slice(0, direct).reduce((sum, row) => sum + row.range.likely, 0);
    expect(costs).toBe(likely('money.direct'));
  });

  test('the customer reads the profile of each zone: that of the zone record, else that of its system', () => {
    const asked = recordsOf(doc, 'zone').flatMap((zone) => requiredCsp(zone) ?? []);
    const profiles = asked.map((csp) => estimateText.profile(csp.min, csp.max));
    const said = (estimate.parts ?? []).flatMap(({ name }) => /CSP \d+( to \d+)?$/.exec(name)?.[0] ?? []);
    expect(said.toSorted()).toEqual(profiles.toSorted());
    expect(said.filter((profile) => !wordsOf(estimate, 'customer').includes(profile))).toEqual([]);
    expect(said.length).toBeGreaterThan(0);
  });

  test.each(['A4', 'letter'] as const)('the caution never stands alone on a sheet, %s', (sheet) => {
    const last = estimateSheets(estimate, sheet, 'customer').at(-1)?.svg ?? '';
    expect(last).toContain('Local law');
    expect(last).toContain(estimate.exclusions?.at(-1));
  });

  test('the customer reads no cost, no overhead and no margin', () => {
    expect(wordsOf(estimate, 'customer')).not.toMatch(/margin|overhead|contingency|direct cost|labour/i);
    expect(wordsOf(estimate, 'house')).toMatch(/margin/i);
  });

  test('the customer reads what it rests on, what is not in it, and that prices are samples', () => {
    const words = wordsOf(estimate, 'customer');
    for (const sentence of ['Moving joints are kept.', 'Structural repair', 'With sample wages and prices.']) {
      expect(words).toContain(sentence);
    }
  });

  test.each(['A4', 'letter'] as const)('stands upright on %s', (sheet) => {
    for (const page of estimateSheets(estimate, sheet, 'customer')) {
      expect([page.widthMm, page.heightMm]).toEqual(sheet === 'A4' ? [210, 297] : [215.9, 279.4]);
    }
  });
});

test('extras are by the metre, or by the foot where the job is: 0.3048 m in a foot, NIST SP 811', () => {
  const metric = estimateOf(taxed(showroom()));
  const of = (units: 'metric' | 'imperial') =>
    extraRows({ lines: metric.lines, units }).find(({ key }) => key.startsWith('extra.crackMetre'));
  expect(of('metric')?.per).toBe('m');
  expect(of('imperial')?.per).toBe('ft');
  expect(of('imperial')?.range.likely).toBe(Math.round((of('metric')?.range.likely ?? 0) * 0.3048));
});

test('a long list goes on to further sheets, numbered', () => {
  const exclusions = Array.from({ length: 90 }, (_, i) => `No ${i}`);
  const estimate = { ...estimateOf(taxed(showroom())), exclusions } as unknown as Estimate;
  const pages = estimateSheets(estimate, 'letter', 'customer');
  expect(pages.length).toBeGreaterThan(1);
  expect(pages[1]?.svg).toContain(`Page 2 of ${pages.length}`);
});
