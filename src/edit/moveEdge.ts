import type { Point } from '../geometry/floorShape.ts';
import type { Cell, RecordId } from '../model/cell.ts';
import { typeOf } from '../model/cell.ts';
import type { Command } from './command.ts';
import { openingsFollow } from './followingOpenings.ts';
import { cellsWithPoints, itemShape } from './itemShape.ts';
import { withEdgeMoved } from './parallelEdge.ts';

export type MoveEdgeArgs = {
  readonly id: RecordId;
  readonly edge: number;
  /** Square to the edge; positive to the right of its direction on screen (y down). */
  readonly byMm: number;
};

/** Carries a straight run parallel to itself; its neighbours keep their direction and become longer or shorter. */
export const moveEdge: Command<MoveEdgeArgs> = {
  name: 'moveEdge',
  refuse(doc, { id, edge }) {
    const shape = itemShape(doc, id);
    if (!shape || doc.get(id)?.['gone'] === true) return 'unknownRecord';
    if (shape.corners === 'fixed') return 'cornersFixed';
    const edges = shape.closed ? shape.points.length : shape.points.length - 1;
    return edge >= 0 && edge < edges ? null : 'unknownEdge';
  },
  write(doc, { id, edge, byMm }) {
    const fields = doc.get(id);
    const shape = itemShape(doc, id);
    if (!fields || !shape) return [];
    const next: readonly Point[] = withEdgeMoved(shape, edge, byMm);
    const cells: Cell[] = [...cellsWithPoints(id, fields, next)];
    if (typeOf(id) === 'wall') {
      cells.push(...openingsFollow(doc, id, shape.points, next, (was, atMm) => ({ edge: was, atMm })));
    }
    return cells;
  },
};
