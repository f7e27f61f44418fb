import { crackTool } from './crackTool.ts';
import { dimensionTool } from './dimensionTool.ts';
import { edgeKindTool } from './edgeKindTool.ts';
import { entranceTool } from './entranceTool.ts';
import { findingTool } from './findingTool.ts';
import { jointTool } from './jointTool.ts';
import { noteTool } from './noteTool.ts';
import { obstructionTool } from './obstructionTool.ts';
import { openingTool } from './openingTool.ts';
import { outOfScopeTool } from './outOfScopeTool.ts';
import { pickTool } from './pickTool.ts';
import { readingTool } from './readingTool.ts';
import { slabTool } from './slabTool.ts';
import { stepsTool } from './stepsTool.ts';
import type { Draft, Tool, ToolEnv } from './tool.ts';
import { trueTool } from './trueTool.ts';
import { upstandTool } from './upstandTool.ts';
import { wallTool } from './wallTool.ts';
import { zoneTool } from './zoneTool.ts';

/**
 * A tool whose state is its own secret: whoever holds it hands back the state it was given. Null, as after
 * taking another tool in hand, stands for a tool at rest.
 */
export type AnyTool = Tool<unknown>;

function sealed<S>(tool: Tool<S>): AnyTool {
  const own = (state: unknown): S => (state ?? tool.idle) as S;
  return {
    ...tool,
    step: (state, input, env) => tool.step(own(state), input, env),
    draft: rememberingLast((state, env) => tool.draft(own(state), env)),
  };
}

type DraftOf = (state: unknown, env: ToolEnv) => Draft;

/** Snapping asks for the draft before the step, the screen after it: what nothing has changed is not worked out twice. */
function rememberingLast(draftOf: DraftOf): DraftOf {
  let last: { readonly state: unknown; readonly env: ToolEnv; readonly draft: Draft } | null = null;
  return (state, env) => {
    if (last && last.state === state && isSameEnv(last.env, env)) return last.draft;
    last = { state, env, draft: draftOf(state, env) };
    return last.draft;
  };
}

function isSameEnv(a: ToolEnv, b: ToolEnv): boolean {
  const same = a.doc === b.doc && a.floor === b.floor && a.picked === b.picked && a.pickedEdges === b.pickedEdges;
  const slots = Object.keys(a.settings);
  return (
    same &&
    slots.length === Object.keys(b.settings).length &&
    slots.every((slot) => a.settings[slot] === b.settings[slot])
  );
}

/** Every tool by its id. */
export const toolbox: Readonly<Record<string, AnyTool>> = {
  pick: sealed(pickTool),
  slab: sealed(slabTool),
  wall: sealed(wallTool),
  opening: sealed(openingTool),
  obstruction: sealed(obstructionTool),
  edgeKind: sealed(edgeKindTool),
  upstand: sealed(upstandTool),
  crack: sealed(crackTool),
  joint: sealed(jointTool),
  finding: sealed(findingTool),
  zone: sealed(zoneTool),
  outOfScope: sealed(outOfScopeTool),
  steps: sealed(stepsTool),
  entrance: sealed(entranceTool),
  dimension: sealed(dimensionTool),
  reading: sealed(readingTool),
  note: sealed(noteTool),
  true: sealed(trueTool),
};

/** The tool of that id; Pick where there is none. */
export function toolOf(id: string): AnyTool {
  return (Object.hasOwn(toolbox, id) ? toolbox[id] : undefined) ?? sealed(pickTool);
}
