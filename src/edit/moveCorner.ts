import type { Point } from '../geometry/floorShape.ts';
import { pointToGrid } from '../geometry/grid.ts';
import type { Cell, RecordId } from '../model/cell.ts';
import { typeOf } from '../model/cell.ts';
import { recordOf } from '../model/doc.ts';
import type { Command } from './command.ts';
import { openingsFollow } from './followingOpenings.ts';
import { cellsWithPoints, itemShape } from './itemShape.ts';
import { resizedRectangle } from './resizedRectangle.ts';

export type MoveCornerArgs = { readonly id: RecordId; readonly corner: number; readonly to: Point };

/** Carries one corner of any item. A rectangular obstruction is made larger or smaller by it. */
export const moveCorner: Command<MoveCornerArgs> = {
  name: 'moveCorner',
  refuse(doc, { id, corner }) {
    const shape = itemShape(doc, id);
    if (!shape || doc.get(id)?.['gone'] === true) return 'unknownRecord';
    if (!shape.points[corner]) return 'unknownCorner';
    if (shape.corners === 'free') return null;
    return recordOf(doc, 'obstruction', id)?.shape.form === 'rectangle' ? null : 'cornersFixed';
  },
  write(doc, { id, corner, to }) {
    const fields = doc.get(id);
    const shape = itemShape(doc, id);
    if (!fields || !shape) return [];
    const obstruction = recordOf(doc, 'obstruction', id)?.shape;
    if (obstruction?.form === 'rectangle') {
      return [[id, 'shape', resizedRectangle(obstruction, corner, pointToGrid(to))]];
    }
    const points = shape.points.with(corner, pointToGrid(to));
    const cells: Cell[] = [...cellsWithPoints(id, fields, points)];
    if (typeOf(id) === 'wall') {
      cells.push(...openingsFollow(doc, id, shape.points, points, (edge, atMm) => ({ edge, atMm })));
    }
    return cells;
  },
};
