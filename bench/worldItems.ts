import type { LineShape, PatchShape, Point, Ring, SolidShape, ZoneShape } from '../src/geometry/floorShape.ts';
import { pointToGrid } from '../src/geometry/grid.ts';
import type { Seeded } from './seeded.ts';

/** A right-angled piece of plan in mm, from its corner nearest to the origin. */
export interface Rect {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly depth: number;
}

export function rectRing({ x, y, width, depth }: Rect): Ring {
  return onGrid([
    [x, y],
    [x + width, y],
    [x + width, y + depth],
    [x, y + depth],
  ]);
}

export function onGrid(ring: Ring): Ring {
  return ring.map(pointToGrid);
}

/** A ring turned about a centre by an angle in radians. */
export function turnedRing(ring: Ring, [cx, cy]: Point, angle: number): Ring {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return onGrid(ring.map(([x, y]): Point => [cx + (x - cx) * c - (y - cy) * s, cy + (x - cx) * s + (y - cy) * c]));
}

function polygon([cx, cy]: Point, radiusAt: (i: number) => number, corners: number, from = 0): Ring {
  return onGrid(
    Array.from({ length: corners }, (_, i): Point => {
      const angle = from + (i * 2 * Math.PI) / corners;
      return [cx + radiusAt(i) * Math.cos(angle), cy + radiusAt(i) * Math.sin(angle)];
    }),
  );
}

/** A column: square in most places, square and turned, or round as sixteen corners. */
export function columnAt([x, y]: Point, id: string, chance: Seeded): SolidShape {
  const size = 50 * chance.whole(6, 10);
  const form = chance.next();
  const square = rectRing({ x: x - size / 2, y: y - size / 2, width: size, depth: size });
  if (form < 0.7) return { id, ring: square, solid: true };
  if (form < 0.85) return { id, ring: turnedRing(square, [x, y], chance.between(0.1, 1.4)), solid: true };
  return { id, ring: polygon([x, y], () => size / 2, 16), solid: true };
}

/** A stain or a patch: 6 to 24 corners round a middle, 0.4 to 2.2 m from it. */
export function findingIn(area: Rect, id: string, chance: Seeded): PatchShape {
  const size = chance.between(600, 2000);
  const radii = Array.from({ length: chance.whole(6, 24) }, () => size * chance.between(0.7, 1.1));
  const from = chance.between(0, Math.PI);
  return { id, ring: polygon(placeIn(area, chance), (i) => radii[i] ?? size, radii.length, from) };
}

/** A crack that wanders: 3 to 10 segments of 0.3 to 1.5 m, each a little off the direction of the last. */
export function crackIn(area: Rect, id: string, chance: Seeded): LineShape {
  const path: Point[] = [placeIn(area, chance)];
  let heading = chance.between(0, 2 * Math.PI);
  for (let segment = chance.whole(3, 10); segment > 0; segment -= 1) {
    const [x, y] = path.at(-1) as Point;
    heading += chance.between(-0.6, 0.6);
    const length = chance.between(300, 1500);
    path.push(pointToGrid([x + length * Math.cos(heading), y + length * Math.sin(heading)]));
  }
  return { id, path };
}

function placeIn(area: Rect, chance: Seeded): Point {
  return pointToGrid([area.x + chance.next() * area.width, area.y + chance.next() * area.depth]);
}

/**
 * Zones side by side on a lattice whose nodes are shifted, so that neighbours share slanted borders.
 * Every fourth is a little larger than its cell and lies over its neighbours; beside the outline a margin is rest.
 */
export function zonesOn(area: Rect, across: number, down: number, machine: string, chance: Seeded): ZoneShape[] {
  const [cellWidth, cellDepth] = [area.width / across, area.depth / down];
  // Two nodes a cell side: corners and middles.
  const nodes = Array.from({ length: 2 * down + 1 }, (_row, j) =>
    Array.from({ length: 2 * across + 1 }, (_column, i): Point => [
      area.x + (i * cellWidth) / 2 + chance.between(-0.08, 0.08) * cellWidth,
      area.y + (j * cellDepth) / 2 + chance.between(-0.08, 0.08) * cellDepth,
    ]),
  );
  const node = (i: number, j: number): Point => nodes[j]?.[i] ?? [0, 0];
  return Array.from({ length: across * down }, (_, number) => {
    const [i, j] = [2 * (number % across), 2 * Math.floor(number / across)];
    const around = [
      node(i, j),
      node(i + 1, j),
      node(i + 2, j),
      node(i + 2, j + 1),
      node(i + 2, j + 2),
      node(i + 1, j + 2),
      node(i, j + 2),
      node(i, j + 1),
    ];
    const [cx, cy] = node(i + 1, j + 1);
    const grow = number % 4 === 3 ? 1.06 : 1;
    const ring = around.map(([x, y]): Point => [cx + (x - cx) * grow, cy + (y - cy) * grow]);
    return { id: `z${number + 1}`, ring: onGrid(ring), machine };
  });
}
