import type { RecordId } from '../model/cell.ts';
import { add, divide, largest, multiply, number, subtract, sumOf, term, wholeUp } from './formula.ts';
import type { Formula, Line, Term } from './line.ts';
import { makeLine } from './makeLine.ts';
import { phaseOf } from './phases.ts';
import type { Site } from './site.ts';
import { allowanceTerm, chosen, lineTerm, measured } from './terms.ts';
import { workedFields } from './workedFields.ts';
import type { ZoneHours } from './zoneWorkHours.ts';

/** Hours of one visit to a floor: all of it, or one phase. */
export interface VisitHours {
  readonly lines: readonly Line[];
  readonly crewHours: Line;
  readonly days: Line;
}

export interface Visit {
  readonly phase: RecordId | null;
  /** One of several visits: its lines say which, and its crew hours and days are parts of a sum. */
  readonly several: boolean;
  /** Person-hours of the whole floor that fall on it, h. */
  readonly more: readonly Line[];
}

type LineMaker = (code: string, formula: Formula, terms: readonly Term[], unit?: string) => Line;

/**
 * From the hours of the zones of a visit to crew hours and days. Machine and hand work go on side by side as far as
 * there are people: the work takes the largest of machine hours, hand hours and person-hours / crew. Before and after it
 * the whole crew moves goods, protects and tests; then set-up, moves, changes of machine, tear-down and daily starts of
 * the whole crew, in h. So many days that all of it fits into them.
 */
export function visitHours(site: Site, zones: readonly ZoneHours[], visit: Visit): VisitHours {
  const { book } = site;
  const { crew, hoursADay } = book.pricing;
  const line = lineMaker(visit);
  const crewTerm = chosen('crew', crew, 'persons', book.pricingRecord);
  const work = workLine(line, zones, crewTerm);
  const besides = besidesLine(line, [...zones.flatMap((zone) => zone.besides ?? []), ...visit.more], crewTerm);
  const setUp = once(line, 'hours.setUp', 'set-up', allowanceTerm('set-up', book.rate('labour/set_up')));
  const tearDown = once(line, 'hours.tearDown', 'tear-down', allowanceTerm('tear-down', book.rate('labour/tear_down')));
  const moves = timesMinutes(site, line, 'hours.moves', chosen('moves between zones', zones.length - 1, 'number'));
  const parts = [work, ...besides, setUp, moves, ...machineChanges(site, line, visit), tearDown];
  const partTerms = parts.map((part) => lineTerm(part.key, part));
  const together = sumOf(parts.map((part) => part.key));
  const start = allowanceTerm('start and close', book.rate('labour/daily_start'));
  const days = line(
    visit.several ? 'days.phase' : 'days',
    largest(number(1), wholeUp(divide(subtract(together, term('start and close')), workedADay()))),
    [...partTerms, start, chosen('hours a day', hoursADay, 'h', book.pricingRecord)],
    'days',
  );
  const starts = line('hours.dailyStart', multiply(subtract(term('days'), number(1)), term('start and close')), [
    lineTerm('days', days),
    start,
  ]);
  const crewHours = line(visit.several ? 'hours.crewPhase' : 'hours.crew', add(together, term(starts.key)), [
    ...partTerms,
    lineTerm(starts.key, starts),
  ]);
  return { lines: [...visit.more, ...parts, days, starts, crewHours], crewHours, days };
}

function lineMaker({ phase, several }: Visit): LineMaker {
  return (code, formula, terms, unit = 'h') =>
    makeLine({
      trade: 'hours',
      unit,
      zone: null,
      records: several && phase ? [phase] : [],
      phase,
      code,
      formula,
      terms,
      ...(several ? { of: phase ?? 'none' } : {}),
    });
}

/** Machine and hand work side by side, as far as people go. */
function workLine(line: LineMaker, zones: readonly ZoneHours[], crew: Term): Line {
  const besides = zones.flatMap((zone) => zone.besides ?? []);
  const [machine, hand, person] = [
    zones.map((zone) => zone.machine),
    zones.map((zone) => zone.hand),
    zones.map((zone) => zone.person),
  ];
  const sum = (lines: readonly Line[]): Formula => sumOf(lines.map(({ key }) => key));
  // Person-hours of a zone hold what is done before and after; that does not run beside the work.
  const working = besides.length === 0 ? sum(person) : subtract(sum(person), sum(besides));
  return line('hours.work', largest(sum(machine), sum(hand), divide(working, term('crew'))), [
    ...[...machine, ...hand, ...person, ...besides].map((each) => lineTerm(each.key, each)),
    crew,
  ]);
}

/** Goods, protection, mock-up and tests: everybody is at it, so their hours / crew. */
function besidesLine(line: LineMaker, lines: readonly Line[], crew: Term): Line[] {
  if (lines.length === 0) return [];
  return [
    line('hours.besidesCrew', divide(sumOf(lines.map(({ key }) => key)), term('crew')), [
      ...lines.map((each) => lineTerm(each.key, each)),
      crew,
    ]),
  ];
}

/** A machine that follows is set up in each zone where something is left for it: as long as a move takes. */
function machineChanges(site: Site, line: LineMaker, { phase, several }: Visit): Line[] {
  const here = site.zones.filter(
    (zone) => zone.held === null && (!several || phaseOf(site.doc, site.floor, zone.prep) === phase),
  );
  const count = here.flatMap(workedFields).filter(({ follows, areaM2 }) => follows && areaM2 > 0).length;
  if (count === 0) return [];
  return [timesMinutes(site, line, 'hours.machineChanges', measured('changes of machine', count, 'number'))];
}

function timesMinutes({ book }: Site, line: LineMaker, code: string, count: Term): Line {
  return line(code, divide(multiply(term(count.name), term('minutes each')), number(60)), [
    count,
    allowanceTerm('minutes each', book.rate('labour/move_zone')),
  ]);
}

/** Every day but the first loses its start; never more than half of it, or no number of days would do. */
export function workedADay(): Formula {
  return largest(subtract(term('hours a day'), term('start and close')), divide(term('hours a day'), number(2)));
}

function once(line: LineMaker, code: string, name: string, allowance: Term): Line {
  return line(code, term(name), [allowance]);
}
