import { lineName, titleOf } from './lineNames.ts';
import { cellsOf, CASES, tidy, type SheetCell } from './sheetCells.ts';
import { REST, rowCell, rowUnit, unitsOf } from './takeoffRows.ts';
import type { Doc } from '../model/doc.ts';
import type { Units } from '../model/units.ts';
import type { Line } from '../takeoff/line.ts';
import type { Takeoff } from '../takeoff/port.ts';
import { tagOf, zoneLabel } from '../takeoff/tagOf.ts';
import type { WorkGroup, WorkRow } from '../takeoff/workList.ts';
import { workText } from '../words/workWords.ts';

/** What the foot of the list of work has: what is paid, and the price. */
const FOOT: readonly string[] = ['hours.person', 'money.price'];

/** Amounts of a row: the group it is under, the work, its quantity and unit, low, likely and high with their unit. */
type Row = readonly SheetCell[];

/**
 * The list of work as cells for a file or the clipboard, in the units that are shown: a heading has the sums of its
 * group, a held one has the word instead of hours.
 */
export function workSheet(
  doc: Doc,
  takeoff: Takeoff,
  groups: readonly WorkGroup[],
  currency: string,
  units: Units = unitsOf(doc),
): SheetCell[][] {
  const amount = (value: number, unit: string): Row => {
    const shown = rowUnit(unit, currency, units);
    return [tidy(value / shown.worth), shown.unit];
  };
  const line = (name: string, work: string, quantity: Row, { lines, ...cell }: WorkRow['hours'], unit: string): Row => {
    const shown = rowUnit(unit, currency, units);
    return [name, work, ...quantity, ...cellsOf(rowCell({ ...cell, lines }, shown.worth)), shown.unit];
  };
  const rows = groups.flatMap((group): Row[] => {
    const name = groupName(doc, takeoff, group);
    const floor = group.netFloor?.quantity;
    const quantity = floor ? amount(floor.likely, 'm2') : NOTHING;
    const held: WorkRow['hours'] = { quantity: null, held: group.held, lines: [] };
    return [
      line(name, workText.together, quantity, group.hours ?? held, 'h'),
      ...group.rows.map((row) =>
        line(
          name,
          row.line ? lineName(doc, row.line, units) : titleOf(row.code, units),
          row.worked ? amount(row.worked.quantity.likely, row.worked.unit) : NOTHING,
          row.hours,
          'h',
        ),
      ),
    ];
  });
  const foot = FOOT.flatMap((code): Row[] => {
    const total = takeoff.lines.find((each) => each.code === code);
    return total ? [line(workText.floor, titleOf(code, units), NOTHING, wholeFloor(total), total.unit)] : [];
  });
  const head = [
    workText.where,
    workText.work,
    workText.quantity,
    workText.unit,
    ...CASES.map((each) => workText[each]),
  ];
  return [[...head, workText.unit], ...[...rows, ...foot].map((row) => [...row])];
}

const NOTHING: Row = [null, null];

function wholeFloor(line: Line): WorkRow['hours'] {
  return { quantity: line.quantity, held: line.held, lines: [line] };
}

/** What a group is headed by on a sheet: a zone, a phase, or the crew of a phase. */
export function groupName(doc: Doc, takeoff: Takeoff, { kind, zone, phase }: WorkGroup): string {
  if (kind === 'zone') return zone === null ? REST : (zoneLabel(doc, takeoff.floor, zone) ?? REST);
  const several = takeoff.lines.some(({ code }) => code === 'hours.crewPhase');
  const visit = visitName(doc, phase, several);
  return kind === 'phase' ? visit : workText.crewOn(several || phase !== null ? visit : null);
}

/** A phase by its name; what is in none, beside phases or with no phase at all. */
function visitName(doc: Doc, phase: WorkGroup['phase'], several: boolean): string {
  if (phase !== null) return tagOf(doc, phase);
  return several ? workText.inNoPhase : workText.oneGo;
}
