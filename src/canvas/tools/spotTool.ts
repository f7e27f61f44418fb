import { refusalOf } from '../../edit/run.ts';
import type { Point } from '../../geometry/floorShape.ts';
import type { CommandCall, RecordId } from '../../model/cell.ts';
import type { Snap, SnapKind } from '../snap/snap.ts';
import { draftOf } from './draftOf.ts';
import type { Tool, ToolEnv } from './tool.ts';

export type SpotState = { readonly at: 'resting' };

interface SpotPlan {
  /** What its point may meet; not given: everything. */
  readonly snaps?: readonly SnapKind[];
  /** Where the thing goes for a point; not given: there. */
  readonly place?: (snap: Snap, env: ToolEnv) => Point;
}

/** A tool that puts one thing on one spot, a tap each. A drag counts where it ends. */
export function spotTool(
  id: string,
  call: (env: ToolEnv, id: RecordId, at: Point) => CommandCall,
  { snaps, place }: SpotPlan = {},
): Tool<SpotState> {
  const idle: SpotState = { at: 'resting' };
  return {
    id,
    finger: 'points',
    ...(snaps ? { snaps } : {}),
    idle,
    step(state, input, env) {
      if (input.kind === 'cancel') return { state, after: 'pick' };
      if (input.kind !== 'tap' && input.kind !== 'dragEnd') return { state };
      const item = env.newId(id);
      const run = call(env, item, place ? place(input.at, env) : input.at.at);
      const refused = refusalOf(env.doc, run);
      return refused ? { state, refused } : { state, run, pick: [item], after: 'stay' };
    },
    draft: () => draftOf({ hint: `${id}Start` }),
  };
}
