import type { CostSite } from './costInputs.ts';
import { divide, multiply, number, sumOf, term } from './formula.ts';
import type { Line, Term } from './line.ts';
import { moneyLine, priceTerm } from './moneyLine.ts';
import { chosen, lineTerm } from './terms.ts';

const BY_MASS: readonly string[] = ['dustMass', 'rubbleMass'];

/**
 * What it costs to be rid of the waste, minor units: haul by the trip, tip fee by the tonne, slurry by the drum, and
 * laboratory tests. Regulated waste is not in it: its way and fee belong to licensed people (common practice, no source).
 */
export function wasteCostLines(site: CostSite, material: readonly Line[], missing: Set<string>): Line[] {
  const { haulTrips = 0, wasteTests = 0 } = site.book.pricing;
  const heavy = material.filter((line) => BY_MASS.includes(line.code) && line.quantity.high > 0);
  const drums = material.filter((line) => line.code === 'order.drum' && line.quantity.high > 0);
  const set = (name: string, value: number): Term => chosen(name, value, 'number', site.book.pricingRecord);
  const anything = heavy.length > 0 || drums.length > 0;
  const priced = (of: {
    readonly code: string;
    readonly price: string;
    readonly terms: readonly Term[];
    readonly perTonne?: true;
    readonly records?: Line['records'];
  }): Line[] => {
    const price = site.book.price(of.price);
    if (!price) {
      missing.add(of.price);
      return [];
    }
    const amount = sumOf(of.terms.map(({ name }) => name));
    return [
      moneyLine({
        code: of.code,
        records: of.records ?? [],
        formula: multiply(of.perTonne ? divide(amount, number(1000)) : amount, term('price')),
        terms: [...of.terms, priceTerm('price', price)],
      }),
    ];
  };
  const massTerms = heavy.map((line) => lineTerm(line.key, line));
  const drumTerms = drums.map((line) => lineTerm(line.key, line));
  return [
    ...(anything && haulTrips > 0
      ? priced({ code: 'money.haul', price: 'haul', terms: [set('trips', haulTrips)] })
      : []),
    ...(heavy.length > 0 && charges(site)
      ? priced({ code: 'money.tip', price: 'tipFee', terms: massTerms, perTonne: true })
      : []),
    ...(drums.length > 0 && charges(site)
      ? priced({ code: 'money.drums', price: 'drumDisposal', terms: drumTerms })
      : []),
    ...(wasteTests > 0
      ? priced({ code: 'money.wasteTests', price: 'wasteTest', terms: [set('tests', wasteTests)] })
      : []),
  ];
}

/** A job priced before there was a waste setting pays no fees: its price stays what it was. */
function charges({ book }: CostSite): boolean {
  return book.pricing.haulTrips !== undefined;
}
