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
import { methodIn, passKey, workedFields, type WorkedField } from './workedFields.ts';

/** Paint thinner than this, mm, is slowed by the factor of a sealer and not of an epoxy; common practice, no source. */
const THIN_COAT_MM = 0.25;

/**
 * Crew hours of each pass, machine by machine: field x times over / (rate x hardness x room size x obstructions), and
 * more on the area of a finding that slows it. A machine that follows does the same passes at the rate of its own method
 * in what is left for it. Rates and factors: docs/sources.md, table methods and factors.
 */
export function machineHours(site: Site, zone: ZoneWork): Line[] {
  const fields = slowedFields(site, zone);
  return zone.prep.passes
    .flatMap((pass, i) => fields.map((field) => passHours(site, zone, pass, i, field)))
    .filter((line): line is Line => line !== null && line.quantity.high > 0);
}

function passHours(site: Site, zone: ZoneWork, pass: PlannedPass, index: number, field: SlowedField): Line | null {
  const row = methodOf(pass.method);
  const method = methodIn(pass, field);
  const rate = methodOf(method)?.rate;
  const { prep } = zone;
  // A hand method has no field: its floor is hand area, see handHours.
  if (!row || isHandMethod(row) || row.rate.unit !== 'm2/h' || rate?.unit !== 'm2/h') return null;
  const { slow } = field;
  const slowedBy = rateFactors(site, zone, method, field);
  const terms: Term[] = [
    measured('field', field.areaM2, 'm2', field.from),
    chosen('times over', pass.times, 'number', pass.record),
    rateTerm('rate', site.book.rate(`methods/${method}`)),
    ...slowedBy,
    ...slow.flatMap((each) => each.terms),
  ];
  const factors = slowedBy.map(({ name }) => term(name));
  const area = add(term('field'), ...slow.map((each) => each.extra));
  return makeLine({
    code: 'hours.machine',
    trade: 'hours',
    unit: 'h',
    zone: prep.zone,
    of: passKey(pass, index, field),
    records: [...(prep.zone === 'rest' ? [] : [prep.zone]), ...(pass.record ? [pass.record] : [])],
    formula: divide(multiply(area, term('times over')), multiply(term('rate'), ...factors)),
    terms,
  });
}

/** What is left for a machine that follows is small and in corners: the size of its room is that of its own field. */
function rateFactors(site: Site, zone: ZoneWork, method: string, field: WorkedField): Term[] {
  const { measure } = zone;
  return [
    ...concreteFactors(site, zone, method),
    roomTerm(site.book, field.follows ? field.areaM2 : measure.netM2),
    obstructionTerm(site.book, measure.solids.length, measure.netM2),
  ];
}

/** What the concrete and the profile asked for do to a rate, whatever the room is like. */
export function concreteFactors(site: Site, { prep }: ZoneWork, method: string): Term[] {
  const hardness = prep.record?.hardness ?? 'medium';
  const shot = methodOf(method)?.group === 'shot' ? shotFactor(requiredCsp(prep.record)?.min ?? 3) : null;
  return [
    factorTerm('hardness', site.book.rate(`factors/hardness/${hardness}`)),
    ...(shot ? [factorTerm('profile by shot', site.book.rate(shot))] : []),
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

export interface SlowedField extends WorkedField {
  readonly slow: readonly SlowArea[];
}

/**
 * Findings that slow a machine, each on its own area only and together on no more than its field. What the field of one
 * machine cannot hold of them lies in that of the next.
 */
export function slowedFields(site: Site, zone: ZoneWork): readonly SlowedField[] {
  const rest = findingsIn(site, zone).map(({ finding, areaM2 }) => ({
    tag: finding.tag,
    id: finding.id,
    factor: factorOf(finding.kind, finding.thicknessMm ?? null),
    areaM2,
  }));
  return workedFields(zone).map((field) => {
    let left = field.areaM2;
    const slow = rest.flatMap((finding): SlowArea[] => {
      const area = Math.min(finding.areaM2, left);
      if (!finding.factor || area <= 0) return [];
      left -= area;
      finding.areaM2 -= area;
      return [slowArea(site, finding.tag, finding.id, area, finding.factor)];
    });
    return { ...field, slow };
  });
}

function slowArea(site: Site, tag: string, id: string, areaM2: number, factor: string): SlowArea {
  const [name, slows] = [`${tag} area`, `${tag} slows the pass`];
  return {
    terms: [measured(name, areaM2, 'm2', id), factorTerm(slows, site.book.rate(factor))],
    extra: multiply(term(name), subtract(divide(number(1), term(slows)), number(1))),
  };
}

function factorOf(kind: string, thicknessMm: number | null): string | null {
  const factor = findingRowOf(kind)?.factor ?? null;
  const thin = kind === 'paint' && thicknessMm !== null && thicknessMm < THIN_COAT_MM;
  return factor === null ? null : `factors/${thin ? 'finding/sealer' : factor}`;
}
