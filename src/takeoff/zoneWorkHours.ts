import { edgeHours } from './edgeHours.ts';
import { multiply, sumOf, term } from './formula.ts';
import { handHours } from './handHours.ts';
import type { Line } from './line.ts';
import { machineHours } from './machineHours.ts';
import { makeLine } from './makeLine.ts';
import { repairHours } from './repairHours.ts';
import type { Site, ZoneWork } from './site.ts';
import { exact, factorTerm, lineTerm } from './terms.ts';

/** All hours of one zone, and their sums: machine, hand, and both with what the time of work does to them. */
export interface ZoneHours {
  readonly lines: readonly Line[];
  readonly total: Line;
}

/** Crew hours of a zone. Only for a zone that no hold forbids: a held zone has no hours, rates or price. */
export function zoneWorkHours(site: Site, zone: ZoneWork): ZoneHours {
  const machine = machineHours(site, zone);
  const hand = [...edgeHours(site, zone), ...handHours(site, zone), ...repairHours(site, zone)];
  const machineSum = sumOfLines('hours.machineAll', zone, machine);
  const handSum = sumOfLines('hours.handAll', zone, hand);
  const total = makeLine({
    code: 'hours.zone',
    trade: 'hours',
    unit: 'h',
    zone: zone.prep.zone,
    records: zone.prep.zone === 'rest' ? [] : [zone.prep.zone],
    formula: multiply(sumOf(['machine', 'hand']), term('time of work')),
    terms: [lineTerm('machine', machineSum), lineTerm('hand', handSum), timeTerm(site, zone)],
  });
  return { lines: [...machine, ...hand, machineSum, handSum, total], total };
}

function sumOfLines(code: string, { prep }: ZoneWork, lines: readonly Line[]): Line {
  const terms = lines.map((line) => lineTerm(line.key, line));
  return makeLine({
    code,
    trade: 'hours',
    unit: 'h',
    zone: prep.zone,
    records: prep.zone === 'rest' ? [] : [prep.zone],
    formula: sumOf(terms.map(({ name }) => name)),
    terms,
  });
}

/** Night, an occupied building, heat and cold take more hours for the same work. */
function timeTerm(site: Site, { prep }: ZoneWork) {
  const time = prep.record?.time ?? 'normal';
  return time === 'normal'
    ? exact('time of work', 1, 'factor')
    : factorTerm('time of work', site.book.rate(`factors/time/${time}`));
}
