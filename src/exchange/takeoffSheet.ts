import { cellsOf, CASES, type SheetCell } from './sheetCells.ts';
import { takeoffRows, type Shown } from './takeoffRows.ts';
import type { Doc } from '../model/doc.ts';
import type { Takeoff } from '../takeoff/port.ts';

/** The takeoff by zones as cells for a file or the clipboard, with low, likely and high of each zone and of the floor. */
export function takeoffSheet(doc: Doc, takeoff: Takeoff, currency: string, shown: Shown = {}): SheetCell[][] {
  const { zones, rows } = takeoffRows(doc, takeoff, currency, shown);
  const columns = [...zones, 'Total'].flatMap((zone) => CASES.map((which) => `${zone}, ${which}`));
  return [
    ['Trade', 'Work', 'Unit', ...columns],
    ...rows.map((row) => [row.trade, row.work, row.unit, ...[...row.cells, row.total].flatMap(cellsOf)]),
  ];
}
