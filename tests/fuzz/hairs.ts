import type { FloorShape } from '../../src/geometry/floorShape.ts';
import { bodiesOf, distanceTo } from './directFaces.ts';

/** Thinner than this, in mm, a skin is no wall and a slit no gap; nearer than the other, corners are one. */
const HAIR_MM = 0.1;
const ROUNDING_MM = 1e-6;

/**
 * True when something is as thin as a hair: a slit between a column and a wall, a sheet of a column. Floor that thin is
 * net floor and is counted, but whether it keeps a machine out is not asked: others say that it does.
 */
export function hasHairs(shape: FloorShape): boolean {
  const rings = bodiesOf(shape);
  const edges = rings.flatMap((ring) => ring.map((a, i) => [a, ring[(i + 1) % ring.length] ?? a] as const));
  return rings.some((ring) =>
    ring.some((at) =>
      edges.some(([a, b]) => {
        if (Math.abs(at[0] - a[0]) + Math.abs(at[0] - b[0]) > Math.abs(a[0] - b[0]) + 2) return false;
        const off = distanceTo(at, a, b);
        return off > ROUNDING_MM && off < HAIR_MM;
      }),
    ),
  );
}
