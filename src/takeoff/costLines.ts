import { equipmentLines, type ToolHours } from './equipmentLines.ts';
import { add, divide, largest, multiply, number, subtract, sumOf, term } from './formula.ts';
import type { Line, Term } from './line.ts';
import { makeLine } from './makeLine.ts';
import { MONEY, priceTerm } from './moneyLine.ts';
import type { Site } from './site.ts';
import { chosen, lineTerm } from './terms.ts';

/** What the direct cost is made of, and what nobody has set a price for. */
export interface Direct {
  readonly lines: readonly Line[];
  readonly missing: readonly string[];
}

export interface CostInputs extends ToolHours {
  readonly crewHours: Line;
  /** Lines of material and dust, zones and floor. */
  readonly material: readonly Line[];
}

/** Labour, equipment, tooling, fillers and bags, in minor units (cents), not rounded: the price is rounded, once. */
export function directLines(site: Site, inputs: CostInputs): Direct {
  const missing = new Set<string>();
  const lines = [
    labour(site, inputs.crewHours),
    ...equipmentLines(site, inputs, missing),
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

/** What is left over: the price less its cost. */
export function leftOver(price: Line, cost: Line): Line {
  return makeLine({
    ...MONEY,
    code: 'money.margin',
    formula: subtract(term('price'), term('cost')),
    terms: [lineTerm('price', price), lineTerm('cost', cost)],
  });
}
