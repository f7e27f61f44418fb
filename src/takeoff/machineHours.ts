import { add, divide, multiply, number, subtract, term } from './formula.ts';
import { findingsIn } from './findingLines.ts';
import type { Formula, Line, Term } from './line.ts';
import { makeLine } from './makeLine.ts';
import type { PlannedPass } from './prep.ts';
import { requiredCsp } from './profile.ts';
import { findingRowOf } from './rates/findings.ts';
import { isHandMethod, methodOf } from './rates/methods.ts';
import { obstructionTerm, roomTerm } from './scaleFactors.ts';
import type { Site, ZoneWork } from './site.ts';
import { chosen, factorTerm, measured, rateTerm } from './terms.ts';

/** Paint thinner than this, mm, is slowed by the factor of a sealer and not of an epoxy; common practice, no source. */
const THIN_COAT_MM = 0.25;

/**
 * Crew hours of each pass of a zone's machine: field x times over / (rate x hardness x room size x obstructions), and
 * more on the area of a finding that slows it. Rates and factors: docs/sources.md, table methods and factors.
 */
export function machineHours(site: Site, zone: ZoneWork): Line[] {
  return zone.prep.passes
    .map((pass, i) => passHours(site, zone, pass, i))
    .filter((line): line is Line => line !== null && line.quantity.high > 0);
}

function passHours(site: Site, zone: ZoneWork, pass: PlannedPass, index: number): Line | null {
  const row = methodOf(pass.method);
  const { measure, prep } = zone;
  // A hand method has no field: its floor is hand area, see handHours.
  if (!row || isHandMethod(row) || row.rate.unit !== 'm2/h') return null;
  const slow = slowAreas(site, zone);
  const terms: Term[] = [
    measured('field', measure.fieldM2, 'm2', `field|${prep.zone}`),
    chosen('times over', pass.times, 'number', pass.record),
    rateTerm('rate', site.book.rate(`methods/${pass.method}`)),
    ...rateFactors(site, zone, pass),
    ...slow.flatMap((each) => each.terms),
  ];
  const factors = rateFactors(site, zone, pass).map(({ name }) => term(name));
  const area = add(term('field'), ...slow.map((each) => each.extra));
  return makeLine({
    code: 'hours.machine',
    trade: 'hours',
    unit: 'h',
    zone: prep.zone,
    of: pass.record ?? `pass-${index + 1}`,
    records: [...(prep.zone === 'rest' ? [] : [prep.zone]), ...(pass.record ? [pass.record] : [])],
    formula: divide(multiply(area, term('times over')), multiply(term('rate'), ...factors)),
    terms,
  });
}

function rateFactors(site: Site, { measure, prep }: ZoneWork, pass: PlannedPass): Term[] {
  const hardness = prep.record?.hardness ?? 'medium';
  const shot = methodOf(pass.method)?.group === 'shot' ? shotFactor(requiredCsp(prep.record)?.min ?? 3) : null;
  return [
    factorTerm('hardness', site.book.rate(`factors/hardness/${hardness}`)),
    ...(shot ? [factorTerm('profile by shot', site.book.rate(shot))] : []),
    roomTerm(site.book, measure.netM2),
    obstructionTerm(site.book, measure.solids.length, measure.netM2),
  ];
}

function shotFactor(csp: number): string {
  if (csp >= 8) return 'factors/shot/csp8';
  if (csp >= 6) return 'factors/shot/csp6';
  return csp >= 4 ? 'factors/shot/csp4' : 'factors/shot/csp3';
}

interface SlowArea {
  readonly terms: readonly Term[];
  /** What the finding adds to the field, m2: its area x (1 / factor - 1). */
  readonly extra: Formula;
}

/** Findings that slow the machine, each on its own area only and together on no more than the field. */
function slowAreas(site: Site, zone: ZoneWork): SlowArea[] {
  let left = zone.measure.fieldM2;
  return findingsIn(site, zone).flatMap(({ finding, areaM2 }): SlowArea[] => {
    const factor = factorOf(finding.kind, finding.thicknessMm ?? null);
    const area = Math.min(areaM2, left);
    if (!factor || area <= 0) return [];
    left -= area;
    const [name, slows] = [`${finding.tag} area`, `${finding.tag} slows the pass`];
    return [
      {
        terms: [measured(name, area, 'm2', finding.id), factorTerm(slows, site.book.rate(factor))],
        extra: multiply(term(name), subtract(divide(number(1), term(slows)), number(1))),
      },
    ];
  });
}

function factorOf(kind: string, thicknessMm: number | null): string | null {
  const factor = findingRowOf(kind)?.factor ?? null;
  const thin = kind === 'paint' && thicknessMm !== null && thicknessMm < THIN_COAT_MM;
  return factor === null ? null : `factors/${thin ? 'finding/sealer' : factor}`;
}
