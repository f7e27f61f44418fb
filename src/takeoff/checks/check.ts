import type { Point } from '../../geometry/floorShape.ts';
import type { RecordId } from '../../model/cell.ts';
import type { Fault } from '../line.ts';
import type { Site } from '../site.ts';

/** Looks at one floor for one kind of fault. */
export type Check = (site: Site) => readonly Fault[];

/** A fault of a record without a fix, at a place of the floor (mm) when it has one. */
export function fault(record: RecordId, code: string, at: Point | null = null): Fault {
  return { record, code, at, fix: null };
}
