import type { PictogramName } from '../canvas/paint/pictograms.ts';
import type { Held } from '../model/doc.ts';
import { zoneCautions, type Caution } from '../takeoff/cautions.ts';
import { prepOfFloor, type ZonePrep } from '../takeoff/prep.ts';
import { requiredCsp } from '../takeoff/profile.ts';
import { zoneCautionsAsk } from '../takeoff/zoneCautionsAsk.ts';
import { paperWords } from '../words/paperWords.ts';
import { cautionPictogram } from './cautionPictogram.ts';
import { edgeMetres } from './edgeMetres.ts';
import { areaText, runText, stepText, type StepText } from './zoneCardText.ts';
import type { ZoneMapInput } from './zoneMapInput.ts';
import { zoneSteps } from './zoneSteps.ts';

export interface CautionText {
  readonly picture: PictogramName;
  readonly words: string;
}

/** What the crew reads of one zone. Built from quantities only: there is nothing of hours or money in it. */
export interface ZoneCard {
  readonly number: string;
  readonly name: string;
  readonly csp: string | null;
  /** Area, edge metres, floor by hand. */
  readonly sums: string;
  readonly steps: readonly StepText[];
  readonly cautions: readonly CautionText[];
  /** Sentences of the holds that stand on it; empty: work may go on. */
  readonly stop: readonly string[];
}

export interface ZoneCards {
  /** Cautions that every zone where work goes on shares; each card then has only its own. */
  readonly common: readonly CautionText[];
  readonly cards: readonly ZoneCard[];
  /** Cutting is held wherever it is. */
  readonly noCutting: boolean;
}

/** Less floor than this, m2, is no zone for anybody. */
export const NOTHING_M2 = 0.005;

export function zoneNumberOf(zone: Held<'zone'> | null): string {
  return zone ? zone.tag.replace(/^\D+/, '') : '–';
}

export function cspOf(zone: Held<'zone'> | null): string | null {
  const csp = requiredCsp(zone);
  if (!csp) return null;
  return paperWords.csp(csp.min === csp.max ? String(csp.min) : `${csp.min} to ${csp.max}`);
}

function captioned(cautions: readonly Caution[]): CautionText[] {
  const said: CautionText[] = [];
  for (const caution of cautions) {
    const picture = cautionPictogram[caution];
    const words = paperWords.cautions[caution];
    // Two drawings of one kind in a row say one thing: the first is the more serious.
    if (picture && words) said.push({ picture, words });
  }
  return said;
}

interface Worked {
  readonly card: Omit<ZoneCard, 'cautions'>;
  readonly cautions: readonly Caution[];
}

function worked(input: ZoneMapInput, prep: ZonePrep): Worked | null {
  const { doc, floor, takeoff, units } = input;
  const measure = takeoff.measure.zones.find((zone) => zone.id === prep.zone);
  if (!measure || measure.netM2 < NOTHING_M2) return null;
  const holds = takeoff.holds.filter((hold) => hold.zone === prep.zone).map((hold) => hold.kind);
  const cutting = takeoff.holds.some(
    ({ kind, records }) => kind === 'inSlab' && records.some((id) => (measure.lengthM[id] ?? 0) > 0),
  );
  const stop = [...new Set(holds)].flatMap((kind) => (kind === 'inSlab' ? [] : [paperWords.holds[kind]]));
  const csp = cspOf(prep.record);
  const steps = zoneSteps({ doc, floor, takeoff, prep, measure })
    .filter(({ kind }) => kind !== 'profile' && kind !== 'release')
    .map((step) => {
      const text = stepText(step, units, csp);
      return step.kind === 'cracks' && cutting ? { ...text, more: paperWords.afterLocating(text.more) } : text;
    });
  const hand = measure.tightM2 >= 0.05 ? [paperWords.byHand(areaText(measure.tightM2, units))] : [];
  const edge = edgeMetres(measure) > 0 ? [paperWords.edge(runText(edgeMetres(measure), units))] : [];
  const stopLine = measure.faces.stop > 0 ? [paperWords.stopLine('', runText(measure.faces.stop, units))] : [];
  const stopped = stop.length > 0;
  return {
    card: {
      number: zoneNumberOf(prep.record),
      name:
        prep.record?.name ??
        (prep.record && prep.zone !== 'rest' ? paperWords.zone(zoneNumberOf(prep.record)) : paperWords.rest),
      csp,
      sums: [areaText(measure.netM2, units), ...(stopped ? [] : [...edge, ...stopLine, ...hand])].join(', '),
      steps: stopped ? [] : steps,
      stop,
    },
    cautions: zoneCautions(zoneCautionsAsk(doc, takeoff, prep)),
  };
}

/** By number; what has none, the rest of the slab, comes last. */
function inOrder(a: { readonly number: string }, b: { readonly number: string }): number {
  const [left, right] = [Number(a.number), Number(b.number)];
  return (Number.isNaN(left) ? Infinity : left) - (Number.isNaN(right) ? Infinity : right) || 0;
}

/** The cards of a floor in the order of their numbers. */
export function zoneCards(input: ZoneMapInput): ZoneCards {
  const zones = prepOfFloor(input.doc, input.floor)
    .map((prep) => worked(input, prep))
    .filter((zone) => zone !== null)
    .toSorted((a, b) => inOrder(a.card, b.card));
  const going = zones.filter(({ card }) => card.stop.length === 0);
  const [first] = going;
  const shared = new Set(
    first && going.length > 1
      ? first.cautions.filter((caution) => going.every((zone) => zone.cautions.includes(caution)))
      : [],
  );
  return {
    common: captioned([...shared]),
    cards: zones.map(({ card, cautions }) => ({
      ...card,
      cautions: captioned(card.stop.length > 0 ? [] : cautions.filter((caution) => !shared.has(caution))),
    })),
    noCutting: input.takeoff.holds.some(({ kind }) => kind === 'inSlab'),
  };
}
