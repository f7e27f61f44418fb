import { add, divide, fixed, largest, multiply, number, subtract, term } from './formula.ts';
import type { Formula, Line, Term } from './line.ts';
import { makeLine } from './makeLine.ts';
import type { PlannedPass } from './prep.ts';
import { requiredCsp } from './profile.ts';
import { isHandMethod, methodOf } from './rates/methods.ts';
import { obstructionTerm, roomTerm } from './scaleFactors.ts';
import type { Site, ZoneWork } from './site.ts';
import { laidInto, slowFindings, type SlowArea } from './slowFindings.ts';
import { chosen, factorTerm, measured, rateTerm } from './terms.ts';
import { machineIn, methodIn, passKey, workedFields, type WorkedField } from './workedFields.ts';

/** All factors together leave at least so much of a rate; common practice, no source. */
const LEAST_FACTOR = 0.1;
const LEAST = 'least that factors leave';

/**
 * Crew hours of each pass, machine by machine: field x times over / (rate x hardness x room size x obstructions), and
 * more on the area of a finding that slows it; all factors together leave at least a tenth of the rate. A machine that
 * follows does the same passes at the rate of its own method in what is left for it. Rates and factors: docs/sources.md, table methods and factors.
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
  const together = slowedBy.reduce((product, { value }) => product * value.likely, 1);
  const atLeast = [1, ...slow.map((each) => each.factor)].some((factor) => together * factor < LEAST_FACTOR);
  const terms: Term[] = [
    measured('field', field.areaM2, 'm2', field.from),
    chosen('times over', pass.times, 'number', pass.record),
    rateTerm('rate', site.book.methodRate(method, machineIn(pass, field))),
    ...slowedBy,
    ...slow.flatMap((each) => each.terms),
    ...(atLeast ? [leastTerm()] : []),
  ];
  const factors = slowedBy.map(({ name }) => term(name));
  const extras = slow.map((each) => (atLeast ? extraAtLeast(each, factors) : each.extra));
  const area = add(term('field'), ...extras);
  const rateHere = atLeast ? [term('rate'), notUnderLeast(factors)] : [term('rate'), ...factors];
  return makeLine({
    code: 'hours.machine',
    trade: 'hours',
    unit: 'h',
    zone: prep.zone,
    of: passKey(pass, index, field),
    records: [...(prep.zone === 'rest' ? [] : [prep.zone]), ...(pass.record ? [pass.record] : [])],
    formula: divide(multiply(area, term('times over')), multiply(...rateHere)),
    terms,
  });
}

function leastTerm(): Term {
  return {
    name: LEAST,
    value: fixed(LEAST_FACTOR),
    unit: 'factor',
    source: 'common practice, no source',
    provenance: 'P',
    fromMemory: false,
    from: null,
  };
}

function notUnderLeast(factors: readonly Formula[]): Formula {
  return largest(multiply(...factors), term(LEAST));
}

/** What a finding adds to the field, m2, where the least of all factors is reached with or without it. */
function extraAtLeast({ areaName, factorName }: SlowArea, factors: readonly Formula[]): Formula {
  const slower = notUnderLeast([...factors, term(factorName)]);
  return multiply(term(areaName), subtract(divide(notUnderLeast(factors), slower), number(1)));
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

export interface SlowedField extends WorkedField {
  readonly slow: readonly SlowArea[];
}

/**
 * Findings that slow a machine, each on its own area in the field only. What the field of one machine cannot hold of
 * them lies in that of the next.
 */
export function slowedFields(site: Site, zone: ZoneWork): readonly SlowedField[] {
  const fields = workedFields(zone);
  const slow = laidInto(
    site,
    slowFindings(site, zone),
    (finding) => finding.fieldM2,
    fields.map((field) => field.areaM2),
  );
  return fields.map((field, i) => ({ ...field, slow: slow[i] ?? [] }));
}
