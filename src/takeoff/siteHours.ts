import { multiply, sumOf, term } from './formula.ts';
import type { Line } from './line.ts';
import { makeLine } from './makeLine.ts';
import { visitsOf } from './phases.ts';
import { probeHours } from './probeHours.ts';
import type { Site } from './site.ts';
import { chosen, lineTerm } from './terms.ts';
import { visitHours, type VisitHours } from './visitHours.ts';
import { waitLines } from './waitLines.ts';
import type { ZoneHours } from './zoneWorkHours.ts';

/** Hours of the whole floor: lines of their own, crew hours, days and person-hours. */
export interface SiteHours {
  readonly lines: readonly Line[];
  readonly crewHours: Line;
  readonly days: Line;
}

const HOURS = { trade: 'hours', unit: 'h', zone: null, records: [] } as const;

/**
 * From the hours of the zones to crew hours, days, person-hours and the calendar. Where zones lie in phases, each phase
 * is a visit with its own set-up, moves, tear-down and days, and crew hours and days are their sums. Person-hours =
 * crew hours x crew: everybody is paid all day. Structure: common practice, no source.
 */
export function siteHours(site: Site, zones: readonly ZoneHours[]): SiteHours {
  const { book } = site;
  const probes = probeHours(site);
  const planned = visitsOf(site.doc, site.floor, zones, (zone) => zone.phase);
  const visits = planned.map(({ phase, items }, i) =>
    visitHours(site, items, {
      phase,
      several: planned.length > 1,
      // Probes are set on the first visit, to be read as early as they can.
      more: i === 0 && probes ? [probes] : [],
    }),
  );
  const { crewHours, days, sums } = together(visits);
  const paid = makeLine({
    ...HOURS,
    code: 'hours.person',
    formula: multiply(term('crew hours'), term('crew')),
    terms: [lineTerm('crew hours', crewHours), chosen('crew', book.pricing.crew, 'persons', book.pricingRecord)],
  });
  return {
    lines: [...visits.flatMap((visit) => visit.lines), ...sums, paid, ...waitLines(site, days)],
    crewHours,
    days,
  };
}

/** Crew hours and days of all visits: those of the only one, or their sums. */
function together(visits: readonly VisitHours[]): {
  readonly crewHours: Line;
  readonly days: Line;
  readonly sums: readonly Line[];
} {
  const [only] = visits;
  if (only && visits.length === 1) return { crewHours: only.crewHours, days: only.days, sums: [] };
  const sum = (code: string, unit: string, lines: readonly Line[]): Line =>
    makeLine({
      ...HOURS,
      code,
      unit,
      formula: sumOf(lines.map((line) => line.key)),
      terms: lines.map((line) => lineTerm(line.key, line)),
    });
  const days = sum(
    'days',
    'days',
    visits.map((visit) => visit.days),
  );
  const crewHours = sum(
    'hours.crew',
    'h',
    visits.map((visit) => visit.crewHours),
  );
  return { crewHours, days, sums: [days, crewHours] };
}
