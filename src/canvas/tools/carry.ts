import { itemShape } from '../../edit/itemShape.ts';
import { moveCorner } from '../../edit/moveCorner.ts';
import { moveEdge } from '../../edit/moveEdge.ts';
import { moveRecords } from '../../edit/moveRecords.ts';
import { callOf } from '../../edit/run.ts';
import type { Point } from '../../geometry/floorShape.ts';
import { dot, isSame, minus, quarterTurn, unit } from '../../geometry/point.ts';
import type { CommandCall, RecordId } from '../../model/cell.ts';
import type { Input, ToolEnv } from './tool.ts';

/** Something picked, taken hold of at `from` and carried to `to`. */
export interface Carry {
  readonly at: 'carrying';
  readonly what: 'items' | 'corner' | 'edge';
  readonly ids: readonly RecordId[];
  /** Number of the corner or edge. */
  readonly part: number;
  readonly from: Point;
  readonly to: Point;
  /** The corner before the carried one: the live line starts there. */
  readonly before: Point | null;
  /** The item's other corners: snapping knows them although the item is moving. */
  readonly rest: readonly Point[];
}

type Pointed = Extract<Input, { at: unknown }>;

/** Null when the drag did not start on something picked. */
export function carryStart({ hit, at }: Pointed, env: ToolEnv): Carry | null {
  if (!hit || !env.picked.includes(hit.id)) return null;
  const shape = itemShape(env.doc, hit.id);
  const points = shape?.points ?? [];
  const start = { at: 'carrying', ids: [hit.id], to: at.at, before: null, rest: [] } as const;
  if (hit.corner !== null && points.length > 1) {
    const corner = points[hit.corner] ?? at.at;
    const before = points[hit.corner - 1] ?? (shape?.closed ? points.at(-1) : points[hit.corner + 1]) ?? null;
    return {
      ...start,
      what: 'corner',
      part: hit.corner,
      from: corner,
      to: corner,
      before,
      rest: otherCorners(points, hit.corner),
    };
  }
  const edgeMoves = hit.edge !== null && shape?.corners === 'free' && shape.closed && env.picked.length === 1;
  if (edgeMoves) return { ...start, what: 'edge', part: hit.edge, from: at.at };
  return { ...start, what: 'items', ids: env.picked, part: 0, from: at.at };
}

/** From the corner after the carried one round to the one before it, so that no two belong to the moving edges. */
function otherCorners(points: readonly Point[], corner: number): readonly Point[] {
  return [...points.slice(corner + 1), ...points.slice(0, corner)];
}

/** Null while nothing has moved. */
export function carriedCall({ what, ids, part, from, to }: Carry, env: ToolEnv): CommandCall | null {
  const [id] = ids;
  if (!id || isSame(from, to)) return null;
  if (what === 'items') return callOf(moveRecords, { ids, by: minus(to, from) });
  if (what === 'corner') return callOf(moveCorner, { id, corner: part, to });
  const points = itemShape(env.doc, id)?.points ?? [];
  const a = points[part];
  const b = points[(part + 1) % points.length];
  if (!a || !b) return null;
  return callOf(moveEdge, { id, edge: part, byMm: dot(minus(to, from), quarterTurn(unit(minus(b, a)))) });
}
