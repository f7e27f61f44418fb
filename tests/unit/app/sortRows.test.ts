/** Sorting of the takeoff's tables. Order is arithmetic; which end comes first is our own choice. */
import { expect, test } from 'vitest';
import { nextSort, sorted, sortedTable, sortedWork, type Sort } from '../../../src/app/takeoff/sortRows.ts';
import { lineTable } from '../../../src/takeoff/lineTable.ts';
import { takeoff } from '../../../src/takeoff/takeoff.ts';
import { workList } from '../../../src/takeoff/workList.ts';
import { FLOOR } from '../../support/jobPlans.ts';
import { warehouse } from '../../support/wholeJobs.ts';

const result = takeoff(warehouse(), FLOOR);

test('a press sorts from the largest, a second from the smallest, a third gives the order of the work back', () => {
  const first = nextSort(null, 'total');
  const second = nextSort(first, 'total');
  expect([first, second, nextSort(second, 'total')]).toEqual([
    { by: 'total', order: 'descending' },
    { by: 'total', order: 'ascending' },
    null,
  ]);
});

test('names begin with A, and another column begins anew', () => {
  const byName = nextSort(null, 'work');
  expect(byName).toEqual({ by: 'work', order: 'ascending' });
  expect(nextSort(byName, 'likely')).toEqual({ by: 'likely', order: 'descending' });
});

test('those without a value come last whichever end is first, equal ones stay as they were', () => {
  const rows = [
    ['a', 1],
    ['b', null],
    ['c', 3],
    ['d', 1],
  ] as const;
  const names = (order: Sort['order']): string =>
    sorted(rows, order, ([, value]) => value)
      .map(([name]) => name)
      .join('');
  expect([names('ascending'), names('descending')]).toEqual(['adcb', 'cadb']);
});

test('T2 comes before T10', () => {
  expect(sorted(['T10', 'T2'], 'ascending', (name) => name)).toEqual(['T2', 'T10']);
});

test('the table is sorted within each trade, by any zone and by the total, and loses no row', () => {
  const table = lineTable(result);
  for (const by of ['total', ...table.zones.map(({ id }) => id)]) {
    const shown = sortedTable(table, { by, order: 'descending' }, 'high', ({ key }) => key);
    expect(shown.groups.map(({ trade }) => trade)).toEqual(table.groups.map(({ trade }) => trade));
    for (const [i, group] of shown.groups.entries()) {
      expect(new Set(group.rows)).toEqual(new Set(table.groups[i]?.rows));
      const values = group.rows.flatMap((row) => {
        const cell = by === 'total' ? row.total : row.cells.get(by as 'rest');
        return cell?.quantity?.high ?? [];
      });
      expect(values).toEqual(values.toSorted((a, b) => b - a));
    }
  }
  expect(sortedTable(table, null, 'likely', () => '')).toBe(table);
});

test('the list of work is sorted within its headings', () => {
  const groups = workList(result, 'zone');
  const shown = sortedWork(groups, { by: 'likely', order: 'ascending' }, ({ key }) => key);
  expect(shown.map(({ key }) => key)).toEqual(groups.map(({ key }) => key));
  for (const [i, group] of shown.entries()) {
    expect(new Set(group.rows)).toEqual(new Set(groups[i]?.rows));
    const hours = group.rows.map((row) => row.hours.quantity?.likely ?? 0);
    expect(hours).toEqual(hours.toSorted((a, b) => a - b));
  }
});
