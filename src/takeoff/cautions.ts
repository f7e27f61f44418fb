import type { HoldKind } from './line.ts';
import type { ZonePrep } from './prep.ts';
import type { MethodGroup } from './rates/methodRow.ts';
import { findingRowOf } from './rates/findings.ts';
import { methodOf } from './rates/methods.ts';
import { washOfFinding, washOfMethod } from './washes.ts';

/**
 * What can hurt, by method: codes whose words stand in words/takeoffWords.ts. Sources with each sentence there. Every
 * card ends with `localLaw`: local law and the site rules come first.
 */
export type Caution =
  | 'asbestos'
  | 'lead'
  | 'locate'
  | 'gas'
  | 'fall'
  | 'silica'
  | 'silicaNotListed'
  | 'vacuumBetweenPasses'
  | 'earsEyes'
  | 'wheel'
  | 'vibration'
  | 'chips'
  | 'electric'
  | 'heavy'
  | 'rotating'
  | 'shot'
  | 'jet'
  | 'chemical'
  | 'acidAndHypochlorite'
  | 'hypochlorite'
  | 'fire'
  | 'fumes'
  | 'slips'
  | 'rideOn'
  | 'resin'
  | 'localLaw';

const OF_GROUP: Readonly<Record<MethodGroup, readonly Caution[]>> = {
  wash: ['chemical', 'electric', 'slips'],
  etch: ['chemical', 'slips'],
  strip: ['chemical', 'fire', 'slips'],
  buff: ['electric', 'earsEyes', 'rotating'],
  waterJet: ['jet', 'electric', 'earsEyes', 'slips'],
  openBlast: ['silicaNotListed', 'earsEyes', 'chips'],
  handGrind: ['silica', 'wheel', 'earsEyes', 'vibration', 'electric'],
  grind: ['silica', 'vacuumBetweenPasses', 'electric', 'earsEyes', 'heavy', 'rotating'],
  bush: ['silica', 'electric', 'earsEyes', 'heavy', 'chips'],
  shot: ['silicaNotListed', 'shot', 'earsEyes', 'electric', 'heavy'],
  scarify: ['silica', 'locate', 'chips', 'earsEyes', 'vibration', 'heavy'],
  scabble: ['silica', 'locate', 'chips', 'earsEyes', 'vibration'],
  handImpact: ['silica', 'locate', 'chips', 'earsEyes', 'vibration'],
  handScrape: ['chips'],
  scrape: ['chips', 'earsEyes', 'heavy'],
  chase: ['silica', 'locate', 'wheel', 'earsEyes', 'vibration', 'fire'],
};

/** Engines that burn something: carbon monoxide indoors. */
const BURNS = /diesel|engine|gas/;

/** Cautions of one method, worst first; `localLaw` is not among them. */
export function cautionsOf(method: string): readonly Caution[] {
  const row = methodOf(method);
  if (!row) return [];
  const ride: Caution[] = row.id.endsWith('_ride') ? ['rideOn'] : [];
  const fumes: Caution[] = BURNS.test(row.power.supply) ? ['fumes'] : [];
  return [...OF_GROUP[row.group], ...ride, ...fumes];
}

/** What a zone's card says beside its work. */
export interface CautionsAsk {
  readonly prep: ZonePrep;
  readonly holds: readonly HoldKind[];
  /** Kinds of what was found in it: each is taken away by a method that has dangers of its own. */
  readonly findings: readonly string[];
  readonly chases: boolean;
  readonly fills: boolean;
  readonly gasAppliance: boolean;
  /** A drop along its edge, or a pit in it. */
  readonly drops: boolean;
}

/**
 * Cautions of a zone: its holds first, then those of its methods without repeating, then the line on local law. A zone
 * that is held gets no method's cautions: there is no work to be careful at.
 */
export function zoneCautions({
  prep,
  holds,
  findings,
  chases,
  fills,
  gasAppliance,
  drops,
}: CautionsAsk): readonly Caution[] {
  const onZone = holds.filter((hold) => hold !== 'inSlab');
  if (onZone.length > 0) return [...new Set<Caution>([...(onZone as Caution[]), 'localLaw'])];
  const following = prep.followers.map(({ method }) => method);
  const methods = prep.passes.flatMap((pass) => [
    pass.method,
    ...following,
    ...(pass.edgeMethod ? [pass.edgeMethod] : []),
  ]);
  return [
    ...new Set<Caution>([
      ...(holds.includes('inSlab') ? (['locate'] as const) : []),
      ...(drops ? (['fall'] as const) : []),
      ...(gasAppliance ? (['gas'] as const) : []),
      ...chemicalCautions(chemicalsOf(prep, findings)),
      ...[...methods, ...findings.flatMap(treatedBy), ...(chases ? ['crack_chase'] : [])].flatMap(cautionsOf),
      ...(fills ? (['resin'] as const) : []),
      'localLaw',
    ]),
  ];
}

/** What is put on the floor of a zone, by its passes and by what takes its findings away. */
function chemicalsOf({ passes }: ZonePrep, findings: readonly string[]): ReadonlySet<string> {
  const washes = [...passes.map(({ method }) => washOfMethod(method)), ...findings.map(washOfFinding)];
  return new Set(washes.flatMap((wash) => wash?.chemical ?? []));
}

/**
 * Chemicals that must not meet: an acid sets chlorine free from hypochlorite, and ammonia makes chloramines of it. Never
 * in one zone on one day: common practice, no source.
 */
export function chemicalCautions(chemicals: ReadonlySet<string>): readonly Caution[] {
  if (!chemicals.has('hypochlorite')) return [];
  const acid = chemicals.has('etch') || chemicals.has('etchGel');
  return acid ? ['acidAndHypochlorite', 'hypochlorite'] : ['hypochlorite'];
}

/** What is ground off goes with the zone's own passes, whatever machine they have. */
function treatedBy(kind: string): readonly string[] {
  const method = findingRowOf(kind)?.method ?? null;
  return method === null || methodOf(method)?.group === 'grind' ? [] : [method];
}
