import type { Point } from '../geometry/floorShape.ts';
import { pointToGrid, toGrid } from '../geometry/grid.ts';
import { dot, minus, plus, unit } from '../geometry/point.ts';
import type { Cell, RecordId } from '../model/cell.ts';
import { typeOf } from '../model/cell.ts';
import { recordOf, type Doc, type Fields } from '../model/doc.ts';
import type { Obstruction } from '../model/records/obstruction.ts';
import type { Command } from './command.ts';
import { cellsWithPoints, itemShape } from './itemShape.ts';

export type MoveRecordsArgs = { readonly ids: readonly RecordId[]; readonly by: Point };

/** Carries whole items. An opening slides along its wall, unless the wall itself is carried. */
export const moveRecords: Command<MoveRecordsArgs> = {
  name: 'moveRecords',
  refuse(doc, { ids }) {
    const movable = ids.every((id) => itemShape(doc, id) !== null || recordOf(doc, 'page', id) !== null);
    return ids.length > 0 && movable ? null : 'unknownRecord';
  },
  write: (doc, { ids, by }) => ids.flatMap((id) => movedCells(doc, id, pointToGrid(by), ids)),
};

function movedCells(doc: Doc, id: RecordId, by: Point, together: readonly RecordId[]): readonly Cell[] {
  const fields = doc.get(id);
  if (!fields) return [];
  const page = recordOf(doc, 'page', id);
  if (page) return [[id, 'origin', plus(page.origin, by)]];
  if (typeOf(id) === 'opening') {
    return together.includes(fields['wall'] as RecordId) ? [] : slideOpening(doc, id, fields, by);
  }
  const shape = fields['shape'] as Obstruction['shape'] | undefined;
  if (shape && shape.form !== 'polygon') return [[id, 'shape', { ...shape, at: plus(shape.at, by) }]];
  const points = itemShape(doc, id)?.points ?? [];
  return cellsWithPoints(
    id,
    fields,
    points.map((at) => plus(at, by)),
  );
}

function slideOpening(doc: Doc, id: RecordId, fields: Fields, by: Point): readonly Cell[] {
  const [near, far] = itemShape(doc, id)?.points ?? [];
  if (!near || !far) return [];
  const alongWall = dot(by, unit(minus(far, near)));
  return [[id, 'atMm', toGrid(Number(fields['atMm']) + alongWall)]];
}
