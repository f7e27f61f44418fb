import { expect, test } from 'vitest';
import { LOOK_UPS, lookUpRows } from '../../../src/app/rates/lookUpTables.ts';
import { RATE_TABLES, TABLE_GROUPS, tableOf } from '../../../src/app/rates/rateTables.ts';
import { book } from '../../../src/takeoff/rates/book.ts';
import { methods } from '../../../src/takeoff/rates/methods.ts';
import { removals } from '../../../src/takeoff/rates/removals.ts';

test('every rate of the book stands in a table that is listed once, and every table has rates', () => {
  expect(Object.values(TABLE_GROUPS).flat().toSorted()).toEqual([...RATE_TABLES].toSorted());
  const filled = new Set(book.map(tableOf));
  expect([...filled, 'machine'].toSorted()).toEqual([...RATE_TABLES].toSorted());
});

test.each([
  ['methods/grinder_small', 'm2/h', 'grind'],
  ['methods/crack_chase', 'm/h', 'repairs'],
  ['labour/edge_hand', 'm/h', 'edges'],
  ['labour/set_up', 'h per crew', 'site'],
  ['factors/room/32', 'x rate', 'room'],
  ['consumables/diamond_set_medium', 'm2 per set', 'tooling'],
  ['consumables/cartridge', 'mL', 'goods'],
  ['removal/grinder_small', 'mm', 'removal'],
  ['machine/a/grinder_small', 'm2/h', 'machine'],
])('%s is looked for in %s %s', (code, unit, table) => {
  expect(tableOf({ code, unit })).toBe(table);
});

test.each(LOOK_UPS)('%s: each row says something, once, and who says so', (table) => {
  const rows = lookUpRows(table);
  expect(rows.length).toBeGreaterThan(5);
  const keys = rows.map((row) => `${row.name}|${row.says}|${row.more ?? ''}`);
  expect(new Set(keys).size).toBe(keys.length);
  for (const row of rows) {
    expect(row.says, row.name).not.toMatch(/^$|undefined|null|NaN/);
    expect(row.more ?? '', row.name).not.toMatch(/undefined|null|NaN/);
    expect(row.source, row.name).not.toBe('');
  }
});

test('what a pass takes off is a rate of every method that takes any (0.3 mm likely for a planetary grinder)', () => {
  expect(removals.length).toBe(methods.filter((row) => row.removalMm[1] > 0).length);
  expect(removals.find(({ code }) => code === 'removal/grinder_small')?.likely).toBeCloseTo(0.3, 12);
});
