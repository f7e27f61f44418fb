import type { Cell } from '../model/cell.ts';
import { measureMemory } from '../geometry/measureMemory.ts';
import { applyCells, EMPTY_DOC, type Doc } from '../model/doc.ts';
import type { Answer, TakeoffPort } from './port.ts';
import { takeoff } from './takeoff.ts';

/** Runs what it is given: at once, or when other messages have been taken in. */
export type Soon = (work: () => void) => void;

const atOnce: Soon = (work) => work();

/**
 * The takeoff without a worker: for tests, printing and browsers that have none. A preview lies over the plan until
 * the next change, load or preview; it is dropped then, never merged. The newest tick wins.
 */
export function takeoffInline(soon: Soon = atOnce): TakeoffPort {
  const memory = measureMemory();
  const listeners = new Set<(answer: Answer) => void>();
  let doc: Doc = EMPTY_DOC;
  let floor = '';
  let overlay: readonly Cell[] | null = null;
  let newest = Number.NEGATIVE_INFINITY;
  let waiting = false;

  function say(): void {
    waiting = false;
    const shown = overlay ? applyCells(doc, overlay) : doc;
    const answer: Answer = { tick: newest, takeoff: takeoff(shown, floor, memory), preview: overlay !== null };
    for (const on of listeners) on(answer);
  }

  function answerTo(tick: number): void {
    newest = Math.max(newest, tick);
    if (waiting) return;
    waiting = true;
    soon(say);
  }

  return {
    load(nextDoc, nextFloor, tick) {
      doc = nextDoc;
      floor = nextFloor;
      overlay = null;
      answerTo(tick);
    },
    change(cells, tick) {
      doc = applyCells(doc, cells);
      overlay = null;
      answerTo(tick);
    },
    preview(cells, tick) {
      // A preview that was overtaken by a change is of a plan that is gone.
      if (tick < newest) return;
      overlay = cells;
      answerTo(tick);
    },
    listen(on) {
      listeners.add(on);
      return () => listeners.delete(on);
    },
    close() {
      listeners.clear();
    },
  };
}
