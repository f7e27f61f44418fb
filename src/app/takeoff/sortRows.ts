import type { Range } from '../../takeoff/line.ts';
import type { LineTable, TableRow } from '../../takeoff/lineTable.ts';
import type { WorkGroup, WorkRow } from '../../takeoff/workList.ts';

/** A column and which end of it comes first. Columns: 'work', 'quantity', 'total', low, likely, high, or a zone's id. */
export interface Sort {
  readonly by: string;
  readonly order: 'ascending' | 'descending';
}

/** The column of names; all others are numbers. */
export const BY_NAME = 'work';

/**
 * What a press on a heading does: names from A, numbers from the largest; pressed again the other end first; a third
 * time the order of the work comes back, which is null.
 */
export function nextSort(sort: Sort | null, by: string): Sort | null {
  const first = by === BY_NAME ? 'ascending' : 'descending';
  if (sort?.by !== by) return { by, order: first };
  if (sort.order !== first) return null;
  return { by, order: first === 'ascending' ? 'descending' : 'ascending' };
}

type Value = number | string | null;

/** Rows by a value; equal ones stay as they were, those without one come last whichever end is first. */
export function sorted<T>(rows: readonly T[], order: Sort['order'], valueOf: (row: T) => Value): readonly T[] {
  const sign = order === 'ascending' ? 1 : -1;
  return rows.toSorted((a, b) => {
    const [left, right] = [valueOf(a), valueOf(b)];
    if (left === null || right === null) return Number(left === null) - Number(right === null);
    if (typeof left === 'string' || typeof right === 'string') {
      return sign * String(left).localeCompare(String(right), 'en', { numeric: true });
    }
    return sign * (left - right);
  });
}

/** The table with the rows of each trade in the order that is asked for. */
export function sortedTable(
  table: LineTable,
  sort: Sort | null,
  which: keyof Range,
  nameOf: (row: TableRow) => string,
): LineTable {
  if (!sort) return table;
  const valueOf = (row: TableRow): Value => {
    if (sort.by === BY_NAME) return nameOf(row);
    const cell = sort.by === 'total' ? row.total : [...row.cells].find(([zone]) => zone === sort.by)?.[1];
    return cell?.quantity?.[which] ?? null;
  };
  const groups = table.groups.map((group) => ({ ...group, rows: sorted(group.rows, sort.order, valueOf) }));
  return { ...table, groups };
}

/** The list of work with the rows of each group in the order that is asked for; the groups stay where they are. */
export function sortedWork(
  groups: readonly WorkGroup[],
  sort: Sort | null,
  nameOf: (row: WorkRow) => string,
): readonly WorkGroup[] {
  if (!sort) return groups;
  const valueOf = (row: WorkRow): Value => {
    switch (sort.by) {
      case BY_NAME:
        return nameOf(row);
      case 'quantity':
        return row.worked?.quantity.likely ?? null;
      case 'low':
      case 'likely':
      case 'high':
        return row.hours.quantity?.[sort.by] ?? null;
      default:
        return null;
    }
  };
  return groups.map((group) => ({ ...group, rows: sorted(group.rows, sort.order, valueOf) }));
}
