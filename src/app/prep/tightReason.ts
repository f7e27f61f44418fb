import { passageName } from '../passageName.ts';
import type { GapSide, NarrowGap, TightPiece } from '../../geometry/floorShape.ts';
import type { Doc } from '../../model/doc.ts';
import { recordOf } from '../../model/doc.ts';
import { showLength } from '../../model/showLength.ts';
import { figureText } from '../../model/showNumber.ts';
import type { Units } from '../../model/units.ts';
import { cascadeOf, edgeMachine, type ZonePrep } from '../../takeoff/prep.ts';
import { machineText, prepText } from '../../words/stageWords.ts';
import { itemWords, optionWords } from '../../words/surveyWords.ts';

export interface ReasonContext {
  readonly units: Units;
  readonly doc: Doc;
  readonly prep: ZonePrep;
  /** Least clear width that the last machine passes, mm; null without one. */
  readonly passageMm: number | null;
}

type Reasoned = Pick<TightPiece, 'kind' | 'blockedBy' | 'keptOff' | 'gap'>;

/** Why no machine works a piece of floor, in one sentence. */
export function tightReason(piece: Reasoned, context: ReasonContext): string {
  const { blockedBy, keptOff, gap, kind } = piece;
  if (blockedBy) return blockedReason(blockedBy, context);
  if (gap) return gapReason(gap, context);
  if (kind === 'cutOff') return prepText.noWayIn;
  if (keptOff) return prepText.keptOff(length(keptOff.clearanceMm, context), machineText.clearance[keptOff.kind]);
  const { passageMm } = context;
  return prepText.gap(passageMm === null ? '' : length(passageMm, context));
}

/** The same on the plan, in a line for what is free and one for what is needed. */
export function tightPlate(piece: Reasoned, context: ReasonContext): readonly string[] {
  const { blockedBy, gap } = piece;
  if (blockedBy) {
    const { passage, needsMm, what } = blockedBy;
    const clear = length(what === 'width' ? passage.widthMm : (passage.heightMm ?? 0), context);
    const says = what === 'width' ? prepText.isClear(clear) : prepText.isHigh(clear);
    const machine = edgeMachine(context.prep)?.name ?? prepText.machine;
    return [
      prepText.of(passageName(context.doc, passage.id), says),
      prepText.machineNeeds(machine, length(needsMm, context)),
    ];
  }
  if (!gap) return [tightReason(piece, context)];
  return [
    prepText.isClear(length(gap.widthMm, context)),
    prepText.machineNeeds(machineName(gap, context), length(gap.needsMm, context)),
  ];
}

export function blockedReason(
  { passage, needsMm, what }: NonNullable<TightPiece['blockedBy']>,
  context: ReasonContext,
): string {
  const clearMm = what === 'width' ? passage.widthMm : (passage.heightMm ?? 0);
  const say = what === 'width' ? prepText.cannotEnter : prepText.tooLow;
  return say(passageName(context.doc, passage.id), length(clearMm, context), length(needsMm, context));
}

function gapReason(gap: NarrowGap, context: ReasonContext): string {
  const [clear, needs] = [length(gap.widthMm, context), length(gap.needsMm, context)];
  const machine = machineName(gap, context);
  const [a, b] = gap.sides ?? [];
  if (!a || !b) return prepText.narrowWalls(clear, machine, needs);
  const [first, second] = [sideName(a, context.doc), sideName(b, context.doc)];
  // "B3 and the wall", whichever was met first.
  const [one, other] = a.kind === 'obstruction' ? [first, second] : [second, first];
  return one === other && a.kind === 'wall'
    ? prepText.narrowWalls(clear, machine, needs)
    : prepText.narrow(one, other, clear, machine, needs);
}

/** What stands there, with its number; else what kind of face it is. */
function sideName({ kind, of }: GapSide, doc: Doc): string {
  const standing = recordOf(doc, 'obstruction', of);
  if (standing) return prepText.standing(optionWords.obstructionKind[standing.kind], standing.tag);
  const steps = recordOf(doc, 'steps', of);
  return steps ? prepText.standing(itemWords.steps ?? '', steps.tag) : prepText.sides[kind];
}

function machineName({ machine }: NarrowGap, { prep }: ReasonContext): string {
  return cascadeOf(prep).find(({ id }) => id === machine)?.name ?? prepText.machine;
}

function length(lengthMm: number, { units }: ReasonContext): string {
  return figureText(showLength(lengthMm, units));
}
