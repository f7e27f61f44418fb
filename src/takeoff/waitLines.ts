import { findingsIn } from './findingLines.ts';
import { add, divide, largest, number, sumOf, term, wholeUp } from './formula.ts';
import { isCutOut } from './holds.ts';
import type { Line } from './line.ts';
import { makeLine } from './makeLine.ts';
import { findingRowOf } from './rates/findings.ts';
import type { MethodGroup } from './rates/methodRow.ts';
import { methodOf } from './rates/methods.ts';
import type { Site, ZoneWork } from './site.ts';
import { allowanceTerm, lineTerm } from './terms.ts';

const WET: readonly MethodGroup[] = ['wash', 'etch', 'strip', 'waterJet'];

/**
 * Waits in days, and the days from the first to the last: nobody works and nobody is paid, but the floor is not ready.
 * Drying, glue and mortar come between steps of the work and lengthen it; a probe is read while the work goes on. Crack
 * filler is hard within the hour and other work goes on meanwhile: it has no wait here. Waits: table waits.
 */
export function waitLines(site: Site, days: Line): Line[] {
  const free = site.zones.filter((zone) => zone.held === null);
  const between = [
    free.some((zone) => isWetted(site, zone)) ? [waitLine(site, 'wait.drying', 'waits/drying')] : [],
    free.some((zone) => isPatched(site, zone)) ? [waitLine(site, 'wait.repair', 'waits/repair')] : [],
    site.zones.some((zone) => isThere(site, `tests.pull|${zone.prep.zone}`))
      ? [waitLine(site, 'wait.pull', 'waits/pull')]
      : [],
  ].flat();
  const reading = isThere(site, 'tests.rh|floor') ? [waitLine(site, 'wait.rh', 'waits/rh')] : [];
  if (between.length + reading.length === 0) return [];
  const terms = [days, ...between, ...reading].map((line) => lineTerm(line.key, line));
  const worked =
    between.length === 0 ? term(days.key) : add(term(days.key), wholeUp(sumOf(between.map(({ key }) => key))));
  // Drilled on the first day, read a day later: on the second.
  const read = reading.map(({ key }) => add(number(1), wholeUp(term(key))));
  const calendar = makeLine({
    code: 'calendarDays',
    trade: 'hours',
    unit: 'days',
    zone: null,
    records: [],
    formula: read.length === 0 ? worked : largest(worked, ...read),
    terms,
  });
  return [...between, ...reading, calendar];
}

function waitLine(site: Site, code: string, rate: string): Line {
  return makeLine({
    code,
    trade: 'hours',
    unit: 'days',
    zone: null,
    records: [],
    formula: divide(term('wait'), number(24)),
    terms: [allowanceTerm('wait', site.book.rate(rate))],
  });
}

function isThere(site: Site, key: string): boolean {
  const line = site.quantities.get(key);
  return line !== undefined && line.held === null;
}

function isWetted(site: Site, zone: ZoneWork): boolean {
  const isWet = (method: string | null | undefined): boolean => WET.includes(methodOf(method ?? '')?.group ?? 'grind');
  return (
    zone.prep.passes.some((pass) => isWet(pass.method)) ||
    findingsIn(site, zone).some(({ finding }) => isWet(findingRowOf(finding.kind)?.method))
  );
}

function isPatched(site: Site, zone: ZoneWork): boolean {
  return !site.noCutting && findingsIn(site, zone).some(({ finding }) => isCutOut(finding.kind));
}
