import { add, divide, largest, multiply, number, subtract, sumOf, term, wholeUp } from './formula.ts';
import type { Formula, Line } from './line.ts';
import { makeLine } from './makeLine.ts';
import type { Site } from './site.ts';
import { allowanceTerm, chosen, lineTerm, measured } from './terms.ts';
import { workedFields } from './workedFields.ts';
import type { ZoneHours } from './zoneWorkHours.ts';

/** Hours of the whole floor: lines of their own, crew hours, days and person-hours. */
export interface SiteHours {
  readonly lines: readonly Line[];
  readonly crewHours: Line;
  readonly days: Line;
}

const HOURS = { trade: 'hours', unit: 'h', zone: null, records: [] } as const;

/**
 * From the hours of the zones to crew hours, days and person-hours. Machine and hand work go on side by side as far as
 * there are people: crew hours are the largest of machine hours, hand hours and person-hours / crew; then set-up,
 * moves, changes of machine, tear-down and daily starts of the whole crew, in h. So many days that all of it fits into them. Person-hours =
 * crew hours x crew: everybody is paid all day. Structure: common practice, no source.
 */
export function siteHours(site: Site, zones: readonly ZoneHours[]): SiteHours {
  const { book } = site;
  const { crew, hoursADay } = book.pricing;
  const crewTerm = chosen('crew', crew, 'persons', book.pricingRecord);
  const [machine, hand, person] = [
    zones.map((zone) => zone.machine),
    zones.map((zone) => zone.hand),
    zones.map((zone) => zone.person),
  ] as const;
  const sums = [machine, hand, person].map((lines) => sumOf(lines.map((line) => line.key)));
  const [byMachine = number(0), byHand = number(0), byPerson = number(0)] = sums;
  const work = makeLine({
    ...HOURS,
    code: 'hours.work',
    formula: largest(byMachine, byHand, divide(byPerson, term('crew'))),
    terms: [...[...machine, ...hand, ...person].map((line) => lineTerm(line.key, line)), crewTerm],
  });
  const setUp = once('hours.setUp', 'set-up', allowanceTerm('set-up', book.rate('labour/set_up')));
  const tearDown = once('hours.tearDown', 'tear-down', allowanceTerm('tear-down', book.rate('labour/tear_down')));
  const moves = makeLine({
    ...HOURS,
    code: 'hours.moves',
    formula: divide(multiply(term('moves between zones'), term('minutes each')), number(60)),
    terms: [
      chosen('moves between zones', Math.max(0, zones.length - 1), 'number'),
      allowanceTerm('minutes each', book.rate('labour/move_zone')),
    ],
  });
  const changes = machineChanges(site);
  const parts = [work, setUp, moves, ...changes, tearDown];
  const partTerms = parts.map((line) => lineTerm(line.key, line));
  const together = sumOf(parts.map((line) => line.key));
  const start = allowanceTerm('start and close', book.rate('labour/daily_start'));
  const days = makeLine({
    ...HOURS,
    code: 'days',
    unit: 'days',
    formula: largest(number(1), wholeUp(divide(subtract(together, term('start and close')), workedADay()))),
    terms: [...partTerms, start, chosen('hours a day', hoursADay, 'h', book.pricingRecord)],
  });
  const starts = makeLine({
    ...HOURS,
    code: 'hours.dailyStart',
    formula: multiply(subtract(term('days'), number(1)), term('start and close')),
    terms: [lineTerm('days', days), start],
  });
  const crewHours = makeLine({
    ...HOURS,
    code: 'hours.crew',
    formula: add(together, term(starts.key)),
    terms: [...partTerms, lineTerm(starts.key, starts)],
  });
  const paid = makeLine({
    ...HOURS,
    code: 'hours.person',
    formula: multiply(term('crew hours'), term('crew')),
    terms: [lineTerm('crew hours', crewHours), crewTerm],
  });
  return { lines: [work, setUp, moves, ...changes, tearDown, days, starts, crewHours, paid], crewHours, days };
}

/** A machine that follows is set up in each zone where something is left for it: as long as a move takes. */
function machineChanges({ book, zones }: Site): Line[] {
  const free = zones.filter((zone) => zone.held === null);
  const count = free.flatMap(workedFields).filter(({ follows, areaM2 }) => follows && areaM2 > 0).length;
  if (count === 0) return [];
  const line = makeLine({
    ...HOURS,
    code: 'hours.machineChanges',
    formula: divide(multiply(term('changes of machine'), term('minutes each')), number(60)),
    terms: [
      measured('changes of machine', count, 'number'),
      allowanceTerm('minutes each', book.rate('labour/move_zone')),
    ],
  });
  return [line];
}

/** Every day but the first loses its start; never more than half of it, or no number of days would do. */
function workedADay(): Formula {
  return largest(subtract(term('hours a day'), term('start and close')), divide(term('hours a day'), number(2)));
}

function once(code: string, name: string, allowance: ReturnType<typeof allowanceTerm>): Line {
  return makeLine({ ...HOURS, code, formula: term(name), terms: [allowance] });
}
