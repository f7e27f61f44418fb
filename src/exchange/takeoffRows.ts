import { rowName } from './lineNames.ts';
import { sheetUnit } from './sheetUnit.ts';
import { recordsOf, type Doc } from '../model/doc.ts';
import { minorDigits } from '../model/money.ts';
import type { Units } from '../model/units.ts';
import type { HoldKind, Range } from '../takeoff/line.ts';
import { lineTable, type LineTable, type TableCell } from '../takeoff/lineTable.ts';
import type { Takeoff } from '../takeoff/port.ts';
import { zoneLabel } from '../takeoff/tagOf.ts';
import { tradeWords } from '../words/takeoffWords.ts';

/** One row of the takeoff in words and plain numbers in the units of the job; money in main units. */
export interface TakeoffRow {
  readonly trade: string;
  readonly work: string;
  readonly unit: string;
  readonly cells: readonly (RowCell | null)[];
  readonly total: RowCell | null;
}

/** Low, likely and high, or the hold that stands there instead. */
export type RowCell = { readonly held: HoldKind } | ({ readonly held: null } & Range);

export interface TakeoffRows {
  readonly zones: readonly string[];
  readonly rows: readonly TakeoffRow[];
}

/** What is shown: a table that may be sorted, and the units of the screen. */
export interface Shown {
  readonly table?: LineTable;
  readonly units?: Units;
}

export const REST = 'Rest of the slab';

/** The units that a job is measured in. */
export function unitsOf(doc: Doc): Units {
  return recordsOf(doc, 'job')[0]?.units ?? 'metric';
}

/** The takeoff as rows for files and the command line: the same table as on screen, in the units of the job. */
export function takeoffRows(doc: Doc, takeoff: Takeoff, currency: string, shown: Shown = {}): TakeoffRows {
  const { table = lineTable(takeoff), units = unitsOf(doc) } = shown;
  const rows = table.groups.flatMap(({ trade, rows: ofTrade }) =>
    ofTrade.map((row): TakeoffRow => {
      const { unit, worth } = rowUnit(row.unit, currency, units);
      const cell = (of: TableCell | null | undefined): RowCell | null => rowCell(of, worth);
      return {
        trade: tradeWords[trade],
        work: rowName(doc, row, units),
        unit,
        cells: table.zones.map(({ id }) => cell(row.cells.get(id))),
        total: cell(row.total),
      };
    }),
  );
  return { zones: table.zones.map(({ id }) => zoneLabel(doc, takeoff.floor, id) ?? REST), rows };
}

/** The unit of a row on a sheet; money in main units of its currency. */
export function rowUnit(unit: string, currency: string, units: Units): { unit: string; worth: number } {
  return unit === 'minor' ? { unit: currency, worth: 10 ** minorDigits(currency) } : sheetUnit(unit, units);
}

export function rowCell(cell: TableCell | null | undefined, worth: number): RowCell | null {
  if (!cell) return null;
  if (!cell.quantity) return cell.held ? { held: cell.held } : null;
  const { low, likely, high } = cell.quantity;
  return { held: null, low: low / worth, likely: likely / worth, high: high / worth };
}
