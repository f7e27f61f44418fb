import { cracksIn, jointsIn } from './crackLines.ts';
import { isChased, jointSection } from './crackClass.ts';
import { findingsIn } from './findingLines.ts';
import { divide, sumOf, term } from './formula.ts';
import { grouped, uniqueNames } from './grouped.ts';
import { isCutOut } from './holds.ts';
import type { Line, Term } from './line.ts';
import { makeLine } from './makeLine.ts';
import { findingRowOf } from './rates/findings.ts';
import { methodOf } from './rates/methods.ts';
import type { Site, ZoneWork } from './site.ts';
import { measured, rateTerm } from './terms.ts';

/**
 * Hours on cracks, joints and findings of a zone. While what lies in the slab has not been located, a crack that would
 * be chased has no hours at all: what cannot be cut cannot be filled either.
 */
export function repairHours(site: Site, zone: ZoneWork): Line[] {
  return [...crackHours(site, zone), ...jointHours(site, zone), ...findingHours(site, zone)];
}

const CRACK_STEPS = [
  { code: 'hours.crackChase', rate: 'labour/crack_chase' },
  { code: 'hours.crackClean', rate: 'labour/crack_clean' },
  { code: 'hours.crackFill', rate: 'labour/crack_fill' },
  { code: 'hours.crackTrim', rate: 'labour/crack_trim' },
] as const;

function crackHours(site: Site, zone: ZoneWork): Line[] {
  const chased = cracksIn(site, zone).filter(({ crack }) => isChased(crack));
  if (chased.length === 0 || site.noCutting) return [];
  const runs = named(chased.map(({ crack, metres }) => ({ id: crack.id, tag: crack.tag, value: metres })));
  return CRACK_STEPS.map(({ code, rate }) => runHours(site, zone, code, rate, runs));
}

function jointHours(site: Site, zone: ZoneWork): Line[] {
  const filled = jointsIn(site, zone).filter(({ joint }) => jointSection(joint) !== null);
  if (filled.length === 0) return [];
  const runs = named(filled.map(({ joint, metres }) => ({ id: joint.id, tag: joint.tag, value: metres })));
  return [
    runHours(site, zone, 'hours.jointFill', 'labour/joint_fill', runs),
    runHours(site, zone, 'hours.jointTrim', 'labour/crack_trim', runs),
  ];
}

interface Named {
  readonly id: Line['records'][number];
  readonly name: string;
  readonly value: number;
}

function named(items: readonly { readonly id: Named['id']; readonly tag: string; readonly value: number }[]): Named[] {
  const names = uniqueNames(items.map((item) => item.tag));
  return items.map(({ id, tag, value }, i) => ({ id, name: names[i] ?? tag, value }));
}

function runHours(site: Site, zone: ZoneWork, code: string, rate: string, runs: readonly Named[]): Line {
  return makeLine({
    code,
    trade: 'hours',
    unit: 'h',
    zone: zone.prep.zone,
    records: runs.map(({ id }) => id),
    formula: divide(sumOf(runs.map(({ name }) => name)), term('rate')),
    terms: [...lengthTerms(runs, 'm'), rateTerm('rate', site.book.rate(rate))],
  });
}

function lengthTerms(runs: readonly Named[], unit: string): Term[] {
  return runs.map(({ id, name, value }) => measured(name, value, unit, id));
}

/** Ground off in the zone's own passes: there the finding's factor speaks, and no hours stand beside it. */
const IN_THE_PASSES = ['grind'];

function findingHours(site: Site, zone: ZoneWork): Line[] {
  const groups = grouped(findingsIn(site, zone), ({ finding }) => finding.kind);
  return [...groups].flatMap(([kind, findings]): Line[] => {
    const method = findingRowOf(kind)?.method ?? null;
    const row = method === null ? null : methodOf(method);
    if (!row || IN_THE_PASSES.includes(row.group) || (site.noCutting && isCutOut(kind))) return [];
    const runs = named(findings.map(({ finding, areaM2 }) => ({ id: finding.id, tag: finding.tag, value: areaM2 })));
    return [
      makeLine({
        code: `hours.finding.${kind}`,
        trade: 'hours',
        unit: 'h',
        zone: zone.prep.zone,
        records: runs.map(({ id }) => id),
        formula: divide(sumOf(runs.map(({ name }) => name)), term('rate')),
        terms: [...lengthTerms(runs, 'm2'), rateTerm('rate', site.book.rate(`methods/${row.id}`))],
      }),
    ];
  });
}
