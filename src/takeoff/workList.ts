import { placeOf } from './codeOrder.ts';
import { grouped } from './grouped.ts';
import type { HoldKind, Line, Range } from './line.ts';
import type { TableCell } from './lineTable.ts';
import type { Takeoff } from './port.ts';
import type { ZoneId } from './prep.ts';
import { workedAmount, type WorkedAmount } from './workedAmount.ts';

/*
 * The takeoff as a list of work, hours beside what they are spent on:
 *
 *   1 Workshop          308.64 m2   20.2   32.1   51.8
 *     Shot blaster      299.17 m2    4.8    8.0   12.4
 *     Edge by hand       84.10 m     9.3   14.0   21.0
 *   The crew on site                11.6   17.0   31.2
 *     Set up                         0.5    1.0    3.0
 *
 * Hours of the rows of a group add up to those of its heading.
 */

export interface WorkRow {
  readonly key: string;
  readonly code: string;
  /** The one line that it is; null where it adds several up. */
  readonly line: Line | null;
  readonly worked: WorkedAmount | null;
  readonly hours: TableCell;
}

export interface WorkGroup {
  readonly key: string;
  /** zone: one zone. phase: all zones of one visit. site: what the crew is paid for on one visit. */
  readonly kind: 'zone' | 'phase' | 'site';
  readonly zone: ZoneId | null;
  readonly phase: Line['phase'];
  /** Zones that it holds, in the order of the table. */
  readonly zones: readonly ZoneId[];
  readonly netFloor: TableCell | null;
  /** null: held, so there is nothing to say but that. */
  readonly hours: TableCell | null;
  readonly held: HoldKind | null;
  readonly rows: readonly WorkRow[];
}

/** Hours that add other hours up: they are headings and feet of the list, not rows. */
const SUMS: ReadonlySet<string> = new Set([
  'hours.machineAll',
  'hours.handAll',
  'hours.besides',
  'hours.zone',
  'hours.zoneSpan',
  'hours.zonePerson',
]);

/** What the row is called that closes a zone: night, heat and cold take more hours for the same work. */
export const TIME_OF_WORK = 'hours.timeOfWork';

/** Less than this, h, is read as nothing. */
const NOTHING_H = 0.005;

/**
 * Work by zone, or by the visit that it belongs to, each with what the crew is paid for there. Hours in h, amounts in
 * the units of their lines. A held zone has its net floor and no hours.
 */
export function workList(takeoff: Takeoff, by: 'zone' | 'phase'): readonly WorkGroup[] {
  const quantities = new Map(takeoff.lines.filter(isQuantity).map((line) => [line.key, line]));
  const floors = takeoff.lines.filter((line) => line.code === 'netFloor' && line.zone !== null);
  const inZones = grouped(
    takeoff.lines.filter((line) => line.trade === 'hours' && line.zone !== null),
    ({ zone }) => zone ?? '',
  );
  const zoneHours = (floor: Line): readonly Line[] => inZones.get(floor.zone ?? '') ?? [];
  const visits = takeoff.lines.filter((line) => line.code === 'hours.crewPhase');
  const paid = visits.length > 0 ? visits : takeoff.lines.filter((line) => line.code === 'hours.crew');
  const site = (visit: Line): WorkGroup => siteGroup(visit, takeoff.lines);
  if (by === 'zone') {
    return [...floors.map((floor) => zoneGroup(floor, zoneHours(floor), quantities)), ...paid.map(site)];
  }
  const phases = [...grouped(floors, ({ phase }) => phase ?? '')].toSorted(
    ([a], [b]) => visitPlace(paid, a) - visitPlace(paid, b),
  );
  return phases.flatMap(([phase, ofPhase]) => [
    phaseGroup(ofPhase, ofPhase.flatMap(zoneHours), quantities),
    ...paid.filter((visit) => phases.length === 1 || (visit.phase ?? '') === phase).map(site),
  ]);
}

/** Visits in the order in which they are worked; one where all is held comes last. */
function visitPlace(paid: readonly Line[], phase: string): number {
  const place = paid.findIndex((visit) => (visit.phase ?? '') === phase);
  return place === -1 ? paid.length : place;
}

