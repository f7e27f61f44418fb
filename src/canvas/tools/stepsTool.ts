import { drawSteps } from '../../edit/drawSteps.ts';
import { callOf } from '../../edit/run.ts';
import { pathTool } from './pathTool.ts';
import { numberSetting } from './settings.ts';

/** A usual flight, to be typed over; common practice, no source. */
const USUAL = { count: 3, riseMm: 175, goingMm: 280 };

export const stepsTool = pathTool({
  id: 'steps',
  closed: true,
  call: (env, id, ring) =>
    callOf(drawSteps, {
      id,
      floor: env.floor,
      ring,
      count: numberSetting(env, 'count', USUAL.count),
      riseMm: numberSetting(env, 'riseMm', USUAL.riseMm),
      goingMm: numberSetting(env, 'goingMm', USUAL.goingMm),
    }),
});
