import type { Answer, Answered, TakeoffPort } from '../takeoff/port.ts';
import { takeoffInline } from '../takeoff/takeoffInline.ts';
import { answerReader, type FromWorker, type ToWorker } from './takeoffMessages.ts';

interface Listener {
  readonly on: (answer: Answer) => void;
  readonly onTotals: ((totals: Answered) => void) | undefined;
}

/**
 * The takeoff in a worker of its own, or on this page where a browser has no workers. `onStopped` hears of a worker
 * that could not be loaded or gave up: no newer numbers come from it.
 */
export function workerPort(onStopped: () => void = () => undefined): TakeoffPort {
  if (typeof Worker === 'undefined') return takeoffInline();
  const worker = new Worker(new URL('./takeoffWorker.ts', import.meta.url), { type: 'module', name: 'takeoff' });
  const listeners = new Set<Listener>();
  const read = answerReader();
  let asked = 0;
  let newest = Number.NEGATIVE_INFINITY;
  const say = (message: ToWorker): number => {
    worker.postMessage(message);
    asked += 1;
    return asked;
  };
  const isNews = ({ tick }: Answered): boolean => {
    if (tick < newest) return false;
    newest = tick;
    return true;
  };
  worker.addEventListener('message', ({ data }: MessageEvent<FromWorker>) => {
    if (data.kind === 'totals') {
      if (isNews(data.totals)) for (const { onTotals } of listeners) onTotals?.(data.totals);
      return;
    }
    const answer = read(data);
    if (answer && isNews(answer)) for (const { on } of listeners) on(answer);
  });
  worker.addEventListener('error', onStopped);
  return {
    load: (doc, floor, tick) => say({ kind: 'load', doc, floor, tick }),
    change: (cells, tick) => say({ kind: 'change', cells, tick }),
    preview: (cells, tick) => say({ kind: 'preview', cells, tick }),
    listen(on, onTotals) {
      const listener = { on, onTotals };
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    close() {
      listeners.clear();
      worker.terminate();
    },
  };
}
