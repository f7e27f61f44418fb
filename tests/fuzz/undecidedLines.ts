import type { FloorShape, Point, Ring } from '../../src/geometry/floorShape.ts';
import { bodiesOf } from './directFaces.ts';

/** Nearer than this to an edge over more than this, in mm, a line runs along it. */
const ALONG_MM = 1e-3;

/**
 * Lines with a stretch along the edge of something: such a stretch lies in the zones, or on the floor and off it, on
 * either side, and which side it is told for may change with the drawing. All else about them is decided.
 */
export function undecidedLines(shape: FloorShape): ReadonlySet<string> {
  const rings = [...bodiesOf(shape), ...shape.zones.map(({ ring }) => ring)];
  const isAlong = (path: readonly Point[]): boolean =>
    path.slice(1).some((b, i) => rings.some((ring) => runsAlong(path[i] ?? b, b, ring)));
  return new Set(shape.lines.filter(({ path }) => isAlong(path)).map(({ id }) => id));
}

function runsAlong(a: Point, b: Point, ring: Ring): boolean {
  const [runX, runY] = [b[0] - a[0], b[1] - a[1]];
  const size = Math.hypot(runX, runY);
  if (size === 0) return false;
  const along = ([x, y]: Point): number => ((x - a[0]) * runX + (y - a[1]) * runY) / size;
  const aside = ([x, y]: Point): number => ((y - a[1]) * runX - (x - a[0]) * runY) / size;
  return ring.some((c, i) => {
    const d = ring[(i + 1) % ring.length] ?? c;
    const [start, end] = along(c) <= along(d) ? [c, d] : [d, c];
    const [from, to] = [Math.max(0, along(start)), Math.min(size, along(end))];
    if (!(to - from > ALONG_MM)) return false;
    const asideAt = (at: number): number =>
      aside(start) + ((aside(end) - aside(start)) * (at - along(start))) / (along(end) - along(start));
    return Math.abs(asideAt(from)) <= ALONG_MM && Math.abs(asideAt(to)) <= ALONG_MM;
  });
}
