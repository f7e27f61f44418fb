import type { Point } from '../geometry/floorShape.ts';
import { pointToGrid, toGrid } from '../geometry/grid.ts';
import { lengthOf, minus } from '../geometry/point.ts';
import { mapPoint, type Matrix } from '../geometry/transform.ts';
import type { Cell, RecordId } from '../model/cell.ts';
import { typeOf } from '../model/cell.ts';
import type { Doc, Fields } from '../model/doc.ts';
import type { Obstruction } from '../model/records/obstruction.ts';
import { cellsWithPoints, itemShape } from './itemShape.ts';
import { itemsOnFloor } from './itemsOnFloor.ts';
import { rectangleAxes } from '../geometry/formRing.ts';
import { edgeAt, startOfEdge } from './wallOpenings.ts';

/**
 * Carries everything drawn on a floor by an affine map, plan lengths too (sizes of obstructions, places and
 * widths of openings). What was typed and does not lie in the plan stays: thicknesses, depths, heights.
 */
export function cellsFollowing(doc: Doc, floor: RecordId, map: Matrix): readonly Cell[] {
  return itemsOnFloor(doc, floor).flatMap((id) => {
    const fields = doc.get(id);
    return fields ? followingCells(doc, id, fields, map) : [];
  });
}

function followingCells(doc: Doc, id: RecordId, fields: Fields, map: Matrix): readonly Cell[] {
  const shape = fields['shape'] as Obstruction['shape'] | undefined;
  if (typeOf(id) === 'opening') return openingCells(doc, id, fields, map);
  if (shape && shape.form !== 'polygon') return [[id, 'shape', mappedShape(shape, map)]];
  const points = itemShape(doc, id)?.points ?? [];
  const cells: Cell[] = [
    ...cellsWithPoints(
      id,
      fields,
      points.map((at) => mapPoint(map, at)),
    ),
  ];
  const offset = fields['offsetMm'];
  if (typeof offset === 'number') cells.push([id, 'offsetMm', toGrid(offset * meanStretch(map))]);
  return cells;
}

function mappedShape(shape: Exclude<Obstruction['shape'], { form: 'polygon' }>, map: Matrix): Obstruction['shape'] {
  const at = pointToGrid(mapPoint(map, shape.at));
  if (shape.form === 'circle') return { ...shape, at, diameterMm: toGrid(shape.diameterMm * meanStretch(map)) };
  const [along, across] = rectangleAxes(shape.turnDeg);
  const alongNow = mappedStep(map, along);
  const turn = (Math.atan2(alongNow[1], alongNow[0]) * 180) / Math.PI;
  return {
    ...shape,
    at,
    widthMm: toGrid(shape.widthMm * lengthOf(alongNow)),
    depthMm: toGrid(shape.depthMm * lengthOf(mappedStep(map, across))),
    // A millionth of a degree is below the grid; it keeps a square one square.
    turnDeg: Math.round(turn * 1e6) / 1e6,
  };
}

function openingCells(doc: Doc, id: RecordId, fields: Fields, map: Matrix): readonly Cell[] {
  const path = itemShape(doc, fields['wall'] as RecordId)?.points;
  const [near, far] = itemShape(doc, id)?.points ?? [];
  if (!path || !near || !far) return [];
  const place = edgeAt(path, Number(fields['atMm']));
  const next = path.map((at) => pointToGrid(mapPoint(map, at)));
  const start = path[place.edge];
  if (!start) return [];
  const before = lengthOf(mappedStep(map, minus(near, start)));
  return [
    [id, 'atMm', toGrid(startOfEdge(next, place.edge) + before)],
    [id, 'widthMm', toGrid(lengthOf(mappedStep(map, minus(far, near))))],
  ];
}

/** A step, not a place: the map without its shift. */
function mappedStep(map: Matrix, step: Point): Point {
  return [map[0] * step[0] + map[2] * step[1], map[1] * step[0] + map[3] * step[1]];
}

function meanStretch([a, b, c, d]: Matrix): number {
  return Math.sqrt(Math.abs(a * d - b * c));
}
