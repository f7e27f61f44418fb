import type { Answer, Answered, TakeoffPort } from '../takeoff/port.ts';
import { takeoffInline } from '../takeoff/takeoffInline.ts';
import { answerReader, type FromWorker, type ToWorker } from './takeoffMessages.ts';

interface Listener {
  readonly on: (answer: Answer) => void;
  readonly onTotals: ((totals: Answered) => void) | undefined;
}

/**
 * A plan of so many records keeps a worker busy for a good part of a second with hours, money and outlines. Areas and
 * lengths then come from a worker of their own, so that a hand that moves on meanwhile is answered at once.
 */
const TWO_FROM_RECORDS = 3000;

/**
 * The takeoff in workers, or on this page where a browser has none. `onStopped` hears of a worker that could not be
 * loaded or gave up: no newer numbers come from it.
 */
export function workerPort(onStopped: () => void = () => undefined): TakeoffPort {
  if (typeof Worker === 'undefined') return takeoffInline();
  const listeners = new Set<Listener>();
  let workers: readonly Worker[] = [];
  let asked = 0;
  let newest = Number.NEGATIVE_INFINITY;

  /** Answers of an ask that has been overtaken by a change of the plan are not told. */
  function isNews({ tick }: Answered): boolean {
    if (tick < newest) return false;
    newest = tick;
    return true;
  }

  function started(name: 'takeoff' | 'totals' | 'whole'): Worker {
    const worker = new Worker(new URL('./takeoffWorker.ts', import.meta.url), { type: 'module', name });
    const read = answerReader();
    // A worker counts from its own first ask.
    const before = asked;
    worker.addEventListener('message', ({ data }: MessageEvent<FromWorker>) => {
      if (data.kind === 'totals') {
        const totals = { ...data.totals, ask: data.totals.ask + before };
        if (isNews(totals)) for (const { onTotals } of listeners) onTotals?.(totals);
        return;
      }
      const answer = read(data);
      if (!answer) return;
      const counted = { ...answer, ask: answer.ask + before };
      if (isNews(counted)) for (const { on } of listeners) on(counted);
    });
    worker.addEventListener('error', onStopped);
    return worker;
  }

  function say(message: ToWorker): number {
    for (const worker of workers) worker.postMessage(message);
    asked += 1;
    return asked;
  }

  return {
    load(doc, floor, tick) {
      const wanted = doc.size < TWO_FROM_RECORDS ? (['takeoff'] as const) : (['totals', 'whole'] as const);
      if (workers.length !== wanted.length) {
        for (const worker of workers) worker.terminate();
        workers = wanted.map(started);
      }
      return say({ kind: 'load', doc, floor, tick });
    },
    change: (cells, tick) => say({ kind: 'change', cells, tick }),
    preview: (cells, tick) => say({ kind: 'preview', cells, tick }),
    listen(on, onTotals) {
      const listener = { on, onTotals };
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    close() {
      listeners.clear();
      for (const worker of workers) worker.terminate();
    },
  };
}
