import { lineTable, type LineTable, type TableCell, type TableRow } from '../../takeoff/lineTable.ts';
import type { Takeoff } from '../../takeoff/port.ts';

/**
 * The table as the screen shows it: what is taken off stands in one row that Why spells out, and the net floor of the
 * whole slab is the total of the net floor of its zones.
 */
export function shownTable(takeoff: Takeoff, withMoney: boolean): LineTable {
  const table = lineTable(takeoff);
  const wanted = table.groups.filter((group) => withMoney || group.trade !== 'money');
  const groups = wanted.map((group) => ({
    ...group,
    rows: withNetFloorTotal(withOneDeduction(group.rows)).filter(shows),
  }));
  return { ...table, groups };
}

/** Less than this, in m2 or m, is shown as nothing. */
const NOTHING = 0.005;

function shows(row: TableRow): boolean {
  if (row.unit !== 'm2' && row.unit !== 'm') return true;
  return [...row.cells.values(), row.total].some((cell) => cell !== null && (cell.quantity?.high ?? 0) >= NOTHING);
}

function withOneDeduction(rows: readonly TableRow[]): readonly TableRow[] {
  const [first, ...more] = rows.filter((row) => row.code === 'deduction');
  if (!first || more.length === 0) return rows;
  const lines = [first, ...more].flatMap((row) => row.total?.lines ?? []);
  const quantity = lines.reduce((sum, line) => sum + line.quantity.likely, 0);
  const total: TableCell = { quantity: { low: quantity, likely: quantity, high: quantity }, held: null, lines };
  const one: TableRow = { ...first, key: first.code, total };
  return rows.flatMap((row) => (row === first ? [one] : row.code === 'deduction' ? [] : [row]));
}

function withNetFloorTotal(rows: readonly TableRow[]): readonly TableRow[] {
  const whole = rows.find((row) => row.code === 'netFloorAll');
  if (!whole || !rows.some((row) => row.code === 'netFloor')) return rows;
  return rows
    .filter((row) => row !== whole)
    .map((row) => (row.code === 'netFloor' ? { ...row, total: whole.total } : row));
}
