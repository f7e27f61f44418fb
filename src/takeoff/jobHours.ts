import { add, divide, largest, multiply, number, subtract, sumOf, term, wholeUp } from './formula.ts';
import type { Formula, Line, Term } from './line.ts';
import { makeLine } from './makeLine.ts';
import type { RateBook } from './rates/rateBook.ts';
import { allowanceTerm, chosen, lineTerm, measured } from './terms.ts';
import { workedADay } from './visitHours.ts';

/** Crew hours and days of all floors of a job. */
export interface JobHours {
  readonly crewHours: Line;
  readonly days: Line;
}

/** What one floor takes of the crew, its lines told apart from those of other floors. */
export interface FloorHours {
  readonly crewHours: Line;
  readonly days: Line;
  readonly lines: readonly Line[];
}

/**
 * Crew hours, h, and days of a job with several floors. Floors that are worked without phases share one visit: one
 * set-up and one tear-down, a move from floor to floor, and days that fill up across floors. Where any floor has phases,
 * each is a visit of its own, and hours and days of the floors are added as they are. Structure: common practice, no
 * source.
 */
export function jobHours(book: RateBook, floors: readonly FloorHours[]): JobHours {
  const inPhases = floors.some(({ lines }) => lines.some(({ code }) => code === 'hours.crewPhase'));
  return inPhases ? added(floors) : shared(book, floors);
}

const HOURS = { trade: 'hours', unit: 'h', zone: null, records: [], of: 'job' } as const;

function added(floors: readonly FloorHours[]): JobHours {
  const sum = (code: string, unit: string, lines: readonly Line[]): Line =>
    makeLine({
      ...HOURS,
      code,
      unit,
      formula: sumOf(lines.map(({ key }) => key)),
      terms: lines.map((line) => lineTerm(line.key, line)),
    });
  return {
    crewHours: sum(
      'hours.crew',
      'h',
      floors.map(({ crewHours }) => crewHours),
    ),
    days: sum(
      'days',
      'days',
      floors.map(({ days }) => days),
    ),
  };
}

function shared(book: RateBook, floors: readonly FloorHours[]): JobHours {
  const { hoursADay } = book.pricing;
  const start = allowanceTerm('start and close', book.rate('labour/daily_start'));
  const alone = floors.map(({ crewHours, lines }) => {
    const once = lines.filter(({ code }) => ONCE.includes(code));
    return { whole: crewHours, once };
  });
  const terms: Term[] = [
    ...alone.flatMap(({ whole, once }) => [whole, ...once].map((line) => lineTerm(line.key, line))),
    allowanceTerm('set-up', book.rate('labour/set_up')),
    allowanceTerm('tear-down', book.rate('labour/tear_down')),
    measured('moves between floors', floors.length - 1, 'number'),
    allowanceTerm('minutes each', book.rate('labour/move_zone')),
  ];
  const work = alone.map(({ whole, once }) => subtract(term(whole.key), sumOf(once.map(({ key }) => key))));
  const moves = divide(multiply(term('moves between floors'), term('minutes each')), number(60));
  const together: Formula = add(...work, term('set-up'), term('tear-down'), moves);
  const days = makeLine({
    ...HOURS,
    code: 'days',
    unit: 'days',
    formula: largest(number(1), wholeUp(divide(subtract(together, term('start and close')), workedADay()))),
    terms: [...terms, start, chosen('hours a day', hoursADay, 'h', book.pricingRecord)],
  });
  const crewHours = makeLine({
    ...HOURS,
    code: 'hours.crew',
    formula: add(together, multiply(subtract(term('days'), number(1)), term('start and close'))),
    terms: [...terms, lineTerm('days', days), start],
  });
  return { crewHours, days };
}

/** What a floor that is worked alone has for itself, and floors of one visit share. */
const ONCE: readonly string[] = ['hours.setUp', 'hours.tearDown', 'hours.dailyStart'];
