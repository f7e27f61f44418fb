import type { Cell } from '../model/cell.ts';
import { measureMemory } from '../geometry/measureMemory.ts';
import { applyCells, EMPTY_DOC, type Doc } from '../model/doc.ts';
import { laidOver } from '../model/overlay.ts';
import type { Answer, Answered, TakeoffPort } from './port.ts';
import { takeoff, takeoffTotals } from './takeoff.ts';

/** Runs what it is given: at once, or when other messages have been taken in. */
export type Soon = (work: () => void) => void;

/** How whoever runs the takeoff waits, and what it answers. */
export interface Pace {
  /** totals: areas and lengths alone, at once. whole: the takeoff alone, when the hand rests. Else both. */
  readonly answers?: 'totals' | 'whole' | 'both';
  /** Runs it so many ms later; what it answers calls that off. */
  readonly later: (work: () => void, ms: number) => () => void;
  readonly clockMs: () => number;
}

/** An answer that takes no longer than this goes out with its totals: the whole takeoff follows the pointer. */
const QUICK_MS = 30;
/** A hand that has not moved for this long rests; longer where the answer takes longer, so that it is not in the way of the next move. */
const REST_MS = 150;
/** The first answer of a plan starts from nothing; those after it take about so much less. A guess until one has been timed. */
const FIRST_ANSWER_MORE = 8;
/** Of the time an answer takes, the newest counts for so much: one hiccup of a busy machine is no slow plan. */
const NEWEST_COUNTS = 0.3;

/**
 * The takeoff without a worker: for tests, printing and browsers that have none. A preview lies over the plan until
 * the next change, load or preview; it is dropped then, never merged. The newest tick wins. Without a pace every ask
 * is answered whole.
 */
export function takeoffInline(soon: Soon = (work) => work(), pace: Pace | null = null): TakeoffPort {
  const memory = measureMemory();
  const listeners = new Set<{
    readonly on: (answer: Answer) => void;
    readonly onTotals?: (totals: Answered) => void;
  }>();
  let doc: Doc = EMPTY_DOC;
  let floor = '';
  let overlay: readonly Cell[] | null = null;
  let newest = Number.NEGATIVE_INFINITY;
  let asked = 0;
  let waiting = false;
  let isFirst = true;
  let answerMs = Number.POSITIVE_INFINITY;
  let callOff: (() => void) | null = null;

  function head(shown: Doc): Answered {
    return { ask: asked, tick: newest, preview: overlay !== null, totals: takeoffTotals(shown, floor, memory) };
  }

  /** What there is to see: the plan, or a preview over it. */
  function shownDoc(): Doc {
    return overlay ? laidOver(doc, overlay) : doc;
  }

  function sayAll(shown: Doc, known: Answered | null): void {
    const startMs = pace?.clockMs() ?? 0;
    const answer: Answer = { ...(known ?? head(shown)), takeoff: takeoff(shown, floor, memory) };
    for (const { on } of listeners) on(answer);
    const tookMs = (pace?.clockMs() ?? 0) - startMs;
    answerMs = isFirst ? tookMs / FIRST_ANSWER_MORE : answerMs + (tookMs - answerMs) * NEWEST_COUNTS;
    isFirst = false;
  }

  function say(): void {
    waiting = false;
    const shown = shownDoc();
    const wanted = pace?.answers ?? 'both';
    if (wanted !== 'totals' && (!pace || answerMs <= QUICK_MS)) return sayAll(shown, null);
    const totals = wanted === 'whole' ? null : head(shown);
    if (totals) for (const { onTotals } of listeners) onTotals?.(totals);
    if (!pace || wanted === 'totals') return;
    // Nobody moves anything yet: there is nothing to wait for.
    if (isFirst) return sayAll(shown, totals);
    callOff = pace.later(
      () => {
        callOff = null;
        if (!waiting) sayAll(shown, totals);
      },
      Math.max(REST_MS, answerMs),
    );
  }

  function answerTo(tick: number): number {
    newest = Math.max(newest, tick);
    asked += 1;
    callOff?.();
    callOff = null;
    if (!waiting) {
      waiting = true;
      soon(say);
    }
    return asked;
  }

  return {
    load(nextDoc, nextFloor, tick) {
      doc = nextDoc;
      floor = nextFloor;
      overlay = null;
      isFirst = true;
      answerMs = Number.POSITIVE_INFINITY;
      return answerTo(tick);
    },
    change(cells, tick) {
      doc = applyCells(doc, cells);
      overlay = null;
      return answerTo(tick);
    },
    preview(cells, tick) {
      // A preview that was overtaken by a change is of a plan that is gone: what stands is said again.
      if (tick >= newest) overlay = cells;
      return answerTo(tick);
    },
    listen(on, onTotals) {
      const listener = onTotals ? { on, onTotals } : { on };
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    close() {
      callOff?.();
      listeners.clear();
    },
  };
}
