import { add, divide, largest, multiply, number, subtract, sumOf, term, wholeUp } from './formula.ts';
import type { Line } from './line.ts';
import { makeLine } from './makeLine.ts';
import type { Site } from './site.ts';
import { allowanceTerm, chosen, lineTerm } from './terms.ts';

/** Hours of the whole floor: lines of their own, crew hours, days and person-hours. */
export interface SiteHours {
  readonly lines: readonly Line[];
  readonly crewHours: Line;
  readonly days: Line;
}

const HOURS = { trade: 'hours', unit: 'h', zone: null, records: [] } as const;

/**
 * Set-up, moves between zones, tear-down and daily starts on top of the hours of the zones. Crew hours are hours of the
 * whole crew; person-hours appear in the total alone.
 */
export function siteHours(site: Site, zoneTotals: readonly Line[]): SiteHours {
  const { book } = site;
  const { crew, hoursADay } = book.pricing;
  const setUp = once('hours.setUp', 'set-up', allowanceTerm('set-up', book.rate('labour/set_up')));
  const tearDown = once('hours.tearDown', 'tear-down', allowanceTerm('tear-down', book.rate('labour/tear_down')));
  const moves = makeLine({
    ...HOURS,
    code: 'hours.moves',
    formula: divide(multiply(term('moves between zones'), term('minutes each')), number(60)),
    terms: [
      chosen('moves between zones', Math.max(0, zoneTotals.length - 1), 'number'),
      allowanceTerm('minutes each', book.rate('labour/move_zone')),
    ],
  });
  const work = [...zoneTotals, setUp, moves, tearDown];
  const workTerms = work.map((line) => lineTerm(line.key, line));
  const working = sumOf(workTerms.map(({ name }) => name));
  const day = chosen('hours a day', hoursADay, 'h', book.pricingRecord);
  const days = makeLine({
    ...HOURS,
    code: 'days',
    unit: 'days',
    formula: wholeUp(divide(working, term('hours a day'))),
    terms: [...workTerms, day],
  });
  const starts = makeLine({
    ...HOURS,
    code: 'hours.dailyStart',
    formula: multiply(largest(number(0), subtract(term('days'), number(1))), term('start and close')),
    terms: [lineTerm('days', days), allowanceTerm('start and close', book.rate('labour/daily_start'))],
  });
  const crewHours = makeLine({
    ...HOURS,
    code: 'hours.crew',
    formula: add(working, term(starts.key)),
    terms: [...workTerms, lineTerm(starts.key, starts)],
  });
  const person = makeLine({
    ...HOURS,
    code: 'hours.person',
    formula: multiply(term('crew hours'), term('crew')),
    terms: [lineTerm('crew hours', crewHours), chosen('crew', crew, 'persons', book.pricingRecord)],
  });
  return { lines: [setUp, moves, tearDown, days, starts, crewHours, person], crewHours, days };
}

function once(code: string, name: string, allowance: ReturnType<typeof allowanceTerm>): Line {
  return makeLine({ ...HOURS, code, formula: term(name), terms: [allowance] });
}
