import type { Finding } from '../model/records/finding.ts';
import { findingsIn } from './findingLines.ts';
import { divide, multiply, number, subtract, term } from './formula.ts';
import { uniqueNames } from './grouped.ts';
import { isInThePasses } from './inThePasses.ts';
import type { Formula, Term } from './line.ts';
import { findingRowOf } from './rates/findings.ts';
import { methodOf } from './rates/methods.ts';
import type { Site, ZoneWork } from './site.ts';
import { factorTerm, measured } from './terms.ts';

/** Paint thinner than this, mm, is slowed by the factor of a sealer and not of an epoxy; common practice, no source. */
const THIN_COAT_MM = 0.25;

/** A finding that slows work, and how much of it lies in each part of a zone, m2. */
export interface SlowFinding {
  readonly id: string;
  readonly tag: string;
  /** Code of its factor. */
  readonly factor: string;
  readonly fieldM2: number;
  readonly stripM2: number;
  readonly tightM2: number;
}

/**
 * Findings that slow the work over them, by field, strip and hand area as the engine tells them apart. Where several lie
 * over each other the slowest speaks, once: no loss is counted twice. Where the engine does not say, all of a finding
 * counts as field.
 */
export function slowFindings(site: Site, zone: ZoneWork): SlowFinding[] {
  const found = findingsIn(site, zone).flatMap(({ finding, areaM2 }) => {
    const factor = isGoneBefore(zone, finding.kind) ? null : slowingFactor(finding);
    return factor ? [{ id: finding.id, tag: finding.tag, factor, areaM2 }] : [];
  });
  const names = uniqueNames(found.map(({ tag }) => tag));
  const slow = found.map((each, i) => ({ ...each, tag: names[i] ?? each.tag }));
  if (slow.length === 0) return [];
  const parts = zone.measure.findingParts;
  if (!parts) return slow.map(({ areaM2, ...finding }) => ({ ...finding, fieldM2: areaM2, stripM2: 0, tightM2: 0 }));
  const likelyOf = new Map(slow.map(({ id, factor }) => [id as string, site.book.rate(factor).likely]));
  const sums = new Map(slow.map(({ id }) => [id as string, { fieldM2: 0, stripM2: 0, tightM2: 0 }]));
  for (const part of parts) {
    const [slowest] = part.findings
      .filter((id) => likelyOf.has(id))
      .toSorted((a, b) => (likelyOf.get(a) ?? 1) - (likelyOf.get(b) ?? 1));
    const sum = slowest === undefined ? undefined : sums.get(slowest);
    if (!sum) continue;
    sum.fieldM2 += part.fieldM2;
    sum.stripM2 += part.stripM2;
    sum.tightM2 += part.tightM2;
  }
  return slow.map(({ id, tag, factor }) => ({
    id,
    tag,
    factor,
    ...(sums.get(id) ?? { fieldM2: 0, stripM2: 0, tightM2: 0 }),
  }));
}

/** What a finding adds to an area, m2: its own area there x (1 / factor - 1). */
export interface SlowArea {
  readonly terms: readonly Term[];
  readonly areaName: string;
  readonly factorName: string;
  readonly factor: number;
  readonly extra: Formula;
}

/** The area of one finding in m2 as terms and formula, with its factor. */
export function slowArea(site: Site, { tag, id, factor }: SlowFinding, areaM2: number): SlowArea {
  const [areaName, factorName] = [`${tag} area`, `${tag} slows the pass`];
  const row = site.book.rate(factor);
  return {
    terms: [measured(areaName, areaM2, 'm2', id), factorTerm(factorName, row)],
    areaName,
    factorName,
    factor: row.likely,
    extra: multiply(term(areaName), subtract(divide(number(1), term(factorName)), number(1))),
  };
}

/** Findings laid into areas one after the other: what one area cannot hold of them lies in the next. */
export function laidInto(
  site: Site,
  findings: readonly SlowFinding[],
  amountOf: (finding: SlowFinding) => number,
  areasM2: readonly number[],
): SlowArea[][] {
  const rest = findings.map((finding) => ({ finding, leftM2: amountOf(finding) }));
  return areasM2.map((areaM2) => {
    let left = areaM2;
    return rest.flatMap((each): SlowArea[] => {
      const here = Math.min(each.leftM2, left);
      if (here <= 0) return [];
      left -= here;
      each.leftM2 -= here;
      return [slowArea(site, each.finding, here)];
    });
  });
}

/** Code of the factor by which a finding slows what grinds it off; null where it slows nothing. */
export function slowingFactor({ kind, thicknessMm }: Pick<Finding, 'kind' | 'thicknessMm'>): string | null {
  const row = findingRowOf(kind);
  if (!row?.factor) return null;
  const thin = kind === 'paint' && thicknessMm !== undefined && thicknessMm < THIN_COAT_MM;
  return `factors/${thin ? 'finding/sealer' : row.factor}`;
}

/**
 * A finding whose own removal takes concrete off as well is gone by then: it slows nothing after it. What is ground off
 * is so only where no pass of the zone does it.
 */
function isGoneBefore(zone: ZoneWork, kind: string): boolean {
  const row = methodOf(findingRowOf(kind)?.method ?? '');
  if (row === null || row.removalMm[0] <= 0) return false;
  return row.group !== 'grind' || !isInThePasses(zone, row);
}
