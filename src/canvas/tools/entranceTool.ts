import { placeEntrance } from '../../edit/placeEntrance.ts';
import { callOf } from '../../edit/run.ts';
import { numberOrNull } from './settings.ts';
import { spotTool } from './spotTool.ts';

/** Machines come in through the middle of a doorway or somewhere along an edge, not at a jamb. */
export const entranceTool = spotTool(
  'entrance',
  (env, id, at) =>
    callOf(placeEntrance, {
      id,
      floor: env.floor,
      at,
      widthMm: numberOrNull(env, 'widthMm'),
      heightMm: numberOrNull(env, 'heightMm'),
    }),
  ['middle', 'edge'],
);
