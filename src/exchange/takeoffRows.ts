import type { Doc } from '../model/doc.ts';
import type { HoldKind } from '../takeoff/line.ts';
import { lineTable, type TableCell, type TableRow } from '../takeoff/lineTable.ts';
import type { Takeoff } from '../takeoff/port.ts';
import { findingRowOf } from '../takeoff/rates/findings.ts';
import { methodOf } from '../takeoff/rates/methods.ts';
import { tagOf, zoneLabel } from '../takeoff/tagOf.ts';
import { minorDigits } from '../model/money.ts';
import { lineTitleOf, tradeWords } from '../words/takeoffWords.ts';

/** One row of the takeoff in words and plain metric numbers; money in main units. */
export interface TakeoffRow {
  readonly trade: string;
  readonly work: string;
  readonly unit: string;
  readonly cells: readonly (RowCell | null)[];
  readonly total: RowCell | null;
}

/** Low, likely and high, or the hold that stands there instead. */
export type RowCell =
  | { readonly held: null; readonly low: number; readonly likely: number; readonly high: number }
  | { readonly held: HoldKind };

export interface TakeoffRows {
  readonly zones: readonly string[];
  readonly rows: readonly TakeoffRow[];
}

export const REST = 'Rest of the slab';

/** The takeoff as rows for files and the command line: the same table as on screen. */
export function takeoffRows(doc: Doc, takeoff: Takeoff, currency: string): TakeoffRows {
  const table = lineTable(takeoff);
  const scale = 10 ** minorDigits(currency);
  const rows = table.groups.flatMap(({ trade, rows: ofTrade }) =>
    ofTrade.map((row): TakeoffRow => {
      const money = row.unit === 'minor';
      const cell = (of: TableCell | null | undefined): RowCell | null => rowCell(of, money ? scale : 1);
      return {
        trade: tradeWords[trade],
        work: workOf(doc, row),
        unit: money ? currency : row.unit,
        cells: table.zones.map(({ id }) => cell(row.cells.get(id))),
        total: cell(row.total),
      };
    }),
  );
  return { zones: table.zones.map(({ id }) => zoneLabel(doc, takeoff.floor, id) ?? REST), rows };
}

function workOf(doc: Doc, row: TableRow): string {
  const title = lineTitleOf(row.code, (kind) => findingRowOf(kind)?.term ?? kind);
  const of = row.key.split('|')[1];
  return of ? `${title}, ${thingOf(doc, of)}` : title;
}

/** A record's number, a tool's name, or what stands there (T1, vacuum). */
function thingOf(doc: Doc, of: string): string {
  return methodOf(of)?.term.toLowerCase() ?? tagOf(doc, of);
}

function rowCell(cell: TableCell | null | undefined, scale: number): RowCell | null {
  if (!cell) return null;
  if (!cell.quantity) return cell.held ? { held: cell.held } : null;
  const { low, likely, high } = cell.quantity;
  return { held: null, low: low / scale, likely: likely / scale, high: high / scale };
}
