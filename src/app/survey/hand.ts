import { create } from 'zustand';
import type { View } from '../../canvas/camera.ts';
import type { Point } from '../../geometry/floorShape.ts';
import { handInput, type HandMove } from '../../canvas/handInput.ts';
import type { Finger } from '../../canvas/input/gesture.ts';
import type { Snap } from '../../canvas/snap/snap.ts';
import type { Draft, Input, Step, ToolEnv } from '../../canvas/tools/tool.ts';
import type { PickState } from '../../canvas/tools/pickTool.ts';
import { toolOf, type AnyTool } from '../../canvas/tools/toolbox.ts';
import { refusalSentence } from '../../words/handWords.ts';
import { floorNow, newId, openNow, planStoreNow, previewCells, run, unitsNow } from '../plan.ts';
import { arm, hush, pick, say, session, setToolState, useSession } from '../session.ts';
import { cameraOf } from './cameraOf.ts';
import { askToSee } from './fit.ts';
import { settingsOf } from './toolSettings.ts';

/**
 * Joins the tool in hand with the plan: pointer and keys come in as `Input`, the tool answers a step, and what it
 * asks for is done here. The tools themselves never see the store, the camera or the screen.
 */
interface Hand {
  readonly draft: Draft | null;
  readonly snap: Snap | null;
  /** The last pointer was a finger: the point then stands above it. */
  readonly finger: boolean;
  readonly view: View;
}

export const useHand = create<Hand>()(() => ({
  draft: null,
  snap: null,
  finger: false,
  view: { widthPx: 0, heightPx: 0 },
}));

export function toolNow(): AnyTool {
  return toolOf(session().tool);
}

/** What a finger does now: with nothing begun, a tool for outlines frames a rectangle too. */
export function fingerNow(): Finger {
  const tool = toolNow();
  const resting = (useHand.getState().draft?.from ?? null) === null;
  return tool.finger === 'points' && tool.frames && resting ? 'frames' : tool.finger;
}

/** A corner is being dragged: a finger would cover it. */
export function carriesCorner(): boolean {
  const state = session().toolState as Partial<PickState> | null;
  return session().tool === 'pick' && state?.at === 'carrying' && state.what === 'corner';
}

export function toolEnv(): ToolEnv | null {
  const floor = floorNow();
  if (!openNow() || !floor) return null;
  const { tool, picked, pickedEdges, settings } = session();
  return {
    doc: planStoreNow().getState(),
    floor: floor.id,
    picked,
    pickedEdges,
    newId,
    settings: settingsOf(tool, settings, unitsNow()),
  };
}

function stateNow(tool: AnyTool): unknown {
  return session().toolState ?? tool.idle;
}

let waiting = 0;

/** One preview a frame at most: the worker answers for where the hand is, not for where it has been. */
function preview(draft: Draft): void {
  cancelAnimationFrame(waiting);
  waiting = requestAnimationFrame(() => previewCells(draft.cells.length > 0 ? draft.cells : null));
}

function redraft(): void {
  const env = toolEnv();
  const tool = toolNow();
  const was = useHand.getState().draft;
  const draft = env ? tool.draft(stateNow(tool), env) : null;
  useHand.setState({ draft });
  if (draft && (draft.cells.length > 0 || (was?.cells.length ?? 0) > 0)) preview(draft);
}

function follow(tool: AnyTool, step: Step<unknown>, input: Input): void {
  const done = !step.run || run(step.run.name, step.run.args);
  // A line that may not be written now (another tab took the job over) stays in hand; what a drag held is put down.
  if (done || input.kind === 'dragEnd') setToolState(step.state === tool.idle ? null : step.state);
  if (step.refused && step.refused !== 'noChange') say(refusalSentence(step.refused));
  const { crossed } = step.state as { readonly crossed?: Point };
  if (step.refused && crossed) askToSee([crossed]);
  if (done && step.run) {
    hush();
    // What the last point had met is over with the line it belonged to.
    useHand.setState({ snap: null });
  }
  if (done && (step.pick || step.pickEdges)) pick(step.pick ?? session().picked, step.pickEdges ?? []);
  if (done && step.after === 'pick') arm('pick');
}

/** The tool as it was before the gesture that is under way. */
let steady: unknown = null;
const UNDER_WAY: ReadonlySet<Input['kind']> = new Set(['move', 'dragStart', 'drag']);

function handOn(tool: AnyTool, input: Input, env: ToolEnv): void {
  follow(tool, tool.step(stateNow(tool), input, env), input);
  if (!UNDER_WAY.has(input.kind)) steady = session().toolState;
  redraft();
}

/** Hands one input to the tool in hand. */
export function send(input: Input): void {
  const env = toolEnv();
  if (env) handOn(toolNow(), input, env);
}

/** Two fingers took over: what one had begun is forgotten, and the line that was in hand before stays in hand. */
export function breakOff(): void {
  setToolState(steady);
  useHand.setState({ snap: null });
  redraft();
}

type OnTap = (at: Point, reachMm: number) => void;
let onTap: OnTap | null = null;

/** A stage that answers to a tap with the pick tool, after the tool has had it. */
export function listenToTaps(listener: OnTap): () => void {
  onTap = listener;
  return () => {
    if (onTap === listener) onTap = null;
  };
}

/** A pointer at a floor point: snapped, looked up, handed on. */
export function sendMove(move: Omit<HandMove, 'held'>, finger: boolean): void {
  const env = toolEnv();
  if (!env) return;
  const tool = toolNow();
  const held = useHand.getState().snap?.kind ?? null;
  const input = handInput(tool, stateNow(tool), env, { ...move, held });
  useHand.setState({ snap: input.at, finger });
  handOn(tool, input, env);
  if (move.kind === 'tap' && tool.id === 'pick') onTap?.(move.at, move.reachPx / move.pxPerMm);
  // A drag that came to nothing leaves nothing on the plan.
  if (move.kind === 'dragEnd' && (useHand.getState().draft?.from ?? null) === null) useHand.setState({ snap: null });
}

export function leaveCanvas(): void {
  useHand.setState({ snap: null });
}

/** Sets a point in the middle of what is seen: where drawing by keyboard alone begins. */
export function startInMiddle(): void {
  const { middle, pxPerMm } = cameraOf(session());
  sendMove({ kind: 'tap', at: middle, shift: false, pxPerMm, reachPx: 12, off: false, gridMm: null }, false);
}

// A tool newly taken in hand, other settings or another pick change what the draft says.
useSession.subscribe((now, was) => {
  if (now.toolState === null) steady = null;
  const changed =
    now.tool !== was.tool ||
    now.settings !== was.settings ||
    now.picked !== was.picked ||
    now.pickedEdges !== was.pickedEdges;
  if (changed) redraft();
});
