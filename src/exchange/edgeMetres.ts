import type { ZoneMeasure } from '../geometry/floorShape.ts';

/** Metres of face beside the machine's field: what is worked by hand along walls, obstructions, drops and stop lines. */
export function hardMetres({ faces }: ZoneMeasure): number {
  return faces.wall + faces.obstruction + faces.drop + faces.stop;
}
