import type { Point } from '../geometry/floorShape.ts';
import { formRing } from '../geometry/formRing.ts';
import { pointToGrid } from '../geometry/grid.ts';
import type { Cell, Json, RecordId } from '../model/cell.ts';
import { typeOf } from '../model/cell.ts';
import type { Doc, Fields } from '../model/doc.ts';
import type { Obstruction } from '../model/records/obstruction.ts';
import type { Corner } from '../model/records/slab.ts';
import { openingEnds } from './wallOpenings.ts';

/**
 * Where an item lies, whatever kind it is: its corners in order.
 * `free`: each corner may be moved, added and taken out. `fixed`: the corners follow from sizes.
 */
export interface ItemShape {
  readonly points: readonly Point[];
  readonly closed: boolean;
  readonly corners: 'free' | 'fixed';
  /** Of a rectangle or circle that was placed by its middle. */
  readonly middle?: Point;
  /** A circle: its points are only there to draw and touch it. */
  readonly round?: true;
}

/** The slot that holds an item's corners, by its type. */
const RING_TYPES = new Set(['finding', 'zone', 'outOfScope', 'steps']);
const PATH_TYPES = new Set(['wall', 'crack', 'joint']);
const SPOT_TYPES = new Set(['entrance', 'reading', 'note', 'photo', 'service']);

/** Null for records that lie nowhere (a job, a zone that is the rest of the slab) and for broken ones. */
export function itemShape(doc: Doc, id: RecordId): ItemShape | null {
  const fields = doc.get(id);
  return fields ? shapeOf(doc, id, fields) : null;
}

function shapeOf(doc: Doc, id: RecordId, fields: Fields): ItemShape | null {
  const type = typeOf(id);
  if (type === 'slab') return free(outlinePoints(fields), true);
  if (RING_TYPES.has(type)) return free(pointsIn(fields['ring']), true);
  if (PATH_TYPES.has(type)) return free(pointsIn(fields['path']), false);
  if (SPOT_TYPES.has(type)) return fixed(pointsIn([fields['at'] ?? null]), false);
  if (type === 'dimension') return free(pointsIn([fields['from'] ?? null, fields['to'] ?? null]), false);
  if (type === 'opening') return fixed(openingEnds(doc, fields), false);
  if (type === 'obstruction') {
    const shape = fields['shape'] as Obstruction['shape'] | undefined;
    if (!shape) return null;
    const points = formRing(shape);
    if (shape.form === 'polygon') return free(points, true);
    const solid: ItemShape = { points, closed: true, corners: 'fixed', middle: shape.at };
    return shape.form === 'circle' ? { ...solid, round: true } : solid;
  }
  return null;
}

function free(points: readonly Point[] | null, closed: boolean): ItemShape | null {
  return points ? { points, closed, corners: 'free' } : null;
}

function fixed(points: readonly Point[] | null, closed: boolean): ItemShape | null {
  return points ? { points, closed, corners: 'fixed' } : null;
}

function outlinePoints(fields: Fields): readonly Point[] | null {
  const outline = fields['outline'] as readonly Corner[] | undefined;
  return outline ? outline.map((corner): Point => [corner.x, corner.y]) : null;
}

function pointsIn(value: Json | undefined): readonly Point[] | null {
  return Array.isArray(value) && value.every((point) => Array.isArray(point))
    ? (value as unknown as readonly Point[])
    : null;
}

/** Cells that lay an item with free corners along other points of the same count, on the plan grid. */
export function cellsWithPoints(id: RecordId, fields: Fields, points: readonly Point[]): readonly Cell[] {
  const type = typeOf(id);
  const placed = points.map(pointToGrid);
  if (type === 'slab') {
    const outline = (fields['outline'] ?? []) as unknown as readonly Corner[];
    const moved = placed.map(([x, y], index) => ({ ...outline[index], x, y }));
    return [[id, 'outline', moved]];
  }
  if (RING_TYPES.has(type)) return [[id, 'ring', placed]];
  if (PATH_TYPES.has(type)) return [[id, 'path', placed]];
  if (SPOT_TYPES.has(type)) return [[id, 'at', placed[0] ?? null]];
  if (type === 'dimension') {
    return [
      [id, 'from', placed[0] ?? null],
      [id, 'to', placed[1] ?? null],
    ];
  }
  if (type === 'obstruction') return [[id, 'shape', { form: 'polygon', ring: placed }]];
  return [];
}
