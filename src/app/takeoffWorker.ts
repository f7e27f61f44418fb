import { takeoffInline, type Pace } from '../takeoff/takeoffInline.ts';
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
const port = takeoffInline((answerLater) => setTimeout(answerLater, 0), pace);
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
