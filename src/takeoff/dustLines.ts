import { findingsIn } from './findingLines.ts';
import { add, divide, multiply, number, sumOf, term, wholeUp } from './formula.ts';
import type { Line, Term } from './line.ts';
import { makeLine } from './makeLine.ts';
import { coverings } from './rates/coverings.ts';
import type { MethodGroup } from './rates/methodRow.ts';
import { methodOf } from './rates/methods.ts';
import type { Site, ZoneWork } from './site.ts';
import { chosen, lineTerm, measured, rateTerm } from './terms.ts';

/** Concrete, kg/m3: 150 lb/ft3 rounded (DENSITY, read second-hand). */
export const CONCRETE_KG_M3 = 2400;
/** Old coatings, kg/m3; common practice, no source. */
const COATING_KG_M3 = { low: 1200, likely: 1450, high: 1700 } as const;

/** Wet methods leave slurry and wash water, no dry dust. */
const WET: readonly MethodGroup[] = ['wash', 'etch', 'strip', 'waterJet'];

/**
 * Dry waste of a zone: kg = m2 x mm x 2400 / 1000, once over for each pass, over strip and hand areas as well, which
 * come down to the same level; coatings by their own thickness. Loose volume in L by bulk density.
 */
export function zoneDust(site: Site, zone: ZoneWork): Line[] {
  const { prep, measure } = zone;
  const passes = prep.passes.flatMap((pass, i) => {
    const row = methodOf(pass.method);
    return row && !WET.includes(row.group) && row.removalMm[1] > 0 ? [{ pass, row, name: `pass ${i + 1}` }] : [];
  });
  const base = { trade: 'dust', zone: prep.zone, records: prep.zone === 'rest' ? [] : [prep.zone] } as const;
  const coats = coatings(site, zone);
  if (passes.length === 0 && coats.length === 0) return [];
  const removal = passes.flatMap(({ pass, row, name }): Term[] => [
    chosen(`${name}, times over`, pass.times, 'number', pass.record),
    removalTerm(`${name}, removal`, row.removalMm),
  ]);
  const depth = add(...passes.map(({ name }) => multiply(term(`${name}, times over`), term(`${name}, removal`))));
  const mass = makeLine({
    ...base,
    code: 'dustMass',
    unit: 'kg',
    formula: add(
      divide(multiply(term('net floor'), depth, term('concrete')), number(1000)),
      ...coats.map(({ name }) =>
        divide(multiply(term(`${name} area`), term(`${name} thickness`), term('coating')), number(1000)),
      ),
    ),
    terms: [
      measured('net floor', measure.netM2, 'm2', `netFloor|${prep.zone}`),
      ...removal,
      concreteTerm(),
      ...coats.flatMap(({ name, id, areaM2, thicknessMm }) => [
        measured(`${name} area`, areaM2, 'm2', id),
        chosen(`${name} thickness`, thicknessMm, 'mm', id),
      ]),
      ...(coats.length > 0 ? [coatingTerm()] : []),
    ],
  });
  const volume = makeLine({
    ...base,
    code: 'dustVolume',
    unit: 'L',
    formula: multiply(divide(term('mass'), term('bulk density')), number(1000)),
    terms: [lineTerm('mass', mass), rateTerm('bulk density', site.book.rate('consumables/dust_bulk'))],
  });
  return [mass, volume];
}

/** Bags of the whole floor, by what a person may lift. */
export function dustBags(site: Site, masses: readonly Line[]): Line | null {
  if (masses.length === 0) return null;
  const terms = masses.map((line) => lineTerm(line.key, line));
  return makeLine({
    code: 'dustBags',
    trade: 'dust',
    unit: 'bags',
    zone: null,
    records: [],
    formula: wholeUp(divide(sumOf(terms.map(({ name }) => name)), term('bag'))),
    terms: [...terms, rateTerm('bag', site.book.rate('consumables/bag_fill'))],
  });
}

/** Likely is the middle of low and high: 0.3 mm for a planetary grinder. */
function removalTerm(name: string, [low, high]: readonly [number, number]): Term {
  return {
    name,
    value: { low, likely: (low + high) / 2, high },
    unit: 'mm',
    source: 'common practice, no source',
    provenance: 'P',
    fromMemory: false,
    from: null,
  };
}

function concreteTerm(): Term {
  const value = { low: CONCRETE_KG_M3, likely: CONCRETE_KG_M3, high: CONCRETE_KG_M3 };
  return { name: 'concrete', value, unit: 'kg/m3', source: 'DENSITY', provenance: 'R2', fromMemory: false, from: null };
}

function coatingTerm(): Term {
  return {
    name: 'coating',
    value: COATING_KG_M3,
    unit: 'kg/m3',
    source: 'common practice, no source',
    provenance: 'P',
    fromMemory: false,
    from: null,
  };
}

function coatings(site: Site, zone: ZoneWork) {
  return findingsIn(site, zone).flatMap(({ finding, areaM2 }) => {
    const thicknessMm = finding.thicknessMm ?? 0;
    const covers = coverings.some((row) => row.id === finding.kind);
    return covers && thicknessMm > 0
      ? [{ name: finding.tag, id: finding.id, areaM2, thicknessMm: thicknessMm * (finding.layers ?? 1) }]
      : [];
  });
}
