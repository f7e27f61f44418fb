import type { Doc } from '../model/doc.ts';
import { textInUnits } from '../model/textInUnits.ts';
import type { Units } from '../model/units.ts';
import type { Line, Range } from '../takeoff/line.ts';
import { orderTable, toppingRows, type OrderKind, type OrderRow } from '../takeoff/orderTable.ts';
import type { Takeoff } from '../takeoff/port.ts';
import { abrasiveOf } from '../takeoff/rates/abrasives.ts';
import { methodOf } from '../takeoff/rates/methods.ts';
import { tagOf, zoneLabel } from '../takeoff/tagOf.ts';
import { itemWords, kindWords, orderGroupWords, orderText, orderTitleOf } from '../words/orderWords.ts';
import { csvText } from './csv.ts';
import { sheetUnit } from './sheetUnit.ts';
import { REST, unitsOf } from './takeoffRows.ts';

type Cell = string | number | null;

const HEAD: readonly Cell[] = [
  'Group',
  'Item',
  'Kind',
  'Used, low',
  'Used, likely',
  'Used, high',
  'Unit',
  'To carry, low',
  'To carry, likely',
  'To carry, high',
  'Packs',
  'Left over',
  'Unit',
];

/** The list to buy and carry of one floor as rows of cells, the head first, in the units of the job. */
export function orderRows(doc: Doc, takeoff: Takeoff): readonly (readonly Cell[])[] {
  const units = unitsOf(doc);
  const items = orderTable(takeoff).flatMap(({ group, rows }) =>
    rows.flatMap((row) => [
      itemCells(orderGroupWords[group], row, units),
      ...row.kinds.map((kind) => kindCells(doc, orderGroupWords[group], row, kind)),
    ]),
  );
  return [HEAD, ...items, ...toppingCells(doc, takeoff, units)];
}

/** The list as CSV text, for a file. */
export function orderCsv(doc: Doc, takeoff: Takeoff): string {
  return csvText(orderRows(doc, takeoff));
}

/** The list with tabs between its cells, as spreadsheets take it from the clipboard. */
export function orderTabbed(doc: Doc, takeoff: Takeoff): string {
  return csvText(orderRows(doc, takeoff), '\t');
}

function itemCells(group: string, { item, used, order, left }: OrderRow, units: Units): Cell[] {
  const { unit, worth } = sheetUnit(item.unit, units);
  const packs = sheetUnit(item.packUnit, units);
  return [
    group,
    itemWords[item.item] ?? item.item,
    null,
    ...rangeCells(summed(used), worth),
    unit,
    ...rangeCells(order.quantity, packs.worth),
    packs.unit,
    tidy(left.quantity.likely / worth),
    unit,
  ];
}

function kindCells(doc: Doc, group: string, { item }: OrderRow, { kind, used, packs }: OrderKind): Cell[] {
  const units = unitsOf(doc);
  const { unit, worth } = sheetUnit(item.unit, units);
  const { text, on } = kindText(doc, kind, units);
  const words = on === null ? text : `${text}, ${on}`;
  const carried = rangeCells(packs.quantity, 1);
  const name = itemWords[item.item] ?? item.item;
  return [group, name, words, ...rangeCells(summed(used), worth), unit, ...carried, item.packUnit, null, null];
}

function toppingCells(doc: Doc, takeoff: Takeoff, units: Units): Cell[][] {
  const { unit, worth } = sheetUnit('L', units);
  return toppingRows(takeoff).flatMap(({ zone, film, texture }) =>
    [film, texture].flatMap((line): Cell[][] => {
      if (!line) return [];
      const where = zoneLabel(doc, takeoff.floor, zone) ?? REST;
      const name = orderTitleOf(line.code) ?? line.code;
      const none = [null, null, null, null, null, null];
      return [[orderText.topping, name, where, ...rangeCells(line.quantity, worth), unit, ...none]];
    }),
  );
}

/** What an item is used up by all zones together. */
export function summed(lines: readonly Line[]): Range {
  const sum = (which: keyof Range): number => lines.reduce((total, line) => total + line.quantity[which], 0);
  return { low: sum('low'), likely: sum('likely'), high: sum('high') };
}

/** A kind in words: grit, bond or size, and the machine it sits on; the machine alone where nothing else is told. */
export function kindText(doc: Doc, kind: string, units: Units): { readonly text: string; readonly on: string | null } {
  const parts = kind.split('|');
  const own = parts.flatMap((part) => kindWords[part] ?? abrasiveOf(part)?.term ?? []);
  const machines = parts.filter((part) => !(part in kindWords) && abrasiveOf(part) === null);
  const on = textInUnits(machines.map((part) => methodOf(part)?.term ?? tagOf(doc, part)).join(', '), units);
  const text = textInUnits(own.join(', '), units);
  return text === '' ? { text: on, on: null } : { text, on: on === '' ? null : on };
}

function rangeCells({ low, likely, high }: Range, worth: number): Cell[] {
  return [tidy(low / worth), tidy(likely / worth), tidy(high / worth)];
}

/** Four decimals are more than any of these numbers knows. */
function tidy(value: number): number {
  return Math.round(value * 1e4) / 1e4;
}
