import { lanePlanOf } from '../../geometry/lanes/lanePlan.ts';
import type { LanesFound, LanesWanted } from './laneMessages.ts';

/** Lanes in a worker of their own: the one that measures is never kept waiting by them. */
addEventListener('message', ({ data }: MessageEvent<LanesWanted>) => {
  postMessage(lanePlanOf(data.pieces, data.job) satisfies LanesFound);
});
