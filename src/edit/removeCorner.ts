import { distance } from '../geometry/point.ts';
import type { Cell, RecordId } from '../model/cell.ts';
import { typeOf } from '../model/cell.ts';
import type { Command } from './command.ts';
import { outlineOf } from './edges.ts';
import { openingsFollow } from './followingOpenings.ts';
import { cellsWithPoints, itemShape } from './itemShape.ts';

export type RemoveCornerArgs = { readonly id: RecordId; readonly corner: number };

/** Takes a corner out; the edge before it runs on to the next corner and keeps its kind. */
export const removeCorner: Command<RemoveCornerArgs> = {
  name: 'removeCorner',
  refuse(doc, { id, corner }) {
    const shape = itemShape(doc, id);
    if (!shape || doc.get(id)?.['gone'] === true) return 'unknownRecord';
    if (shape.corners === 'fixed') return 'cornersFixed';
    if (!shape.points[corner]) return 'unknownCorner';
    const least = shape.closed ? 3 : 2;
    return shape.points.length <= least ? 'tooFewCorners' : null;
  },
  write(doc, { id, corner }) {
    const fields = doc.get(id);
    const points = itemShape(doc, id)?.points;
    if (!fields || !points) return [];
    if (typeOf(id) === 'slab') return [[id, 'outline', outlineOf(doc, id).toSpliced(corner, 1)]];
    const next = points.toSpliced(corner, 1);
    const cells: Cell[] = [...cellsWithPoints(id, fields, next)];
    if (typeOf(id) === 'wall') {
      cells.push(
        ...openingsFollow(doc, id, points, next, (edge, atMm) => {
          if (edge < corner) return { edge, atMm };
          const a = points[corner - 1];
          const b = points[corner];
          const joined = edge === corner && a && b ? distance(a, b) : 0;
          return { edge: Math.max(0, edge - 1), atMm: atMm + joined };
        }),
      );
    }
    return cells;
  },
};
