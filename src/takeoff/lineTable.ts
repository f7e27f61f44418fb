import { placeOf } from './codeOrder.ts';
import type { HoldKind, Line, Range, Trade } from './line.ts';
import type { Takeoff } from './port.ts';
import type { ZoneId } from './prep.ts';

/*
 * The takeoff as people read it, the same on screen, in CSV and at the command line:
 *
 *                     zone 1     zone 2    rest      total
 *   Floor  Net floor  308.64     46.10     21.60     376.34
 *   Hours  Machine      8.0       4.8      held       12.8
 *
 * What is taken off the floor stands in one row whose lines say what; the net floor of the slab is the total of the
 * net floors of its zones.
 */

export interface TableCell {
  /** null: held, so there is nothing to say but that. */
  readonly quantity: Range | null;
  readonly held: HoldKind | null;
  /** The lines it adds up, for Why. */
  readonly lines: readonly Line[];
}

export interface TableRow {
  readonly key: string;
  readonly code: string;
  readonly unit: string;
  readonly cells: ReadonlyMap<ZoneId, TableCell>;
  readonly total: TableCell | null;
}

export interface TableGroup {
  readonly trade: Trade;
  readonly rows: readonly TableRow[];
}

export interface LineTable {
  readonly zones: readonly { readonly id: ZoneId; readonly held: HoldKind | null }[];
  readonly groups: readonly TableGroup[];
}

const TRADES: readonly Trade[] = ['floor', 'edge', 'line', 'spot', 'hours', 'material', 'dust', 'money'];

/** Lines of one zone only shown as a share of what the whole floor says under another code. */
const SHARE_OF: Readonly<Record<string, string>> = { 'money.priceShare': 'money.price' };

/**
 * Lines by trade and work in rows, zones in columns, in the lines' own units. Rows that are nothing everywhere, or would
 * read as 0.00 m or m2, are left out.
 */
export function lineTable(takeoff: Takeoff): LineTable {
  const zones = takeoff.lines
    .filter((line) => line.code === 'netFloor' && line.zone !== null)
    .map((line) => ({ id: line.zone as ZoneId, held: line.held }));
  const groups = TRADES.flatMap((trade) => {
    const rows = new Map<string, Line[]>();
    for (const line of takeoff.lines) {
      if (line.trade !== trade || isOfOrder(line)) continue;
      const key = rowKey(line);
      rows.set(key, [...(rows.get(key) ?? []), line]);
    }
    const shown = withFloorTotal([...rows], zones)
      .filter((row) => !isNothing(row))
      .toSorted((a, b) => placeOf(a.code) - placeOf(b.code) || inOrder(a, b));
    return shown.length === 0 ? [] : [{ trade, rows: shown }];
  });
  return { zones, groups };
}

/** Kinds of an item and what is left over of it: parts of the list to buy and carry, which is a table of its own. */
function isOfOrder({ code }: Line): boolean {
  return code.startsWith('orderPacks.') || code.startsWith('orderLeft.');
}

/** Diameters of two zones do not add up to one. */
const NOT_ADDED: readonly string[] = ['mm'];

/** T2 before T10; everything else stays as it came. */
function inOrder(a: TableRow, b: TableRow): number {
  return a.code === 'tightSpot' ? Number(a.key.split('|T')[1]) - Number(b.key.split('|T')[1]) : 0;
}

/** Lines that belong in one row: one code, and what tells lines of a code apart within a zone. */
function rowKey(line: Line): string {
  const code = SHARE_OF[line.code] ?? line.code;
  // Passes of a recipe and deductions stand in one row; tight spots, fields of one machine and tools each in their own.
  const apart = ['fieldOf', 'tightSpot', 'money.equipment'].includes(line.code) ? line.key.split('|').slice(2) : [];
  return [code, ...apart].join('|');
}

function rowOf(key: string, lines: readonly Line[], zones: LineTable['zones']): TableRow {
  const first = lines[0] as Line;
  const ofZones = lines.filter((line) => line.zone !== null);
  const whole = lines.filter((line) => line.zone === null);
  const work = WORK.includes(first.trade) && ofZones.length > 0;
  const cells = new Map(
    zones.flatMap(({ id, held }): [ZoneId, TableCell][] => {
      const own = ofZones.filter((line) => line.zone === id);
      if (own.length > 0) return [[id, cellOf(own)]];
      return held !== null && work ? [[id, { quantity: null, held, lines: [] }]] : [];
    }),
  );
  const all = whole.length > 0 ? whole : ofZones;
  const total = NOT_ADDED.includes(first.unit) && all.length > 1 ? null : cellOf(all);
  return { key, code: SHARE_OF[first.code] ?? first.code, unit: first.unit, cells, total };
}

/** Trades that a hold takes out of a zone. */
const WORK: readonly Trade[] = ['hours', 'material', 'dust', 'money'];

function cellOf(lines: readonly Line[]): TableCell {
  const held = lines.every((line) => line.held !== null) ? (lines[0]?.held ?? null) : null;
  return { quantity: sum(lines.map((line) => line.quantity)), held, lines };
}

/** Less than this, in m2 or m, is read as nothing. */
const NOTHING = 0.005;

function isNothing(row: TableRow): boolean {
  const least = row.unit === 'm2' || row.unit === 'm' ? NOTHING : Number.MIN_VALUE;
  return [...row.cells.values(), row.total].every((cell) => !cell?.quantity || cell.quantity.high < least);
}

/** Rows of one trade. The net floor of the whole slab is no row of its own: it is the total of the zones' row. */
function withFloorTotal(
  groups: readonly (readonly [string, readonly Line[]])[],
  zones: LineTable['zones'],
): TableRow[] {
  const rows = groups.map(([key, lines]) => rowOf(key, lines, zones));
  const whole = rows.find((row) => row.code === 'netFloorAll');
  if (!whole || !rows.some((row) => row.code === 'netFloor')) return rows;
  return rows
    .filter((row) => row !== whole)
    .map((row) => (row.code === 'netFloor' ? { ...row, total: whole.total } : row));
}

function sum(ranges: readonly Range[]): Range {
  return ranges.reduce((a, b) => ({ low: a.low + b.low, likely: a.likely + b.likely, high: a.high + b.high }), {
    low: 0,
    likely: 0,
    high: 0,
  });
}

/** Crew hours of one zone; null when it is held or not on the slab. */
export function zoneHours(takeoff: Takeoff, zone: string): Range | null {
  return takeoff.lines.find((line) => line.code === 'hours.zone' && line.zone === zone)?.quantity ?? null;
}
