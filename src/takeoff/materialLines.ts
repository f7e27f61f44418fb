import { cracksIn, jointsIn } from './crackLines.ts';
import { chaseSection, isChased, jointSection, openBelow, type SectionMm } from './crackClass.ts';
import { add, divide, multiply, number, sumOf, term, wholeUp } from './formula.ts';
import { uniqueNames } from './grouped.ts';
import type { Formula, Line, Term } from './line.ts';
import { makeLine } from './makeLine.ts';
import type { Site, ZoneWork } from './site.ts';
import { allowanceTerm, chosen, lineTerm, measured, rateTerm } from './terms.ts';

/**
 * Fillers: L = width x depth (mm) x length (m) / 1000, half of that for a V groove; to buy with waste; cartridges by
 * their usable volume and for the whole floor, since a half-empty one goes on to the next zone.
 */
export function zoneFillers(site: Site, zone: ZoneWork): Line[] {
  return [...crackFiller(site, zone), ...jointFiller(site, zone)];
}

export type Groove = 'rectangle' | 'vee';

/** Volume in L of a groove whose length, width and depth are terms in m, mm and mm. */
export function grooveVolume(groove: Groove, lengthM: string, widthMm: string, depthMm: string): Formula {
  const product = multiply(term(lengthM), term(widthMm), term(depthMm));
  return divide(product, number(groove === 'rectangle' ? 1000 : 2000));
}

interface Run {
  readonly id: Line['records'][number];
  readonly tag: string;
  readonly metres: number;
  readonly section: SectionMm;
  readonly below: SectionMm | null;
}

function crackFiller(site: Site, zone: ZoneWork): Line[] {
  if (site.noCutting) return [];
  const runs = cracksIn(site, zone)
    .filter(({ crack }) => isChased(crack))
    .map(({ crack, metres }): Run => {
      const below = openBelow(crack);
      const goesOn = below.depth > 0 && below.width > 0;
      return { id: crack.id, tag: crack.tag, metres, section: chaseSection(crack), below: goesOn ? below : null };
    });
  return fillerLines(site, zone, 'crackFiller', 'consumables/filler_waste', runs);
}

function jointFiller(site: Site, zone: ZoneWork): Line[] {
  const runs = jointsIn(site, zone).flatMap(({ joint, metres }): Run[] => {
    const section = jointSection(joint);
    return section ? [{ id: joint.id, tag: joint.tag, metres, section, below: null }] : [];
  });
  return fillerLines(site, zone, 'jointFiller', 'consumables/joint_waste', runs);
}

function fillerLines(site: Site, { prep }: ZoneWork, code: string, waste: string, runs: readonly Run[]): Line[] {
  if (runs.length === 0) return [];
  const names = uniqueNames(runs.map((run) => run.tag));
  const parts = runs.map((run, i) => partOf(run, names[i] ?? run.tag));
  const base = { trade: 'material', unit: 'L', zone: prep.zone, records: runs.map(({ id }) => id) } as const;
  const volume = makeLine({
    ...base,
    code,
    formula: add(...parts.map((part) => part.formula)),
    terms: parts.flatMap((part) => part.terms),
  });
  const buy = makeLine({
    ...base,
    code: `${code}Buy`,
    formula: multiply(term('volume'), add(number(1), divide(term('waste'), number(100)))),
    terms: [lineTerm('volume', volume), allowanceTerm('waste', site.book.rate(waste))],
  });
  return [volume, buy];
}

function partOf(run: Run, name: string): { readonly formula: Formula; readonly terms: readonly Term[] } {
  const [width, depth] = [`${name} width`, `${name} depth`];
  const terms = [
    measured(name, run.metres, 'm', run.id),
    chosen(width, run.section.width, 'mm', run.id),
    chosen(depth, run.section.depth, 'mm', run.id),
  ];
  const chase = grooveVolume('rectangle', name, width, depth);
  if (!run.below) return { formula: chase, terms };
  const [openWidth, openDepth] = [`${name} open width`, `${name} open depth under the chase`];
  return {
    formula: add(chase, grooveVolume('rectangle', name, openWidth, openDepth)),
    terms: [
      ...terms,
      chosen(openWidth, run.below.width, 'mm', run.id),
      chosen(openDepth, run.below.depth, 'mm', run.id),
    ],
  };
}

/** Cartridges of the whole floor for one filler; null when there is none to buy. */
export function cartridges(site: Site, code: string, buys: readonly Line[]): Line | null {
  if (buys.length === 0) return null;
  const terms = buys.map((line) => lineTerm(line.key, line));
  return makeLine({
    code,
    trade: 'material',
    unit: 'cartridges',
    zone: null,
    records: buys.flatMap((line) => line.records),
    formula: wholeUp(divide(multiply(sumOf(terms.map(({ name }) => name)), number(1000)), term('usable volume'))),
    terms: [...terms, rateTerm('usable volume', site.book.rate('consumables/cartridge'))],
  });
}
