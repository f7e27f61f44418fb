import type { Point } from '../geometry/floorShape.ts';
import { pointToGrid } from '../geometry/grid.ts';
import type { RecordId } from '../model/cell.ts';
import type { Doc } from '../model/doc.ts';
import type { Corner, Edge } from '../model/records/slab.ts';

export type EdgeKind = Edge['kind'];
export type Beyond = 'run' | 'stop';

/** An edge as commands are told of it: plain data. */
export type EdgeArgs = {
  readonly kind: EdgeKind;
  readonly beyond?: Beyond;
  readonly heightMm?: number;
};

/** What lies beyond an edge of this kind until somebody says otherwise; walls and drops have nothing beyond. */
export function usualBeyond(kind: EdgeKind): Beyond | undefined {
  if (kind === 'open') return 'run';
  return kind === 'doorway' ? 'stop' : undefined;
}

export const WALL_EDGE: Edge = { kind: 'wall' };

export function edgeFrom(args: EdgeArgs | undefined): Edge {
  if (!args) return WALL_EDGE;
  const beyond = args.beyond ?? usualBeyond(args.kind);
  return {
    kind: args.kind,
    ...(beyond ? { beyond } : {}),
    ...(args.heightMm === undefined ? {} : { heightMm: args.heightMm }),
  };
}

export function cornerAt(at: Point, edge: Edge): Corner {
  const [x, y] = pointToGrid(at);
  return { x, y, edge };
}

export function outlineOf(doc: Doc, slab: RecordId): readonly Corner[] {
  return (doc.get(slab)?.['outline'] ?? []) as unknown as readonly Corner[];
}
