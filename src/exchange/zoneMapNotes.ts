import type { NarrowGap, TightPiece } from '../geometry/floorShape.ts';
import { recordOf } from '../model/doc.ts';
import { firm } from '../canvas/paint/textWidth.ts';
import type { PlanView } from '../canvas/paint/view.ts';
import { keptOutBy } from '../takeoff/keptOut.ts';
import { passageTag } from '../takeoff/passageTag.ts';
import { cascadeOf, edgeMachine, prepOfFloor } from '../takeoff/prep.ts';
import { tightSpots } from '../takeoff/spotLines.ts';
import { paperWords } from '../words/paperWords.ts';
import { tapeText } from './zoneCardText.ts';
import type { ZoneMapInput } from './zoneMapInput.ts';

/** Less cut-off floor than this, m2, is not told of. */
const WORTH_NAMING_M2 = 0.05;

function blockedSentence(input: ZoneMapInput, piece: TightPiece): string | null {
  const by = keptOutBy(piece);
  if (!by) return null;
  const { passage, needsMm, what } = by;
  const run = (lengthMm: number): string => firm(tapeText(lengthMm, input.units));
  const prep = prepOfFloor(input.doc, input.floor).find(({ zone }) => zone === piece.zone);
  const machine = (prep ? edgeMachine(prep)?.name : null) ?? '';
  const door = passageTag(input.doc, passage.id) ?? paperWords.door;
  return what === 'width'
    ? paperWords.tooNarrow(door, run(passage.widthMm), machine, run(needsMm))
    : paperWords.tooLow(door, run(passage.heightMm ?? 0), machine, run(needsMm));
}

/** A narrow place between two faces: with the number of the spot, or for floor that is cut off behind it. */
function narrowSentence(input: ZoneMapInput, gap: NarrowGap, tag: string): string {
  const run = (lengthMm: number): string => firm(tapeText(lengthMm, input.units));
  const machines = prepOfFloor(input.doc, input.floor).flatMap(cascadeOf);
  const machine = machines.find(({ id }) => id === gap.machine)?.name ?? '';
  const between = betweenWhat(
    gap,
    (id) => (recordOf(input.doc, 'obstruction', id) ?? recordOf(input.doc, 'steps', id))?.tag ?? null,
  );
  return sentenceStart(paperWords.narrow(tag, between, run(gap.widthMm), machine, run(gap.needsMm)));
}

function betweenWhat({ sides }: NarrowGap, tagOf: (id: string) => string | null): string {
  const [one, other] = (sides ?? [])
    .toSorted((a, b) => Number(b.kind === 'obstruction') - Number(a.kind === 'obstruction'))
    .map(({ kind, of }) => tagOf(of) ?? paperWords.faces[kind]);
  return one === undefined || other === undefined || (one === other && one === paperWords.faces.wall)
    ? paperWords.betweenWalls
    : paperWords.between(one, other);
}

function sentenceStart(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** Ways in, what machines keep off, and what is too narrow for them. */
export function wayInSentences(input: ZoneMapInput, view: PlanView): string[] {
  const run = (lengthMm: number | null): string | null =>
    lengthMm === null ? null : firm(tapeText(lengthMm, input.units));
  const ways = view.entrances.map(({ tag, widthMm, heightMm }) =>
    paperWords.wayInSays(tag, run(widthMm), run(heightMm)),
  );
  const blocked = (view.measure?.zones ?? [])
    .flatMap((zone) => zone.tight)
    .map((piece) => blockedSentence(input, piece));
  const kept = tightSpots(view.measure?.zones ?? []).flatMap(({ tag, piece: { keptOff } }) =>
    keptOff
      ? [paperWords.keptOff(tag, firm(tapeText(keptOff.clearanceMm, input.units)), paperWords.faces[keptOff.kind])]
      : [],
  );
  const narrow = tightSpots(view.measure?.zones ?? []).flatMap(({ tag, piece: { gap } }) =>
    gap ? [narrowSentence(input, gap, tag)] : [],
  );
  const cutOff = (view.measure?.zones ?? [])
    .flatMap((zone) => zone.tight)
    .flatMap(({ kind, gap, areaM2 }) =>
      kind === 'cutOff' && gap && areaM2 >= WORTH_NAMING_M2 ? [narrowSentence(input, gap, '')] : [],
    );
  const first = ways.length > 0 ? `${ways.join('; ')}.` : paperWords.noWayIn;
  return [first, ...new Set([...kept, ...narrow, ...blocked.filter((sentence) => sentence !== null), ...cutOff])];
}
