import Papa from 'papaparse';
import { describe, expect, test } from 'vitest';
import { kindText, orderCsv, orderRows, orderTabbed } from '../../../src/exchange/orderRows.ts';
import { orderTable } from '../../../src/takeoff/orderTable.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import { KG_PER_LB, L_PER_GAL } from '../../../src/model/units.ts';
import { itemWords } from '../../../src/words/orderWords.ts';
import { FLOOR, set, withCells } from '../../support/jobPlans.ts';
import { richJob } from '../../support/richJob.ts';

const doc = richJob();
const result = takeoff(doc, FLOOR);
const rows = orderRows(doc, result);

/** The row of an item itself: its kinds follow in rows of their own. */
function rowOf(all: typeof rows, item: string): readonly (string | number | null)[] {
  const found = all.find((cells) => cells[1] === itemWords[item] && cells[2] === null);
  if (!found) throw new Error(`no row ${item}`);
  return found;
}

describe('the list as rows', () => {
  test('has a head and as many cells in every row', () => {
    const [head] = rows;
    expect(head?.slice(0, 3)).toEqual(['Group', 'Item', 'Kind']);
    for (const cells of rows) expect(cells.length).toBe(head?.length);
    expect(rows.length).toBeGreaterThan(15);
  });

  test('says the numbers of the list on screen', () => {
    for (const { item, order, left } of orderTable(result).flatMap((group) => group.rows)) {
      const cells = rowOf(rows, item.item);
      expect(cells.slice(7, 10), item.item).toEqual([order.quantity.low, order.quantity.likely, order.quantity.high]);
      expect(cells[11] as number, item.item).toBeCloseTo(left.quantity.likely, 4);
      expect(cells.slice(4, 5)[0] as number, item.item).toBeGreaterThan(0);
    }
  });

  test('is in the units of the job', () => {
    const feet = withCells(doc, set('job:test', 'units', 'imperial'));
    const inFeet = orderRows(feet, takeoff(feet, FLOOR));
    const [metric, imperial] = [rowOf(rows, 'dustBag'), rowOf(inFeet, 'dustBag')];
    expect([metric[6], imperial[6]]).toEqual(['kg', 'lb']);
    expect((imperial[4] as number) * KG_PER_LB).toBeCloseTo(metric[4] as number, 3);
    expect(imperial[8]).toBe(metric[8]);
    expect((rowOf(inFeet, 'crackFiller')[4] as number) * L_PER_GAL).toBeCloseTo(
      rowOf(rows, 'crackFiller')[4] as number,
      3,
    );
    expect(inFeet.flat().filter((cell) => typeof cell === 'string' && / mm\b/.test(cell))).toEqual([]);
  });

  test('goes into a file as CSV and over the clipboard with tabs, the same cells', () => {
    const csv = Papa.parse<string[]>(orderCsv(doc, result)).data;
    const tabbed = Papa.parse<string[]>(orderTabbed(doc, result), { delimiter: '\t' }).data;
    expect(csv).toEqual(tabbed);
    expect(csv.length).toBe(rows.length);
    expect(csv[1]).toEqual(rows[1]?.map((cell) => String(cell ?? '')));
  });

  test('text that begins like a formula opens as text', () => {
    const job = withCells(doc, set('zone:hall', 'name', '=1+1'), set('zone:hall', 'tag', '=2'));
    expect(orderCsv(job, takeoff(job, FLOOR))).toMatch(/'=2 =1\+1/);
  });
});

describe('a kind in words', () => {
  test('grit and bond, and the machine they sit on', () => {
    expect(kindText(doc, 'book:grinder_small|d16|bondSoft', 'metric')).toEqual({
      text: 'grit 16-20, soft bond',
      on: 'Planetary walk-behind grinder to 550 mm',
    });
    expect(kindText(doc, 'book:scarifier_small', 'metric').on).toBeNull();
    expect(kindText(doc, '15 mm', 'imperial').text).toBe('0.59 in');
  });
});
