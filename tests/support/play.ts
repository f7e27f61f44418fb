import { runCommand } from '../../src/edit/run.ts';
import type { CommandCall, RecordId } from '../../src/model/cell.ts';
import type { Doc } from '../../src/model/doc.ts';
import { planStore } from '../../src/model/store.ts';
import { handInput } from '../../src/canvas/handInput.ts';
import type { SnapKind } from '../../src/canvas/snap/snap.ts';
import type { Draft, Input, Tool, ToolEnv } from '../../src/canvas/tools/tool.ts';
import { countingIds, FLOOR } from './handPlan.ts';

/*
 * Plays a tool by a sentence, as a hand would:
 *
 *   'tap 0,0  tap 6000,0  type 4000 turn 90  finish'
 *
 *   move, tap, double, press, drag, release X,Y [shift]     sweep X,Y X,Y     the three in one
 *   type LENGTH [turn DEGREES]     turn DEGREES     nudge DX,DY     finish  back  cancel  remove
 *
 * Steps stand two spaces apart. 0.1 px a millimetre and 10 px of reach: what lies within 100 mm is met.
 */
export interface PlayOptions {
  readonly settings?: ToolEnv['settings'];
  readonly picked?: readonly RecordId[];
  readonly off?: boolean;
}

export interface Played<S> {
  readonly doc: Doc;
  readonly calls: readonly CommandCall[];
  readonly refused: readonly string[];
  readonly picked: readonly RecordId[];
  readonly pickedEdges: readonly number[];
  readonly snaps: readonly SnapKind[];
  readonly state: S;
  readonly draft: Draft;
  readonly undo: () => Doc;
}

type Verb = 'move' | 'tap' | 'doubleTap' | 'dragStart' | 'drag' | 'dragEnd';
const POINTED: Readonly<Record<string, Verb>> = {
  move: 'move',
  tap: 'tap',
  double: 'doubleTap',
  press: 'dragStart',
  drag: 'drag',
  release: 'dragEnd',
};
const PLAIN = new Set(['finish', 'back', 'cancel', 'remove']);

export function play<S>(tool: Tool<S>, doc: Doc, sentence: string, options: PlayOptions = {}): Played<S> {
  const store = planStore({ doc });
  const newId = countingIds();
  const calls: CommandCall[] = [];
  const refused: string[] = [];
  const snaps: SnapKind[] = [];
  let picked = options.picked ?? [];
  let pickedEdges: readonly number[] = [];
  let state = tool.idle;
  const env = (): ToolEnv => ({
    doc: store.getState(),
    floor: FLOOR,
    picked,
    pickedEdges,
    newId,
    settings: options.settings ?? {},
  });
  const feed = (input: Input): void => {
    const step = tool.step(state, input, env());
    state = step.state;
    if (step.refused) refused.push(step.refused);
    if (step.run) {
      calls.push(step.run);
      const result = runCommand(store, step.run);
      if ('refused' in result) refused.push(`runner: ${result.refused}`);
    }
    if (step.pick) {
      picked = step.pick;
      pickedEdges = [];
    }
    if (step.pickEdges) pickedEdges = step.pickEdges;
  };
  const point = (kind: Verb, place: string | undefined, shift: boolean): void => {
    const input = handInput(tool, state, env(), {
      kind,
      at: pointOf(place),
      shift,
      pxPerMm: 0.1,
      reachPx: 10,
      off: options.off ?? false,
      held: null,
      gridMm: null,
    });
    snaps.push(input.at.kind);
    feed(input);
  };

  for (const words of sentence.trim().split(/\s{2,}|\n/)) {
    const [verb = '', ...rest] = words.trim().split(/\s+/);
    const pointed = POINTED[verb];
    if (pointed) point(pointed, rest[0], rest.includes('shift'));
    else if (verb === 'sweep') {
      point('dragStart', rest[0], rest.includes('shift'));
      point('drag', rest[1], rest.includes('shift'));
      point('dragEnd', rest[1], rest.includes('shift'));
    } else if (verb === 'type' || verb === 'turn') feed(typedOf(verb, rest));
    else if (verb === 'nudge') feed({ kind: 'nudge', by: pointOf(rest[0]) });
    else if (PLAIN.has(verb)) feed({ kind: verb as 'finish' });
    else throw new Error(`No such step: ${words}`);
  }
  return {
    doc: store.getState(),
    calls,
    refused,
    picked,
    pickedEdges,
    snaps,
    state,
    draft: tool.draft(state, env()),
    undo: () => {
      while (store.undo()) {
        // Every step, back to the start.
      }
      return store.getState();
    },
  };
}

function typedOf(verb: string, rest: readonly string[]): Input {
  if (verb === 'turn') return { kind: 'typed', turnDeg: Number(rest[0]) };
  const turn = rest[1] === 'turn' ? { turnDeg: Number(rest[2]) } : {};
  return { kind: 'typed', lengthMm: Number(rest[0]), ...turn };
}

function pointOf(place: string | undefined): readonly [number, number] {
  const [x, y] = (place ?? '').split(',').map(Number);
  if (x === undefined || y === undefined || Number.isNaN(x) || Number.isNaN(y))
    throw new Error(`No such place: ${place}`);
  return [x, y];
}
