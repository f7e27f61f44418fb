import type { Point, Ring } from './floorShape.ts';

/**
 * The plan grid of 1/320 mm: 0.1 mm, 1/64 in (0.396875 mm) and 1 in (25.4 mm) all lie on it, so a
 * length typed in mm or in inches comes back exactly as typed.
 */
export const STEPS_PER_MM = 320;

/** Nearest place of the plan grid, in mm. */
export function toGrid(valueMm: number): number {
  return Math.round(valueMm * STEPS_PER_MM) / STEPS_PER_MM;
}

export function pointToGrid(at: Point): Point {
  return [toGrid(at[0]), toGrid(at[1])];
}

export function ringToGrid(ring: Ring): Ring {
  return ring.map(pointToGrid);
}
