import type { Point } from '../geometry/floorShape.ts';
import { corner } from '../geometry/ring.ts';
import type { RecordId } from '../model/cell.ts';
import { onFloor } from '../model/doc.ts';
import { metresAlong } from './faceMetres.ts';
import { faceOf } from './planShape.ts';
import type { Site, ZoneWork } from './site.ts';

export interface StopEdge {
  readonly record: RecordId;
  readonly edge: number;
  readonly doorway: boolean;
}

/** Edges of slabs at which the work stops and that a zone lies along. */
export function stopEdgesIn({ doc, floor }: Site, { measure }: ZoneWork): StopEdge[] {
  return onFloor(doc, 'slab', floor).flatMap((slab) => {
    const ring: Point[] = slab.outline.map(({ x, y }) => [x, y]);
    return slab.outline.flatMap(({ edge }, i): StopEdge[] => {
      if (faceOf(edge) !== 'stop') return [];
      if (metresAlong(measure, slab.id, corner(ring, i), corner(ring, i + 1)) === 0) return [];
      return [{ record: slab.id, edge: i, doorway: edge.kind === 'doorway' }];
    });
  });
}
