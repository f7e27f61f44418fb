import { previewOf, refusalOf } from '../../edit/run.ts';
import type { Point } from '../../geometry/floorShape.ts';
import { isSame } from '../../geometry/point.ts';
import { ringFault } from '../../geometry/ring.ts';
import type { CommandCall, RecordId } from '../../model/cell.ts';
import { crossingMark, liveLine as livePrims, livePoints } from '../paint/guides.ts';
import type { SnapKind } from '../snap/snap.ts';
import { draftOf } from './draftOf.ts';
import type { Draft, Input, Step, Tool, ToolEnv } from './tool.ts';
import { liveLine, typedPoint } from './turns.ts';

/*
 *   resting --tap--> drawing --tap, type--> drawing --tap on the first corner, double tap, finish--> resting
 *   resting --drag--> framing --let go--> resting            (closed paths: a rectangle)
 *   resting --drag--> drawing with two points                (open paths)
 */
export type PathState =
  | { readonly at: 'resting' }
  | {
      readonly at: 'drawing';
      readonly points: readonly Point[];
      readonly cursor: Point | null;
      /** Where the outline crosses itself, once that has stood in the way of closing it. */
      readonly crossed?: Point;
    }
  | { readonly at: 'framing'; readonly from: Point; readonly to: Point };

/** One tool that draws a line or an outline. */
export interface PathPlan {
  readonly id: string;
  readonly closed: boolean;
  /** An open path that is done with so many points: a dimension has two. */
  readonly most?: number;
  /** A floor has one as a rule: the hand goes back to picking, so that its corners can be dragged. */
  readonly once?: true;
  /** What its points may meet; not given: everything. */
  readonly snaps?: readonly SnapKind[];
  call(env: ToolEnv, id: RecordId, points: readonly Point[]): CommandCall;
}

const RESTING: PathState = { at: 'resting' };

export function pathTool(plan: PathPlan): Tool<PathState> {
  return {
    id: plan.id,
    finger: 'points',
    ...(plan.closed ? { frames: true } : {}),
    ...(plan.snaps ? { snaps: plan.snaps } : {}),
    idle: RESTING,
    step: (state, input, env) => pathStep(plan, state, input, env),
    draft: (state, env) => pathDraft(plan, state, env),
  };
}

function pathStep(plan: PathPlan, state: PathState, input: Input, env: ToolEnv): Step<PathState> {
  switch (input.kind) {
    case 'move':
      return { state: state.at === 'drawing' ? { ...state, cursor: input.at.at } : state };
    case 'tap':
      return setPoint(plan, state, input.at.at, env);
    case 'dragStart':
      if (state.at === 'drawing') return { state: { ...state, cursor: input.at.at } };
      if (plan.closed) return { state: { at: 'framing', from: input.at.at, to: input.at.at } };
      return setPoint(plan, RESTING, input.at.at, env);
    case 'drag':
      if (state.at === 'framing') return { state: { ...state, to: input.at.at } };
      return { state: state.at === 'drawing' ? { ...state, cursor: input.at.at } : state };
    case 'dragEnd':
      if (state.at === 'framing') return done(plan, state, rectangleOf(state.from, input.at.at), env);
      return setPoint(plan, state, input.at.at, env);
    case 'doubleTap':
    case 'finish':
      return state.at === 'drawing' ? done(plan, state, state.points, env) : { state };
    case 'typed':
      return setTyped(plan, state, input, env);
    case 'back':
      return { state: withoutLast(state) };
    case 'cancel':
      return state.at === 'resting' ? { state, after: 'pick' } : { state: RESTING };
    case 'nudge':
    case 'remove':
      return { state };
  }
}

function setPoint(plan: PathPlan, state: PathState, at: Point, env: ToolEnv): Step<PathState> {
  const points = state.at === 'drawing' ? state.points : [];
  const first = points[0];
  const last = points.at(-1);
  if (last && isSame(last, at)) return { state };
  if (plan.closed && first && points.length > 2 && isSame(first, at)) return done(plan, state, points, env);
  const next: PathState = { at: 'drawing', points: [...points, at], cursor: null };
  return next.points.length === plan.most ? done(plan, next, next.points, env) : { state: next };
}

