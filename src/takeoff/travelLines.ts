import { KM_PER_MILE } from '../model/units.ts';
import { priceOrMissing, type CostInputs, type CostSite } from './costInputs.ts';
import { add, divide, largest, multiply, number, subtract, term } from './formula.ts';
import type { Formula, Line, Term } from './line.ts';
import { moneyLine, priceTerm } from './moneyLine.ts';
import { phaseOf } from './phases.ts';
import { chosen, exact, lineTerm, measured } from './terms.ts';
import { wageOf } from './wage.ts';
import type { ZoneWork } from './site.ts';

/** How often the crew comes, as a formula with its terms. */
interface Count {
  readonly formula: Formula;
  readonly terms: readonly Term[];
}

/** Each phase is a visit, and whatever lies in none is one. */
export function visitCount({ doc }: Pick<CostSite, 'doc'>, zones: readonly ZoneWork[]): number {
  return new Set(zones.map(({ prep }) => phaseOf(doc, prep.record?.floor ?? '', prep))).size;
}

/**
 * Travel of the crew by the hour and by the distance, lodging, and mobilisation once with re-mobilisation for each
 * further visit; minor units. Home each night: one trip a day. Lodging: one trip a visit and a night between two days
 * of it. Structure: common practice, no source.
 */
export function travelLines(site: CostSite, inputs: CostInputs, missing: Set<string>): Line[] {
  return [
    travelTime(site, inputs),
    driving(site, inputs, missing),
    lodging(site, inputs, missing),
    ...mobilisation(site, inputs, missing),
  ].filter((line): line is Line => line !== null);
}

function returns({ book }: CostSite): Term {
  return chosen('visits to return', book.pricing.returnVisits ?? 0, 'number', book.pricingRecord);
}

function trips(site: CostSite, { days, zones }: CostInputs): Count {
  const more = returns(site);
  const often =
    site.book.pricing.stay === 'lodging'
      ? measured('visits', visitCount(site, zones), 'number')
      : lineTerm('days on site', days);
  return { formula: add(term(often.name), term(more.name)), terms: [often, more] };
}

function travelTime(site: CostSite, inputs: CostInputs): Line | null {
  const { pricing, pricingRecord } = site.book;
  const wage = wageOf(site.book);
  if (!pricing.travelHours || !wage) return null;
  const count = trips(site, inputs);
  return moneyLine({
    code: 'money.travel',
    formula: multiply(count.formula, term('hours there and back'), term('crew'), wage.formula),
    terms: [
      ...count.terms,
      chosen('hours there and back', pricing.travelHours, 'h', pricingRecord),
      chosen('crew', pricing.crew, 'persons', pricingRecord),
      ...wage.terms,
    ],
  });
}

function driving(site: CostSite, inputs: CostInputs, missing: Set<string>): Line | null {
  const { travelKm, vehicles = 1 } = site.book.pricing;
  if (!travelKm || vehicles === 0) return null;
  const price = priceOrMissing(site, 'distance', missing);
  if (!price) return null;
  const count = trips(site, inputs);
  return moneyLine({
    code: 'money.driving',
    formula: multiply(count.formula, term('vehicles'), distanceFormula(price.unit), term('price')),
    terms: [
      ...count.terms,
      chosen('vehicles', vehicles, 'number', site.book.pricingRecord),
      ...distanceTerms(site, price.unit),
      priceTerm('price', price),
    ],
  });
}

/** The price list says whether driving is paid by the kilometre or by the mile. */
export function isByMile(unit: string): boolean {
  return unit === 'per mile';
}

/** Kilometres there and back in the unit that driving is paid by. */
export function distanceFormula(unit: string): Formula {
  return isByMile(unit) ? divide(term('km there and back'), term('km in a mile')) : term('km there and back');
}

/** Terms of `distanceFormula`: km, and the km in a mile where driving is paid by the mile. */
export function distanceTerms({ book }: CostSite, unit: string): Term[] {
  const km = chosen('km there and back', book.pricing.travelKm ?? 0, 'km', book.pricingRecord);
  return isByMile(unit) ? [km, exact('km in a mile', KM_PER_MILE, 'km')] : [km];
}

function lodging(site: CostSite, { days, zones }: CostInputs, missing: Set<string>): Line | null {
  const { pricing, pricingRecord } = site.book;
  if (pricing.stay !== 'lodging') return null;
  const price = priceOrMissing(site, 'lodging', missing);
  if (!price) return null;
  return moneyLine({
    code: 'money.lodging',
    formula: multiply(largest(number(0), subtract(term('days on site'), term('visits'))), term('crew'), term('price')),
    terms: [
      lineTerm('days on site', days),
      measured('visits', visitCount(site, zones), 'number'),
      chosen('crew', pricing.crew, 'persons', pricingRecord),
      priceTerm('price', price),
    ],
  });
}

/** Once for the first visit; each further phase and each return is a re-mobilisation. */
function mobilisation(site: CostSite, { zones }: CostInputs, missing: Set<string>): Line[] {
  // A job priced before there were visits: its price stays what it was.
  if (site.book.pricing.returnVisits === undefined) return [];
  const first = priceOrMissing(site, 'mobilisation', missing);
  const further = priceOrMissing(site, 'remobilisation', missing);
  const visits = measured('visits', visitCount(site, zones), 'number');
  const again = visits.value.likely - 1 + (site.book.pricing.returnVisits ?? 0);
  return [
    ...(first && first.amount > 0
      ? [moneyLine({ code: 'money.mobilisation', formula: term('price'), terms: [priceTerm('price', first)] })]
      : []),
    ...(further && again > 0
      ? [
          moneyLine({
            code: 'money.remobilisation',
            formula: multiply(add(subtract(term('visits'), number(1)), term('visits to return')), term('price')),
            terms: [visits, returns(site), priceTerm('price', further)],
          }),
        ]
      : []),
  ];
}
