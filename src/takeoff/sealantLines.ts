import { cracksIn, jointsIn } from './crackLines.ts';
import { add, divide, largest, multiply, number, sumOf, term, wholeUp } from './formula.ts';
import { grouped, uniqueNames } from './grouped.ts';
import type { Formula, Line, Term } from './line.ts';
import { makeLine } from './makeLine.ts';
import { plainUse, type Use } from './orderLines.ts';
import { JOINT_MM } from './rates/cracks.ts';
import type { Priced } from './rates/rateBook.ts';
import type { Site, ZoneWork } from './site.ts';
import { allowanceTerm, chosen, factorTerm, lineTerm, measured } from './terms.ts';

/** A joint or working crack that is carried through: it keeps its movement under a flexible sealant. */
export interface CarriedRun {
  readonly id: Line['records'][number];
  readonly name: string;
  readonly metres: number;
  /** Width that was measured or is usual, mm; null where the table gives a range. */
  readonly widthMm: number | null;
  /** As built, however wide: an isolation joint is not sawn. */
  readonly isolation: boolean;
  /** A reservoir is sawn where it is too narrow for a sealant. */
  readonly sawn: boolean;
}

/**
 * Working cracks and carried joints of a zone. While what lies in the slab has not been located nothing is sawn, and
 * what cannot be sawn cannot be sealed either.
 */
export function carriedRuns(site: Site, zone: ZoneWork): readonly CarriedRun[] {
  const cracks = cracksIn(site, zone)
    .filter(({ crack }) => crack.behaviour === 'working')
    .map(({ crack, metres }) => ({
      id: crack.id,
      tag: crack.tag,
      metres,
      widthMm: crack.widthMm ?? 0,
      isolation: false,
    }));
  const joints = jointsIn(site, zone)
    .filter(({ joint }) => joint.treat === 'carried' || joint.kind === 'isolation')
    .map(({ joint, metres }) => {
      const usual = joint.kind === 'control' ? JOINT_MM.controlWidth : JOINT_MM.constructionWidth;
      const isolation = joint.kind === 'isolation';
      return { id: joint.id, tag: joint.tag, metres, widthMm: joint.widthMm ?? (isolation ? null : usual), isolation };
    });
  const all = [...cracks, ...joints];
  const names = uniqueNames(all.map(({ tag }) => tag));
  const least = site.book.rate('consumables/reservoir').likely;
  return all
    .map(({ tag, ...run }, i) => {
      const sawn = !run.isolation && (run.widthMm ?? least) < least;
      return { ...run, name: names[i] ?? tag, sawn };
    })
    .filter((run) => !(run.sawn && site.noCutting));
}

/**
 * Sealant and backer rod of a zone. L = m x mm x mm / 1000, as deep as half its width; to buy with the waste of joints.
 * Backer rod by the metre and by its diameter: at least 25 % more than the opening (UFC3-270-03); the shape of the
 * sealant is common practice, no source.
 */
export function zoneSealant(
  site: Site,
  zone: ZoneWork,
  runs: readonly CarriedRun[],
): { readonly lines: readonly Line[]; readonly uses: readonly Use[] } {
  if (runs.length === 0) return { lines: [], uses: [] };
  const { book } = site;
  const base = { trade: 'material', unit: 'L', zone: zone.prep.zone, records: runs.map(({ id }) => id) } as const;
  const parts = runs.map((run) => sealantOf(site, run));
  const shared = [
    ...(runs.some(({ isolation }) => !isolation) ? [allowanceTerm(LEAST, book.rate('consumables/reservoir'))] : []),
    factorTerm(SHAPE, book.rate('consumables/sealant_shape')),
  ];
  const volume = makeLine({
    ...base,
    code: 'sealant',
    formula: divide(add(...parts.map(({ formula }) => formula)), multiply(term(SHAPE), number(1000))),
    terms: [...parts.flatMap(({ terms }) => terms), ...shared],
  });
  const buy = makeLine({
    ...base,
    code: 'sealantBuy',
    formula: multiply(term('volume'), add(number(1), divide(term('waste'), number(100)))),
    terms: [lineTerm('volume', volume), allowanceTerm('waste', book.rate('consumables/joint_waste'))],
  });
  const rods = backerRods(site, zone, runs);
  return { lines: [volume, ...rods.sizes], uses: [plainUse(buy), ...rods.uses] };
}

const LEAST = 'least reservoir';
const SHAPE = 'width to depth';

/** Metres x width x width: divided by the shape it is the section. */
function sealantOf(site: Site, run: CarriedRun): { readonly formula: Formula; readonly terms: readonly Term[] } {
  const wide = `${run.name} width`;
  const width =
    run.widthMm === null
      ? allowanceTerm(wide, site.book.rate('consumables/reservoir_isolation'))
      : chosen(wide, run.widthMm, 'mm', run.id);
  const across = run.isolation ? term(wide) : largest(term(wide), term(LEAST));
  return {
    formula: multiply(term(run.name), across, across),
    terms: [measured(run.name, run.metres, 'm', run.id), width],
  };
}

/** Least diameter of a backer rod, whole mm up, for a joint of this width: UFC3-270-03. */
export function backerMm(widthMm: number, over: Pick<Priced, 'likely'>): number {
  return Math.ceil(widthMm * over.likely - 1e-9);
}

/** Backer rods by size: metres that are ordered, and the size itself with its working. */
function backerRods(site: Site, zone: ZoneWork, runs: readonly CarriedRun[]): { sizes: Line[]; uses: Use[] } {
  const { book } = site;
  const over = book.rate('consumables/backer_over');
  const least = book.rate('consumables/reservoir').likely;
  const asBuilt = book.rate('consumables/reservoir_isolation').likely;
  const across = ({ isolation, widthMm }: CarriedRun): number =>
    isolation ? (widthMm ?? asBuilt) : Math.max(widthMm ?? 0, least);
  const groups = grouped(runs, (run) => `${backerMm(across(run), over)} mm`);
  const sized = [...groups].map(([size, own]) => {
    const base = { trade: 'material', of: size, zone: zone.prep.zone, records: own.map(({ id }) => id) } as const;
    const widths = own.map((run) => chosen(`${run.name} width`, across(run), 'mm', run.id));
    const diameter = makeLine({
      ...base,
      code: 'backerSize',
      unit: 'mm',
      formula: wholeUp(multiply(largest(...widths.map(({ name }) => term(name))), term('over the width'))),
      terms: [...widths, factorTerm('over the width', over)],
    });
    const metres = makeLine({
      ...base,
      code: 'backerRod',
      unit: 'm',
      formula: sumOf(own.map(({ name }) => name)),
      terms: own.map(({ name, metres: length, id }) => measured(name, length, 'm', id)),
    });
    return { diameter, use: { line: metres, kind: size, machine: null } };
  });
  return { sizes: sized.map(({ diameter }) => diameter), uses: sized.map(({ use }) => use) };
}
