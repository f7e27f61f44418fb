import type { Answer, TakeoffPort } from '../takeoff/port.ts';
import { takeoffInline } from '../takeoff/takeoffInline.ts';
import type { FromWorker, ToWorker } from './takeoffMessages.ts';

/**
 * The takeoff in a worker of its own, or on this page where a browser has no workers. `onStopped` hears of a worker
 * that could not be loaded or gave up: no newer numbers come from it.
 */
export function workerPort(onStopped: () => void = () => undefined): TakeoffPort {
  if (typeof Worker === 'undefined') return takeoffInline();
  const worker = new Worker(new URL('./takeoffWorker.ts', import.meta.url), { type: 'module', name: 'takeoff' });
  const listeners = new Set<(answer: Answer) => void>();
  const say = (message: ToWorker): void => worker.postMessage(message);
  let newest = Number.NEGATIVE_INFINITY;
  worker.addEventListener('message', ({ data }: MessageEvent<FromWorker>) => {
    if (data.tick < newest) return;
    newest = data.tick;
    for (const on of listeners) on(data);
  });
  worker.addEventListener('error', onStopped);
  return {
    load: (doc, floor, tick) => say({ kind: 'load', doc, floor, tick }),
    change: (cells, tick) => say({ kind: 'change', cells, tick }),
    preview: (cells, tick) => say({ kind: 'preview', cells, tick }),
    listen(on) {
      listeners.add(on);
      return () => listeners.delete(on);
    },
    close() {
      listeners.clear();
      worker.terminate();
    },
  };
}
