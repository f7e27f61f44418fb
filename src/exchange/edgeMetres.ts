import type { ZoneMeasure } from '../geometry/floorShape.ts';

/** Metres of edge beside the machine's field: walls, obstructions and drops. A stop line is no edge; its metres stand apart. */
export function edgeMetres({ faces }: ZoneMeasure): number {
  return faces.wall + faces.obstruction + faces.drop;
}
