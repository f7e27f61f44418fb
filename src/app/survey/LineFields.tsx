import { useEffect, useRef, useState, type ReactElement, type RefObject } from 'react';
import css from './EntryBar.module.css';
import type { Point } from '../../geometry/floorShape.ts';
import { onFloor } from '../../model/doc.ts';
import { squareTurnDeg, typedPoint } from '../../canvas/tools/turns.ts';
import { fieldWords, surveyText } from '../../words/surveyWords.ts';
import { Button } from '../parts/Button.tsx';
import { MeasureField } from '../parts/MeasureField.tsx';
import { NumberField } from '../parts/NumberField.tsx';
import { floorNow, planStoreNow } from '../plan.ts';
import { session } from '../session.ts';
import { send, startInMiddle, useHand } from './hand.ts';
import { askToSee } from './fit.ts';
import { onTyping } from './typing.ts';

interface Typed {
  /** The point that the line it was typed for starts from. */
  readonly from: Point | null;
  readonly lengthMm: number | null;
  readonly turnDeg: number | null;
}

export interface TypedLine extends Typed {
  readonly live: { readonly lengthMm: number; readonly turnDeg: number } | null;
  /** What the Turn box shows and the next point is set by. */
  readonly shownTurnDeg: number | null;
  readonly input: RefObject<HTMLInputElement | null>;
  readonly keep: (lengthMm: number | null, turnDeg: number | null) => void;
  readonly set: (lengthMm: number | null, turnDeg: number | null) => void;
}

/** Outlines, which turn at every corner; other lines mostly go straight on. */
const OUTLINES = new Set(['slab', 'finding', 'outOfScope', 'zone', 'steps', 'obstruction']);
const NOTHING: Typed = { from: null, lengthMm: null, turnDeg: null };

/** The first wall of an empty floor may begin anywhere: its length alone is enough. */
function isFirstWall(): boolean {
  const floor = floorNow();
  return (
    session().tool === 'slab' && floor !== null && onFloor(planStoreNow().getState(), 'slab', floor.id).length === 0
  );
}

/** After a typed point the whole draft stays in sight, and room for a line as long at the usual turn. */
function keepInSight(lengthMm: number | null): void {
  const own = useHand.getState().draft?.own ?? [];
  const next = lengthMm === null ? null : typedPoint(own, null, { lengthMm, turnDeg: squareTurnDeg(own) });
  const outline = own.length === 2 && OUTLINES.has(session().tool);
  askToSee(outline && next ? [...own, next] : own);
}

/**
 * Length and Turn of the next line. What is typed stands until Enter sets the point; else the live line shows. A point
 * set by the pointer leaves nothing of what was half typed for the one before. By finger there is no live line: then
 * the usual turn stands in the box, so that what is set is what is shown.
 */
export function useTypedLine(byFinger: boolean): TypedLine {
  const live = useHand((now) => now.draft?.live ?? null);
  const from = useHand((now) => now.draft?.from ?? null);
  const own = useHand((now) => now.draft?.own ?? null);
  const [kept, setKept] = useState<Typed>(NOTHING);
  const input = useRef<HTMLInputElement>(null);
  const typed: Typed = kept.from === from ? kept : { ...NOTHING, from };
  const outline = OUTLINES.has(session().tool) && (own?.length ?? 0) > 1;
  const usual = byFinger && own && own.length > 0 ? (outline ? squareTurnDeg(own) : 0) : null;
  const shownTurnDeg = typed.turnDeg ?? live?.turnDeg ?? usual;

  function set(lengthMm: number | null, turnDeg: number | null): void {
    const turn = turnDeg ?? (live ? null : usual);
    setKept(NOTHING);
    if (from === null && lengthMm !== null && isFirstWall()) startInMiddle();
    send({
      kind: 'typed',
      ...(lengthMm === null ? {} : { lengthMm }),
      ...(turn === null ? {} : { turnDeg: turn }),
    });
    keepInSight(lengthMm);
    input.current?.focus();
    input.current?.select();
  }
  return {
    ...typed,
    live,
    shownTurnDeg,
    input,
    keep: (lengthMm, turnDeg) => setKept({ from, lengthMm, turnDeg }),
    set,
  };
}

export function LineFields({ line, inline }: { readonly line: TypedLine; readonly inline: boolean }): ReactElement {
  const { live, lengthMm, turnDeg, input, keep, set } = line;
  useEffect(() => onTyping(() => input.current?.focus()), [input]);
  return (
    <>
      <MeasureField
        label={fieldWords.length}
        mm={lengthMm ?? live?.lengthMm ?? null}
        optional
        rounded={lengthMm === null}
        inline={inline}
        inputRef={input}
        // A keypad on a phone has no Enter: the button below must know the length while it is typed.
        {...(inline ? {} : { onType: (mm: number) => keep(mm, turnDeg), say: '' })}
        onSet={(mm) => keep(mm, turnDeg)}
        onEnter={(mm) => set(mm, turnDeg)}
      />
      <NumberField
        label={fieldWords.turn}
        unit="°"
        value={line.shownTurnDeg}
        decimals={1}
        fixed
        optional
        inline={inline}
        onSet={(turn) => keep(lengthMm, turn)}
        onEnter={(turn) => set(lengthMm ?? live?.lengthMm ?? null, turn)}
      />
    </>
  );
}

const TURNS = [
  { turnDeg: -90, words: surveyText.turnLeft },
  { turnDeg: 0, words: surveyText.turnOn },
  { turnDeg: 90, words: surveyText.turnRight },
] as const;

/** Which way the next wall goes, under the thumb; with a length typed the press sets its point. */
export function TurnKeys({ line }: { readonly line: TypedLine }): ReactElement {
  return (
    <div role="group" aria-label={surveyText.turnKeys} className={css.turns}>
      {TURNS.map(({ turnDeg, words }) => (
        <Button
          key={turnDeg}
          aria-pressed={line.shownTurnDeg === turnDeg}
          className={line.shownTurnDeg === turnDeg ? css.turned : undefined}
          onClick={() => (line.lengthMm === null ? line.keep(null, turnDeg) : line.set(line.lengthMm, turnDeg))}
        >
          {words}
        </Button>
      ))}
    </div>
  );
}
