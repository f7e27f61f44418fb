import { addOpening } from '../../edit/addOpening.ts';
import { callOf, previewOf, refusalOf } from '../../edit/run.ts';
import { toGrid } from '../../geometry/grid.ts';
import { between } from '../../geometry/point.ts';
import type { CommandCall, RecordId } from '../../model/cell.ts';
import { liveLine } from '../paint/guides.ts';
import { draftOf } from './draftOf.ts';
import { placeOnEdge } from './edgeTarget.ts';
import { choiceSetting, numberSetting } from './settings.ts';
import type { Hit, Tool, ToolEnv } from './tool.ts';
import type { Snap } from '../snap/snap.ts';

/*
 *   |------ at ------[== opening ==]-----|     the hand holds the middle of the opening;
 *                          ^                   near an end of the edge it stays within it
 */
export type OpeningState =
  | { readonly at: 'resting' }
  | { readonly at: 'aiming'; readonly over: Hit; readonly snap: Snap };

/** A usual single door, clear; common practice, no source. */
const USUAL = { widthMm: 900, heightMm: 2100 };

function call(env: ToolEnv, id: RecordId, hit: Hit, snap: Snap): CommandCall | null {
  if (hit.edge === null) return null;
  const place = placeOnEdge(env.doc, hit.id, hit.edge, snap.at);
  if (!place) return null;
  const widthMm = numberSetting(env, 'widthMm', USUAL.widthMm);
  // On a corner the opening starts there; else the hand is at its middle.
  const wanted = snap.kind === 'corner' && place.alongMm < widthMm ? place.alongMm : place.alongMm - widthMm / 2;
  return callOf(addOpening, {
    id,
    on: hit.id,
    edge: hit.edge,
    atMm: toGrid(Math.max(0, Math.min(wanted, place.lengthMm - widthMm))),
    widthMm,
    heightMm: numberSetting(env, 'heightMm', USUAL.heightMm),
    beyond: choiceSetting(env, 'beyond', ['stop', 'run']),
  });
}

const RESTING: OpeningState = { at: 'resting' };

export const openingTool: Tool<OpeningState> = {
  id: 'opening',
  aims: ['wall', 'slab'],
  finger: 'points',
  idle: RESTING,
  step(state, input, env) {
    switch (input.kind) {
      case 'move':
      case 'dragStart':
      case 'drag':
        return {
          state: input.hit && input.hit.edge !== null ? { at: 'aiming', over: input.hit, snap: input.at } : RESTING,
        };
      case 'tap':
      case 'dragEnd': {
        const run = input.hit ? call(env, env.newId('opening'), input.hit, input.at) : null;
        if (!run) return { state, refused: 'openingNeedsWall' };
        const refused = refusalOf(env.doc, run);
        return refused ? { state, refused } : { state: RESTING, run, after: 'stay' };
      }
      case 'cancel':
        return { state: RESTING, after: 'pick' };
      default:
        return { state };
    }
  },
  draft(state, env) {
    if (state.at === 'resting') return draftOf({ hint: 'openingStart' });
    const run = call(env, 'opening:draft', state.over, state.snap);
    const args = run?.args as { readonly edge: number; readonly atMm: number; readonly widthMm: number } | undefined;
    const place = args && placeOnEdge(env.doc, state.over.id, args.edge, state.snap.at);
    if (!run || !args || !place) return draftOf({ hint: 'openingStart' });
    const at = (mm: number): readonly [number, number] => between(place.start, place.end, mm / place.lengthMm);
    const { cells, refused } = previewOf(env.doc, run);
    return draftOf({
      hint: refused ?? 'openingSet',
      cells,
      prims: liveLine([at(args.atMm), at(args.atMm + args.widthMm)]),
    });
  },
};
