import { pageMatrix, pixelAt } from '../../edit/pageMap.ts';
import { callOf, refusalOf } from '../../edit/run.ts';
import { truePage, type DimensionArgs } from '../../edit/truePage.ts';
import type { Point } from '../../geometry/floorShape.ts';
import { isSame } from '../../geometry/point.ts';
import { mapPoint } from '../../geometry/transform.ts';
import type { RecordId } from '../../model/cell.ts';
import { recordOf, type Held } from '../../model/doc.ts';
import { showLength } from '../../model/showLength.ts';
import { figureText } from '../../model/showNumber.ts';
import type { Units } from '../../model/units.ts';
import { knownLine, liveLine, livePoints } from '../paint/guides.ts';
import { draftOf } from './draftOf.ts';
import { choiceSetting } from './settings.ts';
import type { Draft, Input, Step, Tool, ToolEnv } from './tool.ts';

/*
 *   resting --tap--> reaching --tap--> asking --typed length--> resting      a known length
 *   resting --tap--> reaching --tap--> resting                               with settings.level: the level line
 *
 * Points are pixels of the page (settings.page): they stay on its drawing whatever scale it has.
 */
export type TrueState =
  | { readonly at: 'resting' }
  | { readonly at: 'reaching'; readonly from: Point; readonly to: Point }
  | { readonly at: 'asking'; readonly from: Point; readonly to: Point };

const RESTING: TrueState = { at: 'resting' };

export const trueTool: Tool<TrueState> = {
  id: 'true',
  finger: 'points',
  snaps: false,
  idle: RESTING,
  step(state, input, env) {
    const page = pageOf(env);
    return page ? stepOn(page, state, input, env) : { state: RESTING, refused: 'pageNeeded' };
  },
  draft,
};

function pageOf(env: ToolEnv): Held<'page'> | null {
  return recordOf(env.doc, 'page', env.settings['page'] as RecordId | undefined);
}

function stepOn(page: Held<'page'>, state: TrueState, input: Input, env: ToolEnv): Step<TrueState> {
  switch (input.kind) {
    case 'move':
    case 'drag': {
      const to = pixelAt(page, input.at.at);
      return { state: state.at === 'reaching' && to ? { ...state, to } : state };
    }
    case 'tap':
    case 'dragStart':
    case 'dragEnd':
      return pickEnd(page, state, input, env);
    case 'typed':
      return setLength(page, state, input.lengthMm, env);
    case 'back':
      return { state: state.at === 'asking' ? { ...state, at: 'reaching' } : RESTING };
    case 'cancel':
      return state.at === 'resting' ? { state, after: 'pick' } : { state: RESTING };
    case 'doubleTap':
    case 'finish':
    case 'nudge':
    case 'remove':
      return { state };
  }
}

function pickEnd(
  page: Held<'page'>,
  state: TrueState,
  input: Extract<Input, { at: unknown }>,
  env: ToolEnv,
): Step<TrueState> {
  const pixel = pixelAt(page, input.at.at);
  if (!pixel) return { state };
  const onPage = pixel[0] >= 0 && pixel[1] >= 0 && pixel[0] <= page.widthPx && pixel[1] <= page.heightPx;
  if (!onPage) return { state, refused: 'pickOffPage' };
  if (state.at !== 'reaching') return { state: { at: 'reaching', from: pixel, to: pixel } };
  if (isSame(state.from, pixel)) return { state };
  if (env.settings['level'] !== true) return { state: { at: 'asking', from: state.from, to: pixel } };
  const levelLine = { from: state.from, to: pixel };
  return ran(
    env,
    state,
    callOf(truePage, { id: page.id, dimensions: dimensionsOf(page), levelLine, ...following(env) }),
  );
}

function setLength(page: Held<'page'>, state: TrueState, lengthMm: number | undefined, env: ToolEnv): Step<TrueState> {
  if (state.at !== 'asking') return { state, refused: 'pickTwoEnds' };
  if (lengthMm === undefined || !(lengthMm > 0)) return { state, refused: 'noSize' };
  const by = choiceSetting(env, 'by', ['mouse', 'pen', 'finger']);
  const dimension: DimensionArgs = { from: state.from, to: state.to, lengthMm, by };
  const dimensions = [...dimensionsOf(page), dimension];
  return ran(env, state, callOf(truePage, { id: page.id, dimensions, ...following(env) }));
}

function dimensionsOf(page: Held<'page'>): readonly DimensionArgs[] {
  return page.dimensions.map(({ from, to, lengthMm, by }) => ({ from, to, lengthMm, by }));
}

/** The panel may say whether what is drawn goes along; else the command judges. */
function following(env: ToolEnv): { readonly follow?: boolean } {
  const follow = env.settings['follow'];
  return typeof follow === 'boolean' ? { follow } : {};
}

function ran(env: ToolEnv, state: TrueState, run: ReturnType<typeof callOf>): Step<TrueState> {
  const refused = refusalOf(env.doc, run);
  return refused ? { state, refused } : { state: RESTING, run, after: 'stay' };
}

function draft(state: TrueState, env: ToolEnv): Draft {
  const page = pageOf(env);
  const level = env.settings['level'] === true;
  if (!page) return draftOf({ hint: 'trueStart' });
  const set = page.dimensions.flatMap(({ from, to, lengthMm }) =>
    knownLine(onFloor(page, from, to), figureText(showLength(lengthMm, unitsOf(env)))),
  );
  if (state.at === 'resting') return draftOf({ hint: level ? 'levelStart' : 'trueStart', prims: set });
  const line = onFloor(page, state.from, state.to);
  const hint = state.at === 'asking' ? 'trueLength' : level ? 'levelEnd' : 'trueEnd';
  return draftOf({ hint, prims: [...set, ...liveLine(line), ...livePoints(line)] });
}

function onFloor(page: Held<'page'>, from: Point, to: Point): readonly [Point, Point] {
  const matrix = pageMatrix(page);
  return [mapPoint(matrix, from), mapPoint(matrix, to)];
}

function unitsOf(env: ToolEnv): Units {
  return choiceSetting(env, 'units', ['metric', 'imperial']);
}
