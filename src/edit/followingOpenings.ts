import type { Point } from '../geometry/floorShape.ts';
import { toGrid } from '../geometry/grid.ts';
import type { Cell, RecordId } from '../model/cell.ts';
import type { Doc } from '../model/doc.ts';
import { edgeAt, openingsOf, startOfEdge } from './wallOpenings.ts';

/**
 * When a wall's path changes, its openings keep their distance from the start of their edge.
 * `edgeNow` says which edge of the new path an old one has become, and how much further from its start the opening now lies.
 */
export function openingsFollow(
  doc: Doc,
  wall: RecordId,
  path: readonly Point[],
  next: readonly Point[],
  edgeNow: (edge: number, atMm: number) => { readonly edge: number; readonly atMm: number },
): readonly Cell[] {
  return openingsOf(doc, wall).flatMap((opening): Cell[] => {
    const was = edgeAt(path, opening.atMm);
    const now = edgeNow(was.edge, was.atMm);
    const atMm = toGrid(startOfEdge(next, now.edge) + now.atMm);
    return atMm === opening.atMm ? [] : [[opening.id, 'atMm', atMm]];
  });
}
