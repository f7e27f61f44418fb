import type { CostSite, ToolHours } from './costInputs.ts';
import { add, divide, largest, multiply, sumOf, term, wholeUp } from './formula.ts';
import { grouped } from './grouped.ts';
import type { Formula, Line, Term } from './line.ts';
import { moneyLine, priceTerm } from './moneyLine.ts';
import { findingRowOf } from './rates/findings.ts';
import { isHandMethod, methodOf } from './rates/methods.ts';
import type { PricedAmount } from './rates/rateBook.ts';
import type { ZoneWork } from './site.ts';
import { chosen, lineTerm, measured } from './terms.ts';
import { workedFields } from './workedFields.ts';

/**
 * Equipment in minor units: days x number x day rate (common practice, no source). The recipes' machines and hand tools
 * stand on site all days, and a vacuum for each that makes dust; so do machines that follow, if something is left for
 * them. A tool that only takes findings away comes for whole days of its own hours. What is on hire is paid for its least
 * days and for its delivery; a generator, where the site has no power, by the day with its fuel.
 */
export function equipmentLines(site: CostSite, { days, zones, hours }: ToolHours, missing: Set<string>): Line[] {
  const tools = toolsOf(zones, hours);
  const priced = tools.flatMap((method): Line[] => {
    const price = site.book.price(`day/${method}`);
    if (!price) missing.add(`day/${method}`);
    return price ? [dayLine(site, method, machinesOf(method, zones), days, price)] : [];
  });
  const vacuum = site.book.price('day/vacuum');
  const hoses = tools
    .filter((method) => (methodOf(method)?.dust.vacuumM3h ?? 0) > 0)
    .reduce((sum, method) => sum + machinesOf(method, zones), 0);
  const ofFindings = findingTools(site, hours, tools, missing);
  const numbers = new Map([
    ...tools.map((method) => [method, machinesOf(method, zones)] as const),
    ...ofFindings.map(({ method }) => [method, 1] as const),
    ...(hoses > 0 ? [['vacuum', hoses] as const] : []),
  ]);
  return [
    ...priced,
    ...ofFindings.map(({ line }) => line),
    ...(vacuum && hoses > 0 ? [dayLine(site, 'vacuum', hoses, days, vacuum)] : []),
    ...generator(site, days, missing),
    ...delivery(site, numbers, missing),
  ];
}

const OF_FINDING = 'hours.finding.';

interface FindingTool {
  readonly method: string;
  readonly line: Line;
}

function findingTools(
  site: CostSite,
  hours: readonly Line[],
  standing: readonly string[],
  missing: Set<string>,
): FindingTool[] {
  const lines = hours.filter((line) => line.code.startsWith(OF_FINDING));
  const byMethod = grouped(lines, ({ code }) => findingRowOf(code.slice(OF_FINDING.length))?.method ?? '');
  const { hoursADay } = site.book.pricing;
  return [...byMethod].flatMap(([method, own]): FindingTool[] => {
    if (standing.includes(method)) return [];
    const price = site.book.price(`day/${method}`);
    if (!price) {
      missing.add(`day/${method}`);
      return [];
    }
    const terms = own.map((line) => lineTerm(line.key, line));
    const days = wholeUp(divide(sumOf(terms.map(({ name }) => name)), term('hours a day')));
    const hire = leastHire(site, method, days);
    const line = moneyLine({
      code: 'money.equipment',
      of: method,
      records: own.flatMap((each) => each.records),
      formula: multiply(hire.formula, term('day rate')),
      terms: [
        ...terms,
        chosen('hours a day', hoursADay, 'h', site.book.pricingRecord),
        ...hire.terms,
        priceTerm('day rate', price),
      ],
    });
    return [{ method, line }];
  });
}

function dayLine(site: CostSite, of: string, count: number, days: Line, price: PricedAmount): Line {
  const hire = leastHire(site, of, term('days'));
  return moneyLine({
    code: 'money.equipment',
    of,
    formula: multiply(hire.formula, term('number'), term('day rate')),
    terms: [lineTerm('days', days), ...hire.terms, chosen('number', count, 'number'), priceTerm('day rate', price)],
  });
}

