import { callOf, refusalOf } from '../../edit/run.ts';
import { setUpstand } from '../../edit/setUpstand.ts';
import { typeOf } from '../../model/cell.ts';
import { draftOf } from './draftOf.ts';
import { choiceSetting, numberSetting } from './settings.ts';
import type { Tool } from './tool.ts';

export type UpstandState = { readonly at: 'resting' };

/** A usual kerb at the foot of a wall; common practice, no source. */
const HEIGHT_MM = 150;

/** A tap on a slab's edge or an obstruction makes it rise. */
export const upstandTool: Tool<UpstandState> = {
  id: 'upstand',
  aims: ['slab', 'obstruction'],
  finger: 'points',
  idle: { at: 'resting' },
  step(state, input, env) {
    if (input.kind === 'cancel') return { state, after: 'pick' };
    if (input.kind !== 'tap') return { state };
    const { hit } = input;
    const onEdge = hit && (typeOf(hit.id) === 'obstruction' || hit.edge !== null);
    if (!hit || !onEdge) return { state, refused: 'upstandNeedsEdge' };
    const run = callOf(setUpstand, {
      id: hit.id,
      edges: hit.edge === null ? [] : [hit.edge],
      upstand: {
        kind: choiceSetting(env, 'kind', ['stemWall', 'kerb', 'platformSide', 'pitWall', 'coveBase']),
        heightMm: numberSetting(env, 'heightMm', HEIGHT_MM),
        treat: choiceSetting(env, 'treat', ['prepare', 'keep', 'remove']),
      },
    });
    const picked = { pick: [hit.id], ...(hit.edge === null ? {} : { pickEdges: [hit.edge] }) };
    const refused = refusalOf(env.doc, run);
    if (refused === 'noChange') return { state, ...picked };
    return refused ? { state, refused } : { state, run, ...picked, after: 'stay' };
  },
  draft: () => draftOf({ hint: 'upstandStart', cursor: 'pointer' }),
};
