import { divide, multiply, sumOf, term, wholeUp } from './formula.ts';
import { grouped } from './grouped.ts';
import type { Line } from './line.ts';
import { makeLine } from './makeLine.ts';
import { MONEY, priceTerm } from './moneyLine.ts';
import { findingRowOf } from './rates/findings.ts';
import { isHandMethod, methodOf } from './rates/methods.ts';
import type { PricedAmount } from './rates/rateBook.ts';
import type { Site, ZoneWork } from './site.ts';
import { chosen, lineTerm } from './terms.ts';
import { workedFields } from './workedFields.ts';

/** Which tools are needed, and for how long. */
export interface ToolHours {
  readonly days: Line;
  /** Hours of the zones, line by line: they say which tools take findings and cracks. */
  readonly hours: readonly Line[];
  readonly zones: readonly ZoneWork[];
}

/**
 * Equipment in minor units: days x number x day rate (common practice, no source). The recipes' machines and hand tools
 * stand on site all days, and a vacuum for each that makes dust; so do machines that follow, if something is left for
 * them. A tool that only takes findings away comes for whole days of its own hours.
 */
export function equipmentLines(site: Site, { days, zones, hours }: ToolHours, missing: Set<string>): Line[] {
  const tools = toolsOf(zones, hours);
  const priced = tools.flatMap((method): Line[] => {
    const price = site.book.price(`day/${method}`);
    if (!price) missing.add(`day/${method}`);
    return price ? [dayLine(method, machinesOf(method, zones), days, price)] : [];
  });
  const vacuum = site.book.price('day/vacuum');
  const hoses = tools
    .filter((method) => (methodOf(method)?.dust.vacuumM3h ?? 0) > 0)
    .reduce((sum, method) => sum + machinesOf(method, zones), 0);
  return [
    ...priced,
    ...findingTools(site, hours, tools, missing),
    ...(vacuum && hoses > 0 ? [dayLine('vacuum', hoses, days, vacuum)] : []),
  ];
}

const OF_FINDING = 'hours.finding.';

function findingTools(site: Site, hours: readonly Line[], standing: readonly string[], missing: Set<string>): Line[] {
  const lines = hours.filter((line) => line.code.startsWith(OF_FINDING));
  const byMethod = grouped(lines, ({ code }) => findingRowOf(code.slice(OF_FINDING.length))?.method ?? '');
  const { hoursADay } = site.book.pricing;
  return [...byMethod].flatMap(([method, own]): Line[] => {
    if (standing.includes(method)) return [];
    const price = site.book.price(`day/${method}`);
    if (!price) {
      missing.add(`day/${method}`);
      return [];
    }
    const terms = own.map((line) => lineTerm(line.key, line));
    const days = wholeUp(divide(sumOf(terms.map(({ name }) => name)), term('hours a day')));
    return [
      makeLine({
        ...MONEY,
        code: 'money.equipment',
        of: method,
        records: own.flatMap((line) => line.records),
        formula: multiply(days, term('day rate')),
        terms: [...terms, chosen('hours a day', hoursADay, 'h', site.book.pricingRecord), priceTerm('day rate', price)],
      }),
    ];
  });
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
