import { itemShape } from '../../edit/itemShape.ts';
import type { Point } from '../../geometry/floorShape.ts';
import { distance } from '../../geometry/point.ts';
import { nearestOnSegment } from '../../geometry/segment.ts';
import type { RecordId } from '../../model/cell.ts';
import type { Doc } from '../../model/doc.ts';

/** Where on an edge a point lies, counted from the edge's start. */
export interface PlaceOnEdge {
  readonly start: Point;
  readonly end: Point;
  readonly lengthMm: number;
  readonly alongMm: number;
}

export function placeOnEdge(doc: Doc, id: RecordId, edge: number, at: Point): PlaceOnEdge | null {
  const points = itemShape(doc, id)?.points ?? [];
  const start = points[edge];
  const end = points[(edge + 1) % points.length];
  if (!start || !end) return null;
  const lengthMm = distance(start, end);
  return { start, end, lengthMm, alongMm: nearestOnSegment(at, start, end).share * lengthMm };
}
