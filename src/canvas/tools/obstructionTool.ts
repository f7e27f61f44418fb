import { placeObstruction, type ObstructionKind, type ObstructionShape } from '../../edit/placeObstruction.ts';
import { callOf, previewOf, refusalOf } from '../../edit/run.ts';
import type { Point } from '../../geometry/floorShape.ts';
import type { CommandCall, RecordId } from '../../model/cell.ts';
import { liveLine } from '../paint/guides.ts';
import { draftOf } from './draftOf.ts';
import { pathTool, rectangleOf, type PathState } from './pathTool.ts';
import { choiceSetting, numberSetting } from './settings.ts';
import type { Draft, Input, Step, Tool, ToolEnv } from './tool.ts';

/*
 *   form polygon:             corners, as any closed path
 *   form rectangle, circle:   a tap puts one of the typed size, a drag draws a rectangle
 */
const KINDS = ['column', 'pier', 'island', 'equipment', 'pit', 'drain', 'post', 'platform'] as const;
const UNDER = ['none', 'outOfScope', 'byHand', 'clearedBefore'] as const;
/** Size until one is typed: a usual concrete column; common practice, no source. */
const SIZE_MM = 300;

function place(env: ToolEnv, id: RecordId, shape: ObstructionShape): CommandCall {
  const kind: ObstructionKind = choiceSetting(env, 'kind', KINDS);
  return callOf(placeObstruction, { id, floor: env.floor, kind, shape, under: choiceSetting(env, 'under', UNDER) });
}

const polygon = pathTool({
  id: 'obstruction',
  closed: true,
  call: (env, id, ring) => place(env, id, rectangleShape(ring) ?? { form: 'polygon', ring }),
});

/** Upright rectangles are kept as such: their sizes stay editable. */
function rectangleShape(ring: readonly Point[]): ObstructionShape | null {
  const [a, b, c, d] = ring;
  if (ring.length !== 4 || !a || !b || !c || !d) return null;
  const upright = a[1] === b[1] && b[0] === c[0] && c[1] === d[1] && d[0] === a[0] && a[0] < c[0] && a[1] < c[1];
  if (!upright) return null;
  return {
    form: 'rectangle',
    at: [(a[0] + c[0]) / 2, (a[1] + c[1]) / 2],
    widthMm: c[0] - a[0],
    depthMm: c[1] - a[1],
    turnDeg: 0,
  };
}

/** What a tap puts down, of the typed sizes. */
function sizedShape(env: ToolEnv, at: Point): ObstructionShape {
  if (choiceSetting(env, 'form', FORMS) === 'circle') {
    return { form: 'circle', at, diameterMm: numberSetting(env, 'diameterMm', SIZE_MM) };
  }
  return {
    form: 'rectangle',
    at,
    widthMm: numberSetting(env, 'widthMm', SIZE_MM),
    depthMm: numberSetting(env, 'depthMm', SIZE_MM),
    turnDeg: numberSetting(env, 'turnDeg', 0),
  };
}

const FORMS = ['rectangle', 'circle', 'polygon'] as const;

function put(env: ToolEnv, state: PathState, shape: ObstructionShape): Step<PathState> {
  const id = env.newId('obstruction');
  const run = place(env, id, shape);
  const refused = refusalOf(env.doc, run);
  return refused ? { state, refused } : { state: polygon.idle, run, pick: [id], after: 'stay' };
}

export const obstructionTool: Tool<PathState> = {
  id: 'obstruction',
  finger: 'points',
  frames: true,
  idle: polygon.idle,
  step(state, input, env): Step<PathState> {
    const sized = choiceSetting(env, 'form', FORMS) !== 'polygon';
    if (sized && input.kind === 'tap' && state.at === 'resting') return put(env, state, sizedShape(env, input.at.at));
    return polygon.step(state, sized ? withoutLines(input) : input, env);
  },
  draft(state, env): Draft {
    if (state.at !== 'framing') return polygon.draft(state, env);
    const shape = rectangleShape(rectangleOf(state.from, state.to));
    return draftOf({
      hint: 'rectangleEnd',
      prims: liveLine(rectangleOf(state.from, state.to), true),
      cells: shape ? previewOf(env.doc, place(env, 'obstruction:draft', shape)).cells : [],
      from: state.from,
    });
  },
};

/** Sized ones have no corners to type or double tap. */
function withoutLines(input: Input): Input {
  return input.kind === 'doubleTap' ? { ...input, kind: 'move' } : input;
}
