import type { Point } from '../geometry/floorShape.ts';
import { pointToGrid } from '../geometry/grid.ts';
import { distance } from '../geometry/point.ts';
import type { Cell, RecordId } from '../model/cell.ts';
import { typeOf } from '../model/cell.ts';
import type { Command } from './command.ts';
import { cornerAt, outlineOf } from './edges.ts';
import { openingsFollow } from './followingOpenings.ts';
import { cellsWithPoints, itemShape } from './itemShape.ts';

export type AddCornerArgs = { readonly id: RecordId; readonly edge: number; readonly at: Point };

/** Cuts an edge in two at a new corner. Both halves of a slab's edge are of its kind; a doorway stays whole. */
export const addCorner: Command<AddCornerArgs> = {
  name: 'addCorner',
  refuse(doc, { id, edge }) {
    const shape = itemShape(doc, id);
    if (!shape || doc.get(id)?.['gone'] === true) return 'unknownRecord';
    if (shape.corners === 'fixed' || typeOf(id) === 'dimension') return 'cornersFixed';
    const edges = shape.closed ? shape.points.length : shape.points.length - 1;
    if (edge < 0 || edge >= edges) return 'unknownEdge';
    return outlineOf(doc, id)[edge]?.edge.kind === 'doorway' ? 'doorwayWhole' : null;
  },
  write(doc, { id, edge, at }) {
    const fields = doc.get(id);
    const points = itemShape(doc, id)?.points;
    if (!fields || !points) return [];
    if (typeOf(id) === 'slab') {
      const outline = outlineOf(doc, id);
      const kind = outline[edge]?.edge ?? { kind: 'wall' };
      return [[id, 'outline', outline.toSpliced(edge + 1, 0, cornerAt(at, kind))]];
    }
    const next = points.toSpliced(edge + 1, 0, pointToGrid(at));
    const cells: Cell[] = [...cellsWithPoints(id, fields, next)];
    if (typeOf(id) === 'wall') {
      const before = distance(points[edge] ?? at, pointToGrid(at));
      cells.push(
        ...openingsFollow(doc, id, points, next, (was, atMm) => {
          if (was < edge || (was === edge && atMm < before)) return { edge: was, atMm };
          return { edge: was + 1, atMm: was === edge ? atMm - before : atMm };
        }),
      );
    }
    return cells;
  },
};
