import { placeEntrance } from '../../edit/placeEntrance.ts';
import { callOf } from '../../edit/run.ts';
import type { Point } from '../../geometry/floorShape.ts';
import { between } from '../../geometry/point.ts';
import { nearestOnSegment } from '../../geometry/segment.ts';
import { onFloor } from '../../model/doc.ts';
import type { Snap } from '../snap/snap.ts';
import { numberOrNull } from './settings.ts';
import { spotTool } from './spotTool.ts';
import type { ToolEnv } from './tool.ts';

/** A tap this near to a doorway means the doorway: beside it machines would come through the wall. */
const DOORWAY_MM = 300;

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
  { snaps: ['corner', 'middle', 'edge'], place: inDoorway },
);

/** The middle of the doorway that is meant; a point that was set freely stays where it is. */
function inDoorway({ at, kind }: Snap, env: ToolEnv): Point {
  if (kind === 'free') return at;
  let best = { gap: DOORWAY_MM, at };
  for (const { outline } of onFloor(env.doc, 'slab', env.floor)) {
    for (const [index, { x, y, edge }] of outline.entries()) {
      const next = outline[(index + 1) % outline.length];
      if (edge.kind !== 'doorway' || !next) continue;
      const ends = [
        [x, y],
        [next.x, next.y],
      ] as const;
      const gap = nearestOnSegment(at, ...ends).distance;
      if (gap <= best.gap) best = { gap, at: between(...ends, 0.5) };
    }
  }
  return best.at;
}
