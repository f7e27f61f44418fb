import type { Point } from './floorShape.ts';

/** Segments of a full circle, everywhere in the engine. */
export const SEGMENTS_A_CIRCLE = 64;

/** How the points between the ends of an arc lie: pushed out to keep the area, or on the circle, so that the polygon stays inside it. */
export type ArcFit = 'area' | 'inside';

/**
 * Points of an arc from angle `from` over `sweep` radians (signed). Both ends lie on the circle; the
 * points between are, for fit 'area', pushed out by a hair, so that the sector has exactly the area
 * radius^2 sweep / 2. Sums over sectors then follow Steiner's formula for parallel bodies at any number of segments.
 */
export function arcPoints(center: Point, radius: number, from: number, sweep: number, fit: ArcFit): readonly Point[] {
  const turn = Math.abs(sweep);
  const count = Math.max(2, Math.ceil((turn * SEGMENTS_A_CIRCLE) / (2 * Math.PI) - 1e-9));
  const step = turn / count;
  const pushed = fit === 'inside' ? radius : radius * pushedOut(count, step, turn);
  return Array.from({ length: count + 1 }, (_, i): Point => {
    const size = i === 0 || i === count ? radius : pushed;
    const angle = from + (sweep * i) / count;
    return [center[0] + size * Math.cos(angle), center[1] + size * Math.sin(angle)];
  });
}

/** Factor f with sin(step) (2 f + (count - 2) f^2) = turn: the triangles of the sector add up to its area. */
function pushedOut(count: number, step: number, turn: number): number {
  const aim = turn / Math.sin(step);
  if (count === 2) return aim / 2;
  const inner = count - 2;
  return (Math.sqrt(1 + inner * aim) - 1) / inner;
}
