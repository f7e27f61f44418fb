import { labelSpot } from '../../geometry/labelSpot.ts';
import type { Point } from '../../geometry/floorShape.ts';
import type { RecordId } from '../../model/cell.ts';
import { onFloor, recordOf, type Doc } from '../../model/doc.ts';

/** A place well inside a zone, or the slab, for a thing that nobody has pointed at yet; null on an empty floor. */
export function floorSpot(doc: Doc, floor: RecordId, zone: RecordId | null): Point | null {
  const ring =
    recordOf(doc, 'zone', zone)?.ring ?? onFloor(doc, 'slab', floor)[0]?.outline.map(({ x, y }): Point => [x, y]);
  return ring ? labelSpot([[ring]]) : null;
}
