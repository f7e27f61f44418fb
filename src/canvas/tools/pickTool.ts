import { addCorner } from '../../edit/addCorner.ts';
import { moveRecords } from '../../edit/moveRecords.ts';
import { removeCorner } from '../../edit/removeCorner.ts';
import { removeRecords } from '../../edit/removeRecords.ts';
import { callOf, previewOf, refusalOf } from '../../edit/run.ts';
import type { CommandCall, RecordId } from '../../model/cell.ts';
import { openingsOf } from '../../edit/wallOpenings.ts';
import { planIndex } from '../planIndex.ts';
import { selectionBox } from '../paint/guides.ts';
import { itemsBoxed } from './boxed.ts';
import { carriedCall, carryStart, type Carry } from './carry.ts';
import { draftOf } from './draftOf.ts';
import { liveLine } from './turns.ts';
import type { Draft, Input, Step, Tool, ToolEnv } from './tool.ts';
import type { Point } from '../../geometry/floorShape.ts';

/*
 *   resting --drag on a picked item, its corner or edge--> carrying --let go--> resting
 *   resting --drag elsewhere--> boxing --let go--> resting
 */
export type PickState =
  | { readonly at: 'resting' }
  | Carry
  | { readonly at: 'boxing'; readonly from: Point; readonly to: Point; readonly adding: boolean };

const RESTING: PickState = { at: 'resting' };

export const pickTool: Tool<PickState> = { id: 'pick', finger: 'holds', idle: RESTING, step, draft };

function step(state: PickState, input: Input, env: ToolEnv): Step<PickState> {
  switch (input.kind) {
    case 'tap':
      return tapped(input, env);
    case 'doubleTap':
      return doubleTapped(input, env);
    case 'dragStart': {
      const carry = carryStart(input, env);
      return { state: carry ?? { at: 'boxing', from: input.at.at, to: input.at.at, adding: input.shift } };
    }
    case 'drag':
      return { state: state.at === 'resting' ? state : { ...state, to: input.at.at } };
    case 'dragEnd':
      return letGo(state, input.at.at, env);
    case 'nudge':
      return env.picked.length === 0 ? { state } : ran(callOf(moveRecords, { ids: env.picked, by: input.by }), env);
    case 'remove':
    case 'back': {
      if (env.picked.length === 0) return { state };
      const removed = ran(callOf(removeRecords, { ids: env.picked }), env);
      return removed.run ? { ...removed, pick: [] } : removed;
    }
    case 'cancel':
      return state.at === 'resting' ? { state, pick: [] } : { state: RESTING };
    case 'move':
    case 'typed':
    case 'finish':
      return { state };
  }
}

type Pointed = Extract<Input, { at: unknown }>;

function tapped({ hit, shift }: Pointed, env: ToolEnv): Step<PickState> {
  if (!hit) return { state: RESTING, ...(shift ? {} : { pick: [] }) };
  const isPicked = env.picked.includes(hit.id);
  if (isPicked && hit.edge !== null && env.picked.length === 1) {
    return { state: RESTING, pick: env.picked, pickEdges: toggled(env.pickedEdges ?? [], hit.edge, shift) };
  }
  return { state: RESTING, pick: toggled(env.picked, hit.id, shift) };
}

/** Alone, or with shift in or out of what is there. */
function toggled<T>(were: readonly T[], one: T, shift: boolean): readonly T[] {
  if (!shift) return [one];
  return were.includes(one) ? were.filter((was) => was !== one) : [...were, one];
}

/** On an edge of a picked item: a corner there. On a corner: that corner goes. */
function doubleTapped({ hit, at }: Pointed, env: ToolEnv): Step<PickState> {
  if (!hit || !env.picked.includes(hit.id)) return hit ? { state: RESTING, pick: [hit.id] } : { state: RESTING };
  if (hit.corner !== null) return ran(callOf(removeCorner, { id: hit.id, corner: hit.corner }), env);
  return hit.edge === null
    ? { state: RESTING }
    : ran(callOf(addCorner, { id: hit.id, edge: hit.edge, at: at.at }), env);
}

function letGo(state: PickState, to: Point, env: ToolEnv): Step<PickState> {
  if (state.at === 'resting') return { state };
  if (state.at === 'boxing') {
    const found = itemsBoxed(planIndex(env.doc, env.floor), state.from, to, env.settings['touchingToo'] === true);
    const pick: readonly RecordId[] = state.adding ? [...new Set([...env.picked, ...found])] : found;
    return { state: RESTING, pick };
  }
  const call = carriedCall({ ...state, to }, env);
  return call ? ran(call, env) : { state: RESTING };
}

function ran(run: CommandCall, env: ToolEnv): Step<PickState> {
  const refused = refusalOf(env.doc, run);
  if (refused === 'noChange') return { state: RESTING };
  return refused ? { state: RESTING, refused } : { state: RESTING, run };
}

function draft(state: PickState, env: ToolEnv): Draft {
  if (state.at === 'resting') {
    return draftOf({ hint: env.picked.length === 0 ? 'pickStart' : 'pickHeld', cursor: 'default' });
  }
  if (state.at === 'boxing') {
    const touchingToo = env.settings['touchingToo'] === true;
    return draftOf({
      hint: touchingToo ? 'boxTouching' : 'boxInside',
      prims: selectionBox(state.from, state.to, touchingToo),
    });
  }
  const call = carriedCall(state, env);
  const { cells, refused } = call ? previewOf(env.doc, call) : { cells: [], refused: null };
  return draftOf({
    hint: refused && refused !== 'noChange' ? refused : 'carrying',
    cursor: 'grabbing',
    cells,
    live: liveLine(state.before ? [state.before] : [], state.to),
    from: state.before,
    moving: [...state.ids, ...state.ids.flatMap((id) => openingsOf(env.doc, id).map((opening) => opening.id))],
    own: state.rest,
  });
}
