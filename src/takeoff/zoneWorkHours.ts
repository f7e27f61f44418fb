import type { RecordId } from '../model/cell.ts';
import { besidesHours } from './besidesHours.ts';
import { edgeHours } from './edgeHours.ts';
import { add, divide, largest, multiply, subtract, sumOf, term } from './formula.ts';
import { handHours } from './handHours.ts';
import type { Line, Term } from './line.ts';
import { machineHours } from './machineHours.ts';
import { makeLine } from './makeLine.ts';
import { phaseOf } from './phases.ts';
import { findingRowOf } from './rates/findings.ts';
import { methodOf } from './rates/methods.ts';
import { repairHours } from './repairHours.ts';
import type { Site, ZoneWork } from './site.ts';
import { chosen, exact, factorTerm, lineTerm } from './terms.ts';

/** All hours of one zone, and their sums with what the time of work does to them. */
export interface ZoneHours {
  readonly lines: readonly Line[];
  readonly machine: Line;
  readonly hand: Line;
  /** What is done before and after the floor itself; null: nothing. */
  readonly besides: Line | null;
  readonly person: Line;
  /** The visit that it is worked on; null: in no phase. */
  readonly phase: RecordId | null;
}

/**
 * Hours of a zone, each line in hours of the crew that its method takes (mostly one person): machine, hand, what is done
 * before and after (goods, protection, mock-up, tests), all together, how long the crew is at it, and person-hours. Only
 * for a zone that no hold forbids: a held zone has no hours, rates or price.
 */
export function zoneWorkHours(site: Site, zone: ZoneWork): ZoneHours {
  const byMachine = machineHours(site, zone);
  const byHand = [...edgeHours(site, zone), ...handHours(site, zone), ...repairHours(site, zone)];
  const beforeAndAfter = besidesHours(site, zone);
  const machine = sumLine('hours.machineAll', site, zone, byMachine);
  const hand = sumLine('hours.handAll', site, zone, byHand);
  const besides = beforeAndAfter.length === 0 ? null : sumLine('hours.besides', site, zone, beforeAndAfter);
  const total = makeLine({
    ...base(zone),
    code: 'hours.zone',
    formula: sumOf(['machine', 'hand', ...(besides ? ['before and after'] : [])]),
    terms: [
      lineTerm('machine', machine),
      lineTerm('hand', hand),
      ...(besides ? [lineTerm('before and after', besides)] : []),
    ],
  });
  const person = personHours(site, zone, [...byMachine, ...byHand, ...beforeAndAfter]);
  const span = spanLine(site, zone, { machine, hand, besides, person });
  const sums = [machine, hand, ...(besides ? [besides] : []), total, span, person];
  return {
    lines: [...byMachine, ...byHand, ...beforeAndAfter, ...sums],
    machine,
    hand,
    besides,
    person,
    phase: phaseOf(site.doc, site.floor, zone.prep),
  };
}

/**
 * How long the crew is in the zone, h: the largest of machine hours, hand hours and person-hours / crew, which run side by
 * side, then what is done before and after / crew. On a visit with several zones work of one fills what is left idle in
 * another: their visit takes no longer than their sum.
 */
function spanLine(
  site: Site,
  zone: ZoneWork,
  { machine, hand, besides, person }: Pick<ZoneHours, 'machine' | 'hand' | 'besides' | 'person'>,
): Line {
  const { pricing, pricingRecord } = site.book;
  const working = besides ? subtract(term('person-hours'), term('before and after')) : term('person-hours');
  const work = largest(term('machine'), term('hand'), divide(working, term('crew')));
  return makeLine({
    ...base(zone),
    code: 'hours.zoneSpan',
    formula: besides ? add(work, divide(term('before and after'), term('crew'))) : work,
    terms: [
      lineTerm('machine', machine),
      lineTerm('hand', hand),
      lineTerm('person-hours', person),
      ...(besides ? [lineTerm('before and after', besides)] : []),
      chosen('crew', pricing.crew, 'persons', pricingRecord),
    ],
  });
}

function base({ prep }: ZoneWork) {
  return { trade: 'hours', unit: 'h', zone: prep.zone, records: prep.zone === 'rest' ? [] : [prep.zone] } as const;
}

function sumLine(code: string, site: Site, zone: ZoneWork, lines: readonly Line[]): Line {
  const terms = lines.map((line) => lineTerm(line.key, line));
  return makeLine({
    ...base(zone),
    code,
    formula: multiply(sumOf(terms.map(({ name }) => name)), term('time of work')),
    terms: [...terms, timeTerm(site, zone)],
  });
}

/** Night, an occupied building, heat and cold take more hours for the same work. */
function timeTerm(site: Site, { prep }: ZoneWork): Term {
  const time = prep.record?.time ?? 'normal';
  return time === 'normal'
    ? exact('time of work', 1, 'factor')
    : factorTerm('time of work', site.book.rate(`factors/time/${time}`));
}

/** Each line times the persons that its method takes. */
function personHours(site: Site, zone: ZoneWork, lines: readonly Line[]): Line {
  const several = lines.filter((line) => crewOf(line, zone) > 1);
  const crewName = (line: Line): string => `${line.key}, persons`;
  return makeLine({
    ...base(zone),
    code: 'hours.zonePerson',
    formula: multiply(
      add(
        ...lines.map((line) =>
          several.includes(line) ? multiply(term(line.key), term(crewName(line))) : term(line.key),
        ),
      ),
      term('time of work'),
    ),
    terms: [
      ...lines.map((line) => lineTerm(line.key, line)),
      ...several.map((line) => exact(crewName(line), crewOf(line, zone), 'persons')),
      timeTerm(site, zone),
    ],
  });
}

function crewOf(line: Line, { prep }: ZoneWork): number {
  if (line.code.startsWith('hours.finding.')) {
    const kind = line.code.slice('hours.finding.'.length);
    return methodOf(findingRowOf(kind)?.method ?? '')?.crew ?? 1;
  }
  if (line.code !== 'hours.machine') return 1;
  const [, , of, follower] = line.key.split('|');
  const pass = prep.passes.find((each, i) => (each.record ?? `pass-${i + 1}`) === of);
  const method = prep.followers.find(({ id }) => id === follower)?.method ?? pass?.method ?? '';
  return methodOf(method)?.crew ?? 1;
}