function isHired({ book }: CostSite, method: string): boolean {
  return book.pricing.hired?.includes(method) ?? false;
}

/** Nobody hires a machine out for an hour: what is ours is paid by its days alone. */
function leastHire(
  site: CostSite,
  method: string,
  days: Formula,
): { readonly formula: Formula; readonly terms: readonly Term[] } {
  const least = site.book.pricing.leastHireDays ?? 0;
  if (!isHired(site, method) || least === 0) return { formula: days, terms: [] };
  return {
    formula: largest(days, term('least days of hire')),
    terms: [chosen('least days of hire', least, 'days', site.book.pricingRecord)],
  };
}

/** There and back, once, for each machine on hire. */
function delivery(site: CostSite, numbers: ReadonlyMap<string, number>, missing: Set<string>): Line[] {
  const hired = [...numbers].filter(([method]) => isHired(site, method));
  if (hired.length === 0) return [];
  const price = site.book.price('delivery');
  if (!price) {
    missing.add('delivery');
    return [];
  }
  const count = hired.reduce((sum, [, number]) => sum + number, 0);
  return [
    moneyLine({
      code: 'money.delivery',
      formula: multiply(term('machines on hire'), term('price')),
      terms: [measured('machines on hire', count, 'number'), priceTerm('price', price)],
    }),
  ];
}

/** Power of our own. It stands outside: engines make carbon monoxide. */
function generator(site: CostSite, days: Line, missing: Set<string>): Line[] {
  if (site.book.pricing.power !== 'generator') return [];
  const rate = site.book.price('day/generator');
  const fuel = site.book.price('fuel');
  if (!rate) missing.add('day/generator');
  if (!fuel) missing.add('fuel');
  if (!rate || !fuel) return [];
  return [
    moneyLine({
      code: 'money.power',
      formula: multiply(term('days'), add(term('day rate'), term('fuel'))),
      terms: [lineTerm('days', days), priceTerm('day rate', rate), priceTerm('fuel', fuel)],
    }),
  ];
}

/** Machines of one method on site: one, or as many as there are apart where one of them follows another. */
function machinesOf(method: string, zones: readonly ZoneWork[]): number {
  const fields = zones.flatMap(workedFields).filter((field) => field.areaM2 > 0 && field.machine?.method === method);
  return fields.some(({ follows }) => follows) ? new Set(fields.map(({ machine }) => machine?.id)).size : 1;
}

/** Hours that a hand grinder makes, with its chasing blade or its cup, whatever a recipe has at the edge. */
const BY_HAND_GRINDER: readonly string[] = ['hours.crackChase', 'hours.upstands'];

/** Methods in use all along, each once. A tool that takes no field and no edge is not on the truck. */
function toolsOf(zones: readonly ZoneWork[], hours: readonly Line[]): string[] {
  const following = zones
    .flatMap(workedFields)
    .flatMap(({ follows, areaM2, machine }) => (follows && areaM2 > 0 && machine ? [machine.method] : []));
  const used = zones.flatMap(({ prep, measure }) =>
    prep.passes.flatMap((pass) => {
      const row = methodOf(pass.method);
      const driven = row !== null && !isHandMethod(row) ? measure.fieldM2 > 0 : row !== null;
      const edged = pass.edgeMethod !== null && measure.stripM2 + measure.tightM2 > 0;
      return [...(driven ? [pass.method] : []), ...(edged && pass.edgeMethod ? [pass.edgeMethod] : [])];
    }),
  );
  const ground = hours.some((line) => BY_HAND_GRINDER.includes(line.code)) ? ['hand_grinder'] : [];
  // A larger cup is the same hand tool on the price list.
  return [
    ...new Set(
      [...used, ...following, ...ground].map((method) => (method === 'hand_grinder_180' ? 'hand_grinder' : method)),
    ),
  ];
}
