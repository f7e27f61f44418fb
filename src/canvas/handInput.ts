import type { Point } from '../geometry/floorShape.ts';
import { hitAt } from './hit.ts';
import { planIndex } from './planIndex.ts';
import { snapTo } from './snap/engine.ts';
import type { SnapKind } from './snap/snap.ts';
import { snapSources } from './snap/sources.ts';
import type { Input, Tool, ToolEnv } from './tools/tool.ts';

type PointedInput = Extract<Input, { at: unknown }>;

/** What the hand does at a floor point, before anything is known about that point. */
export interface HandMove {
  readonly kind: PointedInput['kind'];
  /** Floor mm, as the camera gives it. */
  readonly at: Point;
  readonly shift: boolean;
  readonly pxPerMm: number;
  readonly reachPx: number;
  /** The key that turns snapping off is down. */
  readonly off: boolean;
  /** Kind of the last snap, so that it does not flicker. */
  readonly held: SnapKind | null;
  /** Step of the sketching grid, or null while a page is traced. */
  readonly gridMm: number | null;
}

/** Snaps the point and finds what lies under it: the input that the tool in hand gets. */
export function handInput<S>(tool: Tool<S>, state: S, env: ToolEnv, move: HandMove): PointedInput {
  const index = planIndex(env.doc, env.floor);
  const { from, own = [], moving } = tool.draft(state, env);
  const query = {
    at: move.at,
    from,
    pxPerMm: move.pxPerMm,
    reachPx: move.reachPx,
    held: move.held,
    off: move.off || tool.snaps === false,
    skip: new Set(moving),
  };
  const sources = snapSources({ index, own }, move.gridMm);
  const { snaps } = tool;
  const at = snapTo(query, snaps ? sources.filter(({ kind }) => snaps.includes(kind)) : sources);
  const hit = hitAt(index, {
    at: move.at,
    pxPerMm: move.pxPerMm,
    reachPx: move.reachPx,
    picked: env.picked,
    aims: tool.aims ?? null,
  });
  return { kind: move.kind, at, hit, shift: move.shift };
}
