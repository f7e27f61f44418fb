import type { Point, Ring } from '../../../src/geometry/floorShape.ts';

/** How often a ring goes round a place: positive from x towards y. */
export function windingOf(ring: Ring, [x, y]: Point): number {
  let winding = 0;
  let [ax, ay] = ring.at(-1) ?? [0, 0];
  for (const [bx, by] of ring) {
    if (ay > y !== by > y) {
      const side = (bx - ax) * (y - ay) - (x - ax) * (by - ay);
      if (by > ay && side > 0) winding += 1;
      if (by < ay && side < 0) winding -= 1;
    }
    [ax, ay] = [bx, by];
  }
  return winding;
}

/** Twice the signed area, about the first corner so that a far origin costs no digits. */
export function twiceArea(ring: Ring): number {
  const [ox, oy] = ring[0] ?? [0, 0];
  let sum = 0;
  for (let i = 1; i + 1 < ring.length; i += 1) {
    const [ax, ay] = ring[i] as Point;
    const [bx, by] = ring[i + 1] as Point;
    sum += (ax - ox) * (by - oy) - (bx - ox) * (ay - oy);
  }
  return sum;
}

/** The ring that turns from x towards y. */
export function leftTurning(ring: Ring): Ring {
  return twiceArea(ring) >= 0 ? ring : ring.toReversed();
}

/** False as soon as two edges that are not neighbours may meet, or an edge runs back over its neighbour. Never true by mistake but for roundings. */
export function isSimple(ring: Ring): boolean {
  const count = ring.length;
  if (count < 3) return false;
  for (let i = 0; i < count; i += 1) {
    const [a, b, c] = [ring[i] as Point, ring[(i + 1) % count] as Point, ring[(i + 2) % count] as Point];
    if (sideOf(a, b, c) === 0 && (b[0] - a[0]) * (c[0] - b[0]) + (b[1] - a[1]) * (c[1] - b[1]) <= 0) return false;
    for (let j = i + 2; j < count; j += 1) {
      if (i === 0 && j === count - 1) continue;
      if (meet(a, b, ring[j] as Point, ring[(j + 1) % count] as Point)) return false;
    }
  }
  return true;
}

function sideOf(a: Point, b: Point, c: Point): number {
  return (b[0] - a[0]) * (c[1] - a[1]) - (c[0] - a[0]) * (b[1] - a[1]);
}

function meet(a: Point, b: Point, c: Point, d: Point): boolean {
  const near = Math.max(a[0], b[0]) >= Math.min(c[0], d[0]) && Math.max(c[0], d[0]) >= Math.min(a[0], b[0]);
  if (!near || Math.max(a[1], b[1]) < Math.min(c[1], d[1]) || Math.max(c[1], d[1]) < Math.min(a[1], b[1])) return false;
  return sideOf(a, b, c) * sideOf(a, b, d) <= 0 && sideOf(c, d, a) * sideOf(c, d, b) <= 0;
}
