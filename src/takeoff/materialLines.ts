import { type CrackIn, cracksIn, jointsIn } from './crackLines.ts';
import { chaseSection, isChased, isSawnOut, jointSection, openBelow, type SectionMm } from './crackClass.ts';
import { add, divide, multiply, number, subtract, term } from './formula.ts';
import { uniqueNames } from './grouped.ts';
import { keptOf } from './keptShapes.ts';
import type { Formula, Line, Term } from './line.ts';
import { makeLine, type LineParts } from './makeLine.ts';
import type { Site, ZoneWork } from './site.ts';
import { allowanceTerm, chosen, factorTerm, lineTerm, measured } from './terms.ts';
import { WIDE_MM } from './rates/cracks.ts';

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
  /** Filled with a resin that takes sand. */
  readonly wide: boolean;
}

function crackFiller(site: Site, zone: ZoneWork): Line[] {
  if (site.noCutting) return [];
  return fillerLines(site, zone, 'crackFiller', 'consumables/filler_waste', chasedRuns(cracksIn(site, zone)));
}

const chasedRuns = keptOf((cracks: readonly CrackIn[]): readonly Run[] =>
  cracks.filter(({ crack }) => isChased(crack)).map(chasedRun),
);

const chasedRun = keptOf(({ crack, metres }: CrackIn): Run => {
  const below = openBelow(crack);
  const goesOn = below.depth > 0 && below.width > 0;
  const wide = (crack.widthMm ?? 0) > WIDE_MM;
  return { id: crack.id, tag: crack.tag, metres, section: chaseSection(crack), below: goesOn ? below : null, wide };
});

function jointFiller(site: Site, zone: ZoneWork): Line[] {
  const runs = jointsIn(site, zone).flatMap(({ joint, metres }): Run[] => {
    // What cannot be sawn out cannot be filled either.
    const section = site.noCutting && isSawnOut(joint) ? null : jointSection(joint);
    return section ? [{ id: joint.id, tag: joint.tag, metres, section, below: null, wide: false }] : [];
  });
  return fillerLines(site, zone, 'jointFiller', 'consumables/joint_waste', runs);
}

function fillerLines(site: Site, { prep }: ZoneWork, code: string, waste: string, runs: readonly Run[]): Line[] {
  if (runs.length === 0) return [];
  const base = { trade: 'material', unit: 'L', zone: prep.zone } as const;
  const filled = (ofCode: string, own: readonly Run[]): Line => makeLine({ ...base, code: ofCode, ...filledOf(own) });
  const volume = filled(code, runs);
  const wide = runs.filter((run) => run.wide);
  const sanded = wide.length > 0 ? filled('sandedFill', wide) : null;
  const share = factorTerm('sand', site.book.rate('consumables/sand_share'));
  const sand = multiply(term('sanded'), divide(term('sand'), number(100)));
  const resin = sanded ? subtract(term('volume'), sand) : term('volume');
  const buy = makeLine({
    ...base,
    records: volume.records,
    code: `${code}Buy`,
    formula: multiply(resin, add(number(1), divide(term('waste'), number(100)))),
    terms: [
      lineTerm('volume', volume),
      ...(sanded ? [lineTerm('sanded', sanded), share] : []),
      allowanceTerm('waste', site.book.rate(waste)),
    ],
  });
  if (!sanded) return [volume, buy];
  const sandMass = makeLine({
    ...base,
    unit: 'kg',
    records: sanded.records,
    code: 'fillSand',
    formula: multiply(sand, term('loose sand')),
    terms: [lineTerm('sanded', sanded), share, allowanceTerm('loose sand', site.book.rate('consumables/sand_bulk'))],
  });
  return [volume, sanded, buy, sandMass];
}

/** Records, volume and terms of all runs of a zone. */
const filledOf = keptOf((runs: readonly Run[]): Pick<LineParts, 'records' | 'formula' | 'terms'> => {
  const names = uniqueNames(runs.map((run) => run.tag));
  const parts = runs.map((run, i) => (names[i] === run.tag ? partByTag(run) : partOf(run, names[i] ?? run.tag)));
  return {
    records: runs.map(({ id }) => id),
    formula: add(...parts.map((part) => part.formula)),
    terms: parts.flatMap((part) => part.terms),
  };
});

/** Kept: a floor has thousands of cracks, and an edit changes one. */
const partByTag = keptOf((run: Run) => partOf(run, run.tag));

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
