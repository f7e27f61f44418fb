import type { Point, Ring } from '../../../src/geometry/floorShape.ts';
import type { PlaneSets } from './planeSets.ts';

/*
 * A set grown or shrunk by a disc, as a union of simple pieces and one boolean; so a library's own offset,
 * with its inscribed arcs and its simplifying of outlines, is left out of the answer.
 *
 *    ______                a rectangle on every edge, and at every corner that juts out
 *   |  ____)_              a sector whose points lie as far out as makes its area exactly
 *   | |    | |             angle x r^2 / 2, at any number of segments
 */
export function areaTrueOffset<S>(sets: PlaneSets<S>, set: S, byMm: number, segments: number): S {
  if (byMm === 0) return set;
  const rings = sets.outlines(set).map((ring) => (byMm > 0 ? ring : ring.toReversed()));
  if (rings.length === 0) return set;
  const border = sets.cover(rings.flatMap((ring) => borderOf(ring, Math.abs(byMm), segments)));
  return byMm > 0 ? sets.union([set, border]) : sets.subtract(set, border);
}

interface Edge {
  readonly a: Point;
  readonly b: Point;
  /** Unit vector to the right of it: away from what the ring holds on its left. */
  readonly out: Point;
}

function borderOf(ring: Ring, radiusMm: number, segments: number): Ring[] {
  const edges = ring.flatMap((a, i): Edge[] => {
    const b = ring[(i + 1) % ring.length] as Point;
    const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
    return length > 0 ? [{ a, b, out: [(b[1] - a[1]) / length, (a[0] - b[0]) / length] }] : [];
  });
  return edges.flatMap((edge, i) => {
    const next = edges[(i + 1) % edges.length] as Edge;
    return [strip(edge, radiusMm), ...sector(edge, next, radiusMm, segments)];
  });
}

function moved(at: Point, out: Point, by: number): Point {
  return [at[0] + by * out[0], at[1] + by * out[1]];
}

/**
 * How far a strip goes behind its edge, in mm: rounding would leave a sliver between the two, and a sliver left of a set
 * that shrank to nothing grows to a whole head. The ends of the edge stay corners of the strip, for the same reason: its
 * sides are then, to the last bit, those of the sectors beside it.
 */
const BEHIND_MM = 1e-3;

function strip({ a, b, out }: Edge, radiusMm: number): Ring {
  const behind = -Math.min(BEHIND_MM, radiusMm);
  return [a, moved(a, out, radiusMm), moved(b, out, radiusMm), b, moved(b, out, behind), moved(a, out, behind)];
}

function sector(before: Edge, after: Edge, radiusMm: number, segments: number): Ring[] {
  const [u, v] = [before.out, after.out];
  const sweep = Math.atan2(u[0] * v[1] - u[1] * v[0], u[0] * v[0] + u[1] * v[1]);
  if (sweep <= 0) return [];
  const corner = before.b;
  const count = Math.max(2, Math.ceil((sweep * segments) / (2 * Math.PI)));
  const step = sweep / count;
  const radius = radiusMm * pushedOut(count, step);
  const from = Math.atan2(u[1], u[0]);
  const inner = Array.from({ length: count - 1 }, (_, i): Point => {
    const angle = from + step * (i + 1);
    return [corner[0] + radius * Math.cos(angle), corner[1] + radius * Math.sin(angle)];
  });
  return [[corner, moved(corner, u, radiusMm), ...inner, moved(corner, v, radiusMm)]];
}

/** The factor for all points but the two ends: its triangles then add up to the sector's area. */
function pushedOut(count: number, step: number): number {
  const aim = (count * step) / Math.sin(step);
  const between = count - 2;
  return between === 0 ? aim / 2 : (Math.sqrt(1 + between * aim) - 1) / between;
}
