import { findingsIn } from './findingLines.ts';
import { add, divide, multiply, number, term } from './formula.ts';
import { uniqueNames } from './grouped.ts';
import { isCutOut } from './holds.ts';
import type { Line, Term } from './line.ts';
import { makeLine } from './makeLine.ts';
import type { Site, ZoneWork } from './site.ts';
import { allowanceTerm, chosen, lineTerm, measured } from './terms.ts';

/** A hole that is filled: a hollow spot that is cut out, or pitting with a depth. */
interface Hole {
  readonly id: Line['records'][number];
  readonly name: string;
  readonly areaM2: number;
  readonly depthMm: number | null;
}

/** Hollow spots that are cut out of a zone; none while what lies in the slab has not been located. */
export function cutOutSpots(site: Site, zone: ZoneWork): readonly Hole[] {
  return site.noCutting ? [] : holes(site, zone, (kind) => isCutOut(kind));
}

function holes(site: Site, zone: ZoneWork, wanted: (kind: string, depthMm: number | null) => boolean): Hole[] {
  const found = findingsIn(site, zone).filter(({ finding }) => wanted(finding.kind, finding.depthMm ?? null));
  const names = uniqueNames(found.map(({ finding }) => finding.tag));
  return found.map(({ finding, areaM2 }, i) => ({
    id: finding.id,
    name: names[i] ?? finding.tag,
    areaM2,
    depthMm: finding.depthMm ?? null,
  }));
}

/** Depth of a hole, mm: as measured, or down to sound concrete as usual. */
export function depthTerm(site: Site, { name, depthMm, id }: Hole): Term {
  const depth = `${name} depth`;
  return depthMm === null
    ? allowanceTerm(depth, site.book.rate('consumables/spall_depth'))
    : chosen(depth, depthMm, 'mm', id);
}

/**
 * Repair mortar of a zone, L: 1 m2 x 1 mm = 1 L (arithmetic), to buy with what stays in the bucket. Pitting without a
 * depth is not filled: it is accepted, or somebody measures it.
 */
export function zoneMortar(site: Site, zone: ZoneWork): Line[] {
  const filled = holes(site, zone, (kind, depthMm) =>
    isCutOut(kind) ? !site.noCutting : kind === 'pitting' && depthMm !== null,
  );
  if (filled.length === 0) return [];
  const base = {
    trade: 'material',
    unit: 'L',
    zone: zone.prep.zone,
    records: filled.map(({ id }) => id),
  } as const;
  const depths = filled.map((hole) => depthTerm(site, hole));
  const volume = makeLine({
    ...base,
    code: 'mortar',
    formula: add(...filled.map(({ name }, i) => multiply(term(name), term(depths[i]?.name ?? name)))),
    terms: [...filled.map(({ name, areaM2, id }) => measured(name, areaM2, 'm2', id)), ...depths],
  });
  const buy = makeLine({
    ...base,
    code: 'mortarBuy',
    formula: multiply(term('volume'), add(number(1), divide(term('waste'), number(100)))),
    terms: [lineTerm('volume', volume), allowanceTerm('waste', site.book.rate('consumables/mortar_waste'))],
  });
  return [volume, buy];
}