function isQuantity({ trade }: Line): boolean {
  return trade !== 'hours' && trade !== 'material' && trade !== 'dust' && trade !== 'money';
}

type Quantities = ReadonlyMap<string, Line>;

function zoneGroup(floor: Line, hours: readonly Line[], quantities: Quantities): WorkGroup {
  const rows = hours.filter(isRow).map((line) => rowOf(line.key, [line], quantities));
  return {
    ...headOf([floor], hours, rows),
    key: `zone|${floor.zone ?? ''}`,
    kind: 'zone',
    zone: floor.zone,
  };
}

function phaseGroup(floors: readonly Line[], hours: readonly Line[], quantities: Quantities): WorkGroup {
  const byCode = [...grouped(hours.filter(isRow), ({ code }) => code)];
  const rows = byCode.map(([code, lines]) => rowOf(code, lines, quantities));
  return {
    ...headOf(floors, hours, rows),
    key: `phase|${floors[0]?.phase ?? ''}`,
    kind: 'phase',
    zone: null,
  };
}

function isRow({ code, quantity }: Line): boolean {
  return !SUMS.has(code) && quantity.high > 0;
}

function rowOf(key: string, lines: readonly Line[], quantities: Quantities): WorkRow {
  const [first, ...more] = lines;
  return {
    key,
    code: first?.code ?? key,
    line: first && more.length === 0 ? first : null,
    worked: workedAmount(lines, quantities),
    hours: cellOf(lines),
  };
}

function headOf(
  floors: readonly Line[],
  hours: readonly Line[],
  rows: readonly WorkRow[],
): Omit<WorkGroup, 'key' | 'kind' | 'zone'> {
  const totals = hours.filter((line) => line.code === 'hours.zone');
  const held = floors.every((floor) => floor.held !== null) ? (floors[0]?.held ?? null) : null;
  const more = totals.length === 0 ? [] : timeOfWork(totals, rows);
  return {
    phase: floors[0]?.phase ?? null,
    zones: floors.flatMap(({ zone }) => zone ?? []),
    netFloor: cellOf(floors),
    hours: totals.length === 0 ? null : cellOf(totals),
    held,
    rows: [...rows, ...more].toSorted((a, b) => placeOf(a.code) - placeOf(b.code)),
  };
}

/** What the heading has over its rows, as a row of its own, so that the column adds up. */
function timeOfWork(totals: readonly Line[], rows: readonly WorkRow[]): WorkRow[] {
  const all = sum(totals.map(({ quantity }) => quantity));
  const parts = sum(rows.flatMap(({ hours }) => hours.quantity ?? []));
  const over = { low: all.low - parts.low, likely: all.likely - parts.likely, high: all.high - parts.high };
  if (over.high < NOTHING_H) return [];
  const hours: TableCell = { quantity: over, held: null, lines: totals };
  return [{ key: `${TIME_OF_WORK}|${totals[0]?.key ?? ''}`, code: TIME_OF_WORK, line: null, worked: null, hours }];
}

/** Hours that the crew is paid for on one visit, by what they add up. */
function siteGroup(visit: Line, lines: readonly Line[]): WorkGroup {
  const parts = visit.working.terms.flatMap(({ from }) => lines.find(({ key }) => key === from) ?? []);
  const rows = parts
    .filter(({ quantity }) => quantity.high > 0)
    .map((line): WorkRow => ({ key: line.key, code: line.code, line: null, worked: null, hours: cellOf([line]) }));
  return {
    key: `site|${visit.key}`,
    kind: 'site',
    zone: null,
    phase: visit.phase,
    zones: [],
    netFloor: null,
    hours: cellOf([visit]),
    held: null,
    rows,
  };
}

function cellOf(lines: readonly Line[]): TableCell {
  const held = lines.every((line) => line.held !== null) ? (lines[0]?.held ?? null) : null;
  return { quantity: sum(lines.map(({ quantity }) => quantity)), held, lines };
}

function sum(ranges: readonly Range[]): Range {
  const of = (which: keyof Range): number => ranges.reduce((all, range) => all + range[which], 0);
  return { low: of('low'), likely: of('likely'), high: of('high') };
}
