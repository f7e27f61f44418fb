import { callOf, refusalOf } from '../../edit/run.ts';
import { setEdge } from '../../edit/setEdge.ts';
import { draftOf } from './draftOf.ts';
import { choiceSetting } from './settings.ts';
import type { Tool } from './tool.ts';

export type EdgeKindState = { readonly at: 'resting' };

/** A tap gives a slab's edge the kind that the entry bar holds. */
export const edgeKindTool: Tool<EdgeKindState> = {
  id: 'edgeKind',
  aims: ['slab'],
  finger: 'points',
  idle: { at: 'resting' },
  step(state, input, env) {
    if (input.kind === 'cancel') return { state, after: 'pick' };
    if (input.kind !== 'tap') return { state };
    if (!input.hit || input.hit.edge === null) return { state, refused: 'edgeNeeded' };
    const kind = choiceSetting(env, 'kind', ['open', 'wall', 'doorway', 'drop']);
    const open = kind === 'open' || kind === 'doorway';
    const beyond = env.settings['beyond'];
    const run = callOf(setEdge, {
      id: input.hit.id,
      edges: [input.hit.edge],
      kind,
      ...(open && (beyond === 'run' || beyond === 'stop') ? { beyond } : {}),
    });
    const picked = { pick: [input.hit.id], pickEdges: [input.hit.edge] };
    const refused = refusalOf(env.doc, run);
    if (refused === 'noChange') return { state, ...picked };
    return refused ? { state, refused } : { state, run, ...picked, after: 'stay' };
  },
  draft: () => draftOf({ hint: 'edgeKindStart', cursor: 'pointer' }),
};
