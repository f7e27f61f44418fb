import { ringArea } from '../geometry/ring.ts';
import { findingsByKind, findingsIn, type FindingIn } from './findingLines.ts';
import { add, divide, largest, multiply, number, sumOf, term } from './formula.ts';
import { isCutOut } from './holds.ts';
import { isInThePasses } from './inThePasses.ts';
import { keptOf } from './keptShapes.ts';
import type { Formula, Line } from './line.ts';
import { makeLine } from './makeLine.ts';
import { findingRowOf } from './rates/findings.ts';
import { methodOf } from './rates/methods.ts';
import { lengthTerms, named } from './runHours.ts';
import type { Site, ZoneWork } from './site.ts';
import { slowingFactor } from './slowFindings.ts';
import { allowanceTerm, factorTerm, measured, rateTerm } from './terms.ts';

/**
 * Hours on findings of a zone by kind, h: area / rate of the method that takes them away, and at least so many minutes a
 * spot. None for what may not be cut yet, and none for a kind that no method may be planned for.
 */
export function findingHours(site: Site, zone: ZoneWork): Line[] {
  return [...removalHours(site, zone), ...pitHours(site, zone)];
}

function removalHours(site: Site, zone: ZoneWork): Line[] {
  return [...findingsByKind(site, zone)].flatMap(([kind, findings]): Line[] => {
    const method = findingRowOf(kind)?.method ?? null;
    const row = method === null ? null : methodOf(method);
    if (!row || isInThePasses(zone, row) || (site.noCutting && isCutOut(kind))) return [];
    const least = site.book.rate(isCutOut(kind) ? 'labour/spall_patch' : 'labour/finding_least');
    const { records, formula, measures, slowed } = removalOf(findings);
    return [
      makeLine({
        code: `hours.finding.${kind}`,
        trade: 'hours',
        unit: 'h',
        zone: zone.prep.zone,
        records,
        formula,
        terms: [
          ...measures,
          ...slowed.map(({ name, factor }) => factorTerm(name, site.book.rate(factor))),
          rateTerm('rate', site.book.rate(`methods/${row.id}`)),
          ...(isCutOut(kind) ? [rateTerm('rate of filling', site.book.rate('labour/mortar_fill'))] : []),
          allowanceTerm('least minutes', least),
        ],
      }),
    ];
  });
}

/**
 * Findings of one kind with all of their working that no rate speaks in. Kept: a floor has thousands, and an edit changes
 * one.
 */
const removalOf = keptOf((findings: readonly FindingIn[]) => {
  const kind = findings[0]?.finding.kind ?? '';
  const grinds = methodOf(findingRowOf(kind)?.method ?? '')?.group === 'grind';
  const spots = named(findings.map(({ finding, areaM2 }) => ({ id: finding.id, tag: finding.tag, value: areaM2 })));
  const shares = findings.map(({ finding, areaM2 }) => Math.min(1, areaM2 / drawnM2(finding)));
  // The rate of a grinder is that of bare concrete: what it grinds through slows it here as it would in a pass.
  const factors = findings.map(({ finding }) => (grinds ? slowingFactor(finding) : null));
  return {
    records: spots.map(({ id }) => id),
    formula: add(...spots.map(({ name }, i) => spotHours(name, takenIn(name, isCutOut(kind), Boolean(factors[i]))))),
    measures: [
      ...lengthTerms(spots, 'm2'),
      ...spots.map(({ id, name }, i) => measured(shareName(name), shares[i] ?? 1, 'number', id)),
    ],
    slowed: spots.flatMap(({ name }, i) => {
      const factor = factors[i];
      return factor ? [{ name: slowedName(name), factor }] : [];
    }),
  };
});

const drawnM2 = keptOf(({ ring }: FindingIn['finding']) => ringArea(ring) / 1e6);

const shareName = (spot: string): string => `${spot}, part of it in the zone`;

const slowedName = (spot: string): string => `${spot} slows the grinder`;

/** Hours on one spot by its area, with the mortar in it if it is cut out, h. */
function takenIn(name: string, filled: boolean, slowed: boolean): Formula {
  const rate = slowed ? multiply(term('rate'), term(slowedName(name))) : term('rate');
  const taken = divide(term(name), rate);
  return filled ? add(taken, divide(term(name), term('rate of filling'))) : taken;
}

/** A spot takes at least its least time; of that the part of it that lies in the zone. */
function spotHours(name: string, taken: Formula): Formula {
  return largest(taken, divide(multiply(term('least minutes'), term(shareName(name))), number(60)));
}

/** Pitting that has a depth is filled with mortar; without one it is accepted, or somebody measures it. */
function pitHours(site: Site, zone: ZoneWork): Line[] {
  const pits = findingsIn(site, zone).filter(({ finding }) => finding.kind === 'pitting' && finding.depthMm);
  if (pits.length === 0) return [];
  const spots = named(pits.map(({ finding, areaM2 }) => ({ id: finding.id, tag: finding.tag, value: areaM2 })));
  return [
    makeLine({
      code: 'hours.pitFill',
      trade: 'hours',
      unit: 'h',
      zone: zone.prep.zone,
      records: spots.map(({ id }) => id),
      formula: divide(sumOf(spots.map(({ name }) => name)), term('rate')),
      terms: [...lengthTerms(spots, 'm2'), rateTerm('rate', site.book.rate('labour/mortar_fill'))],
    }),
  ];
}
