import type { Point, Region } from './floorShape.ts';
import { boxOf } from './box.ts';
import { between } from './point.ts';
import { type RegionIndex, regionIndex } from './regionIndex.ts';
import { corner, regionArea } from './ring.ts';

/** Squares a side in the first look, and how often the best one is looked at closer. */
const SQUARES = 12;
const CLOSER = 4;

/**
 * A place well inside a region for a tag: about as far from the outline as any. Of several polygons the
 * largest is taken; null for none. A coarse grid, then finer ones about its best place.
 */
export function labelSpot(region: Region): Point | null {
  const largest = region.toSorted((a, b) => regionArea([b]) - regionArea([a]))[0];
  const outer = largest?.[0];
  if (!largest || !outer || outer.length < 3) return null;
  const index = regionIndex([largest]);
  const { minX, minY, maxX, maxY } = boxOf(outer);
  let center: Point = [(minX + maxX) / 2, (minY + maxY) / 2];
  let [width, height] = [maxX - minX, maxY - minY];
  let best = deepest(gridAround(center, width, height), index) ?? thinSpot(outer, index);
  for (let i = 0; i < CLOSER && best; i += 1) {
    center = best.at;
    [width, height] = [width / 4, height / 4];
    const finer = deepest(gridAround(center, width, height), index);
    if (finer && finer.depth > best.depth) best = finer;
  }
  return best?.at ?? outer[0] ?? null;
}

interface Spot {
  readonly at: Point;
  readonly depth: number;
}

function gridAround([x, y]: Point, width: number, height: number): Point[] {
  const spots: Point[] = [];
  for (let i = 0; i < SQUARES; i += 1) {
    for (let j = 0; j < SQUARES; j += 1) {
      spots.push([x + ((i + 0.5) / SQUARES - 0.5) * width, y + ((j + 0.5) / SQUARES - 0.5) * height]);
    }
  }
  return spots;
}

function deepest(spots: readonly Point[], index: RegionIndex): Spot | null {
  let best: Spot | null = null;
  for (const at of spots) {
    if (!index.contains(at)) continue;
    const depth = depthAt(at, index);
    if (!best || depth > best.depth) best = { at, depth };
  }
  return best;
}

function depthAt(at: Point, index: RegionIndex): number {
  const { minX, minY, maxX, maxY } = index.box;
  const size = Math.max(maxX - minX, maxY - minY);
  for (let within = size / 32; within <= size * 2; within *= 4) {
    const near = index.nearest(at, within);
    if (near) return near.distance;
  }
  return 0;
}

/** For shapes thinner than the grid: middles of diagonals between near corners. */
function thinSpot(ring: readonly Point[], index: RegionIndex): Spot | null {
  const middles = ring.flatMap((a, i) =>
    [2, 3, Math.floor(ring.length / 2)].map((step) => between(a, corner(ring, i + step), 0.5)),
  );
  return deepest(middles, index);
}
