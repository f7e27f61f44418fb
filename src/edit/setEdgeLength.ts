import type { Point } from '../geometry/floorShape.ts';
import { pointToGrid } from '../geometry/grid.ts';
import { along, distance, dot, minus, quarterTurn, unit } from '../geometry/point.ts';
import type { RecordId } from '../model/cell.ts';
import { recordOf, type Doc } from '../model/doc.ts';
import type { Command } from './command.ts';
import { cellsWithPoints, itemShape } from './itemShape.ts';
import { withEdgeMoved } from './parallelEdge.ts';

export type SetEdgeLengthArgs = {
  readonly id: RecordId;
  readonly edge: number;
  readonly lengthMm: number;
};

/** The edge after it is carried along, so that walls keep their directions, when it leaves at more than this sine (6 degrees). */
const TURNS = 0.1;

/**
 * Gives one edge of an outline its length. Its first corner stays; the run of edges after it is carried parallel to
 * itself. Where the outline goes straight on only the corner between them moves, with the doorway that begins there.
 */
export const setEdgeLength: Command<SetEdgeLengthArgs> = {
  name: 'setEdgeLength',
  refuse(doc, { id, edge, lengthMm }) {
    const shape = itemShape(doc, id);
    if (!shape || doc.get(id)?.['gone'] === true) return 'unknownRecord';
    if (shape.corners === 'fixed' || !shape.closed) return 'cornersFixed';
    if (!(edge >= 0 && edge < shape.points.length)) return 'unknownEdge';
    return lengthMm > 0 ? null : 'noSize';
  },
  write(doc, { id, edge, lengthMm }) {
    const fields = doc.get(id);
    const shape = itemShape(doc, id);
    if (!fields || !shape) return [];
    const { points } = shape;
    const at = (index: number): Point => points[index % points.length] ?? [0, 0];
    const run = unit(minus(at(edge + 1), at(edge)));
    const byMm = lengthMm - distance(at(edge), at(edge + 1));
    const turn = dot(run, quarterTurn(unit(minus(at(edge + 2), at(edge + 1)))));
    const next = (edge + 1) % points.length;
    if (Math.abs(turn) > TURNS) return cellsWithPoints(id, fields, withEdgeMoved(shape, next, byMm * turn));
    const moved = new Set([next, ...(isDoorway(doc, id, next) ? [(edge + 2) % points.length] : [])]);
    return cellsWithPoints(
      id,
      fields,
      points.map((corner, index) => (moved.has(index) ? pointToGrid(along(corner, run, byMm)) : corner)),
    );
  },
};

function isDoorway(doc: Doc, id: RecordId, edge: number): boolean {
  return recordOf(doc, 'slab', id)?.outline[edge]?.edge.kind === 'doorway';
}
