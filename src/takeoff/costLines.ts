import { add, divide, largest, multiply, number, subtract, sumOf, term } from './formula.ts';
import type { Line, Term } from './line.ts';
import { makeLine } from './makeLine.ts';
import type { PricedAmount } from './rates/rateBook.ts';
import { isHandMethod, methodOf } from './rates/methods.ts';
import type { Site, ZoneWork } from './site.ts';
import { fixed } from './formula.ts';
import { chosen, lineTerm } from './terms.ts';

/** What the direct cost is made of, and what nobody has set a price for. */
export interface Direct {
  readonly lines: readonly Line[];
  readonly missing: readonly string[];
}

export interface CostInputs {
  readonly crewHours: Line;
  readonly days: Line;
  /** Lines of material and dust, zones and floor. */
  readonly material: readonly Line[];
  readonly zones: readonly ZoneWork[];
}

export const MONEY = { trade: 'money', unit: 'minor', zone: null, records: [] } as const;

/** Labour, equipment, tooling, fillers and bags, in minor units (cents), not rounded: the price is rounded, once. */
export function directLines(site: Site, inputs: CostInputs): Direct {
  const missing = new Set<string>();
  const lines = [
    labour(site, inputs.crewHours),
    ...equipment(site, inputs, missing),
    ...goods(site, inputs.material, missing),
  ].filter((line): line is Line => line !== null);
  return { lines, missing: [...missing] };
}

/** Crew hours x crew x wage x (1 + burden); a job takes at least so many crew days. */
function labour(site: Site, crewHours: Line): Line | null {
  const { pricing, pricingRecord } = site.book;
  const wage = site.book.price('wage');
  if (!wage) return null;
  const set = (name: string, value: number, unit: string): Term => chosen(name, value, unit, pricingRecord);
  return makeLine({
    ...MONEY,
    code: 'money.labour',
    formula: multiply(
      largest(term('crew hours'), multiply(term('least crew days'), term('hours a day'))),
      term('crew'),
      term('wage'),
      add(number(1), divide(term('burden'), number(100))),
    ),
    terms: [
      lineTerm('crew hours', crewHours),
      set('least crew days', pricing.minimumCrewDays, 'days'),
      set('hours a day', pricing.hoursADay, 'h'),
      set('crew', pricing.crew, 'persons'),
      priceTerm('wage', wage),
      set('burden', pricing.burdenPct, '%'),
    ],
  });
}

/** Everything that stands on site is there all days: machines, hand tools, and a vacuum for each of them. */
function equipment(site: Site, { days, zones }: CostInputs, missing: Set<string>): Line[] {
  const tools = toolsOf(zones);
  const priced = tools.flatMap((method): Line[] => {
    const price = site.book.price(`day/${method}`);
    if (!price) missing.add(`day/${method}`);
    return price ? [dayLine(method, 1, days, price)] : [];
  });
  const vacuum = site.book.price('day/vacuum');
  const hoses = tools.filter((method) => (methodOf(method)?.dust.vacuumM3h ?? 0) > 0).length;
  return vacuum && hoses > 0 ? [...priced, dayLine('vacuum', hoses, days, vacuum)] : priced;
}

function dayLine(of: string, count: number, days: Line, price: PricedAmount): Line {
  return makeLine({
    ...MONEY,
    code: 'money.equipment',
    of,
    formula: multiply(term('days'), term('number'), term('day rate')),
    terms: [lineTerm('days', days), chosen('number', count, 'number'), priceTerm('day rate', price)],
  });
}

/** Methods in use, each once. A tool that takes no field and no edge is not on the truck. */
function toolsOf(zones: readonly ZoneWork[]): string[] {
  const used = zones.flatMap(({ prep, measure }) =>
    prep.passes.flatMap((pass) => {
      const row = methodOf(pass.method);
      const driven = row !== null && !isHandMethod(row) ? measure.fieldM2 > 0 : row !== null;
      const edged = pass.edgeMethod !== null && measure.stripM2 + measure.tightM2 > 0;
      return [...(driven ? [pass.method] : []), ...(edged && pass.edgeMethod ? [pass.edgeMethod] : [])];
    }),
  );
  // A larger cup is the same hand tool on the price list.
  return [...new Set(used.map((method) => (method === 'hand_grinder_180' ? 'hand_grinder' : method)))];
}

const GOODS = [
  { code: 'money.diamonds', of: ['diamondWear'], price: 'diamondSet' },
  { code: 'money.cups', of: ['cupWear'], price: 'cup' },
  { code: 'money.filler', of: ['cartridges', 'jointCartridges'], price: 'filler' },
  { code: 'money.bags', of: ['dustBags'], price: 'bag' },
  { code: 'money.shot', of: ['shotLoss'], price: 'shot' },
] as const;

function goods(site: Site, material: readonly Line[], missing: Set<string>): (Line | null)[] {
  return GOODS.map(({ code, of, price: priceCode }) => {
    const lines = material.filter((line) => (of as readonly string[]).includes(line.code) && line.quantity.high > 0);
    if (lines.length === 0) return null;
    const price = site.book.price(priceCode);
    if (!price) {
      missing.add(priceCode);
      return null;
    }
    const terms = lines.map((line) => lineTerm(line.key, line));
    return makeLine({
      ...MONEY,
      code,
      records: lines.flatMap((line) => line.records),
      formula: multiply(sumOf(terms.map(({ name }) => name)), term('price')),
      terms: [...terms, priceTerm('price', price)],
    });
  });
}

function priceTerm(name: string, price: PricedAmount): Term {
  return {
    name,
    value: fixed(price.amount),
    unit: 'minor',
    source: price.source,
    provenance: price.provenance,
    fromMemory: false,
    from: price.record,
  };
}

/** What is left over: the price less its cost. */
export function leftOver(price: Line, cost: Line): Line {
  return makeLine({
    ...MONEY,
    code: 'money.margin',
    formula: subtract(term('price'), term('cost')),
    terms: [lineTerm('price', price), lineTerm('cost', cost)],
  });
}