function setTyped(
  plan: PathPlan,
  state: PathState,
  typed: { readonly lengthMm?: number; readonly turnDeg?: number },
  env: ToolEnv,
): Step<PathState> {
  if (state.at !== 'drawing') return { state, refused: 'pathNotStarted' };
  if (typed.lengthMm !== undefined && !(typed.lengthMm > 0)) return { state, refused: 'noSize' };
  const at = typedPoint(state.points, state.cursor, typed);
  return at ? setPoint(plan, state, at, env) : { state, refused: 'noSize' };
}

function withoutLast(state: PathState): PathState {
  if (state.at !== 'drawing' || state.points.length < 2) return RESTING;
  return { at: 'drawing', points: state.points.slice(0, -1), cursor: state.cursor };
}

/** A refusal leaves the line in hand, so that it can be put right. */
function done(plan: PathPlan, state: PathState, points: readonly Point[], env: ToolEnv): Step<PathState> {
  if (points.length < (plan.closed ? 3 : 2)) {
    return state.at === 'framing' ? { state: RESTING } : { state, refused: 'tooFewCorners' };
  }
  const id = env.newId(plan.id);
  const call = plan.call(env, id, points);
  const refused = refusalOf(env.doc, call);
  if (refused) return { state: state.at === 'framing' ? RESTING : withCrossing(state, points), refused };
  return { state: RESTING, run: call, pick: [id], after: plan.once ? 'pick' : 'stay' };
}

function withCrossing(state: PathState, points: readonly Point[]): PathState {
  const fault = ringFault(points);
  return state.at === 'drawing' && fault?.code === 'crossesItself' && fault.at
    ? { ...state, crossed: fault.at }
    : state;
}

/** Four corners, clockwise on screen from the upper left; none when the drag was along one line. */
export function rectangleOf(a: Point, b: Point): readonly Point[] {
  if (a[0] === b[0] || a[1] === b[1]) return [];
  const [left, right] = a[0] < b[0] ? [a[0], b[0]] : [b[0], a[0]];
  const [top, bottom] = a[1] < b[1] ? [a[1], b[1]] : [b[1], a[1]];
  return [
    [left, top],
    [right, top],
    [right, bottom],
    [left, bottom],
  ];
}

function pathDraft(plan: PathPlan, state: PathState, env: ToolEnv): Draft {
  if (state.at === 'resting') return draftOf({ hint: `${plan.id}Start` });
  if (state.at === 'framing') {
    const ring = rectangleOf(state.from, state.to);
    return draftOf({
      hint: 'rectangleEnd',
      prims: livePrims(ring, true),
      cells: previewCells(plan, env, ring),
      from: state.from,
    });
  }
  const { points, cursor } = state;
  const last = points.at(-1) ?? null;
  const live = cursor && last && !isSame(cursor, last) ? [...points, cursor] : points;
  const shown = plan.closed && live.length > 2 ? [...live, ...live.slice(0, 1)] : live;
  return draftOf({
    hint: state.crossed ? 'crossesHere' : hintOf(plan, points),
    prims: [...livePrims(shown), ...livePoints(points), ...(state.crossed ? crossingMark(state.crossed) : [])],
    cells: previewCells(plan, env, live),
    live: liveLine(points, cursor),
    from: last,
    own: points,
  });
}

function hintOf(plan: PathPlan, points: readonly Point[]): string {
  if (points.length === 1) return 'pathNext';
  if (plan.closed) return points.length < 3 ? 'pathCorner' : 'pathClose';
  return 'pathFinish';
}

/** The record as it would be now, so that the totals already count it. Not before it is a whole one. */
function previewCells(plan: PathPlan, env: ToolEnv, points: readonly Point[]): Draft['cells'] {
  if (points.length < (plan.closed ? 3 : 2)) return [];
  return previewOf(env.doc, plan.call(env, `${plan.id}:draft`, points)).cells;
}
