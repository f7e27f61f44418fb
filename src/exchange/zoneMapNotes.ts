import type { TightPiece } from '../geometry/floorShape.ts';
import { firm } from '../canvas/paint/textWidth.ts';
import type { PlanView } from '../canvas/paint/view.ts';
import { keptOutBy } from '../takeoff/keptOut.ts';
import { passageTag } from '../takeoff/passageTag.ts';
import { prepOfFloor } from '../takeoff/prep.ts';
import { tightSpots } from '../takeoff/spotLines.ts';
import { paperWords } from '../words/paperWords.ts';
import { tapeText } from './zoneCardText.ts';
import type { ZoneMapInput } from './zoneMapInput.ts';

function blockedSentence(input: ZoneMapInput, piece: TightPiece): string | null {
  const by = keptOutBy(piece);
  if (!by) return null;
  const { passage, needsMm, what } = by;
  const run = (lengthMm: number): string => firm(tapeText(lengthMm, input.units));
  const machine = prepOfFloor(input.doc, input.floor).find(({ zone }) => zone === piece.zone)?.machine?.name ?? '';
  const door = passageTag(input.doc, passage.id) ?? paperWords.door;
  return what === 'width'
    ? paperWords.tooNarrow(door, run(passage.widthMm), machine, run(needsMm))
    : paperWords.tooLow(door, run(passage.heightMm ?? 0), machine, run(needsMm));
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
  const first = ways.length > 0 ? `${ways.join('; ')}.` : paperWords.noWayIn;
  return [first, ...new Set([...kept, ...blocked.filter((sentence) => sentence !== null)])];
}
