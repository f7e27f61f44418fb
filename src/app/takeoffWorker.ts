import { takeoffInline, type Pace, type Soon } from '../takeoff/takeoffInline.ts';
import { answerSender, type FromWorker, type ToWorker } from './takeoffMessages.ts';

/**
 * The takeoff in a worker. Messages that are already waiting are taken in before an answer is worked out, so that a
 * fast drag is answered once, for where the hand is now, and not for every place it has been.
 */
const pace: Pace = {
  answers: self.name === 'totals' || self.name === 'whole' ? self.name : 'both',
  later(work, ms) {
    const timer = setTimeout(work, ms);
    return () => clearTimeout(timer);
  },
  clockMs: () => performance.now(),
};
const port = takeoffInline(afterMessages(), pace);
const post = (message: FromWorker, load: ArrayBuffer[] = []): void => postMessage(message, { transfer: load });
port.listen(answerSender(post), (totals) => post({ kind: 'totals', totals }));

addEventListener('message', ({ data }: MessageEvent<ToWorker>) => {
  switch (data.kind) {
    case 'load':
      port.load(data.doc, data.floor, data.tick);
      break;
    case 'change':
      port.change(data.cells, data.tick);
      break;
    case 'preview':
      port.preview(data.cells, data.tick);
      break;
  }
});

/** Runs work when the messages that wait have been taken in: it goes to the end of their queue, where a timer would dawdle. */
function afterMessages(): Soon {
  const { port1, port2 } = new MessageChannel();
  let next: (() => void) | null = null;
  port1.addEventListener('message', () => {
    const work = next;
    next = null;
    work?.();
  });
  port1.start();
  return (work) => {
    next = work;
    port2.postMessage(null);
  };
}
