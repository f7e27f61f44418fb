import { findingsIn } from './findingLines.ts';
import { add, divide, fixed, multiply, number, term } from './formula.ts';
import { uniqueNames } from './grouped.ts';
import { isInThePasses } from './inThePasses.ts';
import type { Formula, Line, Term } from './line.ts';
import { makeLine } from './makeLine.ts';
import { cutOutSpots, depthTerm } from './mortarLines.ts';
import { plainUse, type Use } from './orderLines.ts';
import { coverings } from './rates/coverings.ts';
import { findingRowOf } from './rates/findings.ts';
import { methodOf } from './rates/methods.ts';
import { removalCode } from './rates/removals.ts';
import { coverTerms, removedCovers } from './removedCovers.ts';
import type { Site, ZoneWork } from './site.ts';
import { allowanceTerm, chosen, lineTerm, measured, rateTerm } from './terms.ts';
import { wasteWay, type WasteWay } from './wasteWays.ts';

/** Concrete, kg/m3: 150 lb/ft3 rounded (DENSITY, read second-hand). */
export const CONCRETE_KG_M3 = 2400;

/**
 * Removal mass of a zone, kg = m2 x mm x 2400 / 1000, and coverings by their own thickness and density. What a vacuum
 * takes is dust, with its loose volume in L and what it does to filters; what is shovelled is rubble. `grit` is
 * abrasive that open blasting has spent. Removal, lives, bulk density: common practice, no source.
 */
export function zoneDust(
  site: Site,
  zone: ZoneWork,
  grit: readonly Line[],
): { readonly lines: readonly Line[]; readonly uses: readonly Use[] } {
  const dust = massOf(site, zone, 'dust', []);
  const rubble = massOf(site, zone, 'rubble', grit);
  const uses = [dust, rubble].flatMap((line) => (line ? [plainUse(line)] : []));
  if (!dust) return { lines: [], uses };
  const base = { trade: 'dust', zone: zone.prep.zone, records: dust.records } as const;
  const volume = makeLine({
    ...base,
    code: 'dustVolume',
    unit: 'L',
    formula: multiply(divide(term('mass'), term('bulk density')), number(1000)),
    terms: [lineTerm('mass', dust), rateTerm('bulk density', site.book.rate('consumables/dust_bulk'))],
  });
  const filters = makeLine({
    ...base,
    code: 'filterWear',
    unit: 'filters',
    formula: divide(term('mass'), term('life')),
    terms: [lineTerm('mass', dust), rateTerm('life', site.book.rate('consumables/filter'))],
  });
  return { lines: [volume], uses: [...uses, plainUse(filters)] };
}

interface Part {
  readonly formula: Formula;
  readonly terms: readonly Term[];
}

function massOf(site: Site, zone: ZoneWork, way: Exclude<WasteWay, 'wet'>, grit: readonly Line[]): Line | null {
  const { prep } = zone;
  const concrete = [
    passMass(site, zone, way),
    ...soilMasses(site, zone, way),
    ...(way === 'rubble' ? holeMasses(site, zone) : []),
  ];
  const stone = concrete.filter((part): part is Part => part !== null);
  const covers = removedCovers(site, zone, way);
  const spent = grit.map((line) => lineTerm(line.key, line));
  if (stone.length + covers.length + spent.length === 0) return null;
  return makeLine({
    code: way === 'dust' ? 'dustMass' : 'rubbleMass',
    trade: 'dust',
    unit: 'kg',
    zone: prep.zone,
    records: prep.zone === 'rest' ? [] : [prep.zone],
    formula: add(
      ...stone.map(({ formula }) => divide(multiply(formula, term('concrete')), number(1000))),
      ...covers.map(({ mass }) => mass),
      ...spent.map(({ name }) => term(name)),
    ),
    terms: [
      ...stone.flatMap(({ terms }) => terms),
      ...(stone.length > 0 ? [concreteTerm()] : []),
      ...coverTerms(covers),
      ...spent,
    ],
  });
}

/** Passes take all of the net floor: strip and hand areas come down to the same level. */
function passMass({ book }: Site, { prep, measure }: ZoneWork, way: WasteWay): Part | null {
  const passes = prep.passes.flatMap((pass, i) => {
    const row = methodOf(pass.method);
    return row && wasteWay(row) === way && row.removalMm[1] > 0 ? [{ pass, row, name: `pass ${i + 1}` }] : [];
  });
  if (passes.length === 0) return null;
  const depth = passes.map(({ name }) => multiply(term(`${name}, times over`), term(`${name}, removal`)));
  return {
    formula: multiply(term('net floor'), add(...depth)),
    terms: [
      measured('net floor', measure.netM2, 'm2', `netFloor|${prep.zone}`),
      ...passes.flatMap(({ pass, row, name }) => [
        chosen(`${name}, times over`, pass.times, 'number', pass.record),
        allowanceTerm(`${name}, removal`, book.rate(removalCode(row.id))),
      ]),
    ],
  };
}

/** Concrete that has to go because of what went into it, by a method that no pass has. Coverings have their own mass. */
function soilMasses(site: Site, zone: ZoneWork, way: WasteWay): Part[] {
  const found = findingsIn(site, zone).flatMap(({ finding, areaM2 }) => {
    const row = methodOf(findingRowOf(finding.kind)?.method ?? '');
    const covers = coverings.some(({ id }) => id === finding.kind);
    if (!row || covers || row.id === 'breaker_hand' || isInThePasses(zone, row)) return [];
    return wasteWay(row) === way && row.removalMm[1] > 0 ? [{ finding, areaM2, row }] : [];
  });
  const names = uniqueNames(found.map(({ finding }) => finding.tag));
  return found.map(({ finding, areaM2, row }, i) => {
    const name = `${names[i] ?? finding.tag} area`;
    const removal = `${names[i] ?? finding.tag} removal`;
    return {
      formula: multiply(term(name), term(removal)),
      terms: [
        measured(name, areaM2, 'm2', finding.id),
        finding.depthMm === undefined
          ? allowanceTerm(removal, site.book.rate(removalCode(row.id)))
          : chosen(removal, finding.depthMm, 'mm', finding.id),
      ],
    };
  });
}

function holeMasses(site: Site, zone: ZoneWork): Part[] {
  return cutOutSpots(site, zone).map((hole) => {
    const depth = depthTerm(site, hole);
    return {
      formula: multiply(term(hole.name), term(depth.name)),
      terms: [measured(hole.name, hole.areaM2, 'm2', hole.id), depth],
    };
  });
}

function concreteTerm(): Term {
  const value = fixed(CONCRETE_KG_M3);
  return { name: 'concrete', value, unit: 'kg/m3', source: 'DENSITY', provenance: 'R2', fromMemory: false, from: null };
}
