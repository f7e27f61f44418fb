import { add, divide, multiply, number, subtract, term } from './formula.ts';
import type { Formula, Line, Term } from './line.ts';
import { makeLine } from './makeLine.ts';
import { plainUse, type Use } from './orderLines.ts';
import type { Chemical } from './rates/findingRow.ts';
import type { Site, ZoneWork } from './site.ts';
import { sprayedWater } from './sprayedWater.ts';
import { allowanceTerm, chosen, factorTerm, lineTerm } from './terms.ts';
import { MADE_UP } from './washes.ts';
import { wetAreas, type WetArea } from './wetAreas.ts';

/**
 * Chemicals of a zone as they are put on and as they are bought, rinses, and the water for all of it; what leaves the
 * floor as wash water or slurry, all of which is picked up. L = m2 x L/m2; a powder in kg. `hours` are machine hours of
 * the zone: a jet takes water by the minute. Rates: table consumables, common practice, no source.
 */
export function zoneWet(site: Site, zone: ZoneWork, hours: readonly Line[]): readonly Use[] {
  const areas = wetAreas(site, zone);
  const applied = chemicalsOf(areas).map((chemical) => appliedLine(site, zone, chemical, areas));
  const bought = applied.map(({ chemical, line }) => concentrateLine(site, zone, chemical, line));
  const rinse = rinseLine(site, zone, areas);
  const sprayed = sprayedWater(site, zone, hours);
  const onFloor = [...applied.map(({ line }) => line), ...rinse];
  return [
    ...onFloor,
    ...bought,
    ...sprayed.water,
    ...waterLine(zone, applied, bought, [...rinse, ...sprayed.water]),
    ...sumLine(zone, 'dust', 'washWater', [...onFloor, ...sprayed.toWash]),
    ...sprayed.slurry,
  ].map(plainUse);
}

const ORDER: readonly Chemical[] = [
  'degreaser',
  'cleaner',
  'finishStripper',
  'coatingStripper',
  'etch',
  'etchGel',
  'neutraliser',
  'hypochlorite',
];

function chemicalsOf(areas: readonly WetArea[]): readonly Chemical[] {
  return ORDER.filter((chemical) => areas.some(({ wash }) => rateOn(wash, chemical) !== null));
}

/** Rate of a chemical in one treatment, L/m2; null where it has none of it. */
function rateOn({ chemical, rate, neutralised }: WetArea['wash'], asked: Chemical): string | null {
  if (chemical === asked) return rate;
  return asked === 'neutraliser' && neutralised ? 'consumables/neutraliser' : null;
}

interface Applied {
  readonly chemical: Chemical;
  readonly line: Line;
}

function appliedLine(site: Site, zone: ZoneWork, chemical: Chemical, areas: readonly WetArea[]): Applied {
  const parts = areas.flatMap((area) => {
    const rate = rateOn(area.wash, chemical);
    return rate === null ? [] : [{ area, rate: allowanceTerm(`${area.name}, on each m2`, site.book.rate(rate)) }];
  });
  const line = makeLine({
    ...base(
      zone,
      parts.flatMap(({ area }) => area.records),
    ),
    code: `chemical.${chemical}`,
    formula: add(...parts.map(({ area, rate }) => multiply(area.area, term(rate.name)))),
    terms: once([...parts.flatMap(({ area }) => area.terms), ...parts.map(({ rate }) => rate)]),
  });
  return { chemical, line };
}

function base(zone: ZoneWork, records: Line['records']) {
  return { trade: 'material', unit: 'L', zone: zone.prep.zone, records } as const;
}

/** Two passes over one net floor name it once. */
function once(terms: readonly Term[]): Term[] {
  return [...new Map(terms.map((each) => [each.name, each])).values()];
}

/** What is bought for it. How it is made up is a likely one: what is put on holds the spread. */
function concentrateLine(site: Site, zone: ZoneWork, chemical: Chemical, applied: Line): Line {
  const made = MADE_UP[chemical];
  const parts = { ...base(zone, applied.records), code: `concentrate.${chemical}` };
  const put = lineTerm('put on', applied);
  if (!made) return makeLine({ ...parts, formula: term('put on'), terms: [put] });
  const strength = factorTerm('made up with', site.book.rate(made.rate));
  const share: Formula = made.unit === 'kg' ? term('made up with') : divide(term('made up with'), number(100));
  return makeLine({ ...parts, unit: made.unit, formula: multiply(term('put on'), share), terms: [put, strength] });
}

function rinseLine(site: Site, zone: ZoneWork, areas: readonly WetArea[]): Line[] {
  const parts = areas.flatMap((area) => {
    const { rinseRate, rinses } = area.wash;
    if (rinseRate === null) return [];
    const rate = allowanceTerm(`${area.name}, each rinse`, site.book.rate(rinseRate));
    return [{ area, rate, times: chosen(`${area.name}, rinses`, rinses, 'number') }];
  });
  if (parts.length === 0) return [];
  const formulas = parts.map(({ area, rate, times }) => multiply(area.area, term(times.name), term(rate.name)));
  const line = makeLine({
    ...base(
      zone,
      parts.flatMap(({ area }) => area.records),
    ),
    code: 'rinse',
    formula: add(...formulas),
    terms: once([...parts.flatMap(({ area }) => area.terms), ...parts.flatMap(({ rate, times }) => [times, rate])]),
  });
  return [line];
}

/** Water to be on site: rinses and jets, and what concentrates and powders are made up with. */
function waterLine(
  zone: ZoneWork,
  applied: readonly Applied[],
  bought: readonly Line[],
  plain: readonly Line[],
): Line[] {
  const made = applied.flatMap(({ chemical, line }, i) => {
    const concentrate = bought[i];
    const row = MADE_UP[chemical];
    return row && concentrate ? [{ line, less: row.unit === 'L' ? concentrate : null }] : [];
  });
  if (made.length + plain.length === 0) return [];
  const parts = made.map(({ line, less }) => (less ? subtract(term(line.key), term(less.key)) : term(line.key)));
  const lines = [...plain, ...made.flatMap(({ line, less }) => (less ? [line, less] : [line]))];
  const line = makeLine({
    ...base(
      zone,
      lines.flatMap(({ records }) => records),
    ),
    code: 'water',
    formula: add(...plain.map(({ key }) => term(key)), ...parts),
    terms: lines.map((each) => lineTerm(each.key, each)),
  });
  return [line];
}

function sumLine(zone: ZoneWork, trade: Line['trade'], code: string, lines: readonly Line[]): Line[] {
  if (lines.length === 0) return [];
  const terms = lines.map((line) => lineTerm(line.key, line));
  const records = lines.flatMap((line) => line.records);
  const formula = add(...terms.map(({ name }) => term(name)));
  return [makeLine({ ...base(zone, records), trade, code, formula, terms })];
}
