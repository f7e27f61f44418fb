import type { Point, Ring } from '../../../src/geometry/floorShape.ts';

export interface Box {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}

/**
 * Sets of points of the plane by one library, in mm. `S` is the library's own handle; all that were made
 * live until `release`. Rings are open. What a library throws goes through.
 */
export interface PlaneSets<S> {
  readonly name: string;
  /** The inside of a ring that may cross itself: everything it winds about. */
  fill(ring: Ring): S;
  /** All that rings cover which do not cross themselves, each of either direction. */
  cover(rings: readonly Ring[]): S;
  union(sets: readonly S[]): S;
  subtract(from: S, what: S): S;
  intersect(one: S, other: S): S;
  /** All within a distance, or less a border of that width when it is negative; arcs by the library, inscribed. */
  grow(set: S, byMm: number): S;
  /** What lies in a box; may be rough at its border, for speed only. */
  window(set: S, box: Box): S;
  /** Connected pieces. */
  pieces(set: S): readonly S[];
  /** Outlines with the set on their left. */
  outlines(set: S): readonly Ring[];
  areaMm2(set: S): number;
  /** Metres of a path inside the set. */
  lengthMm(path: readonly Point[], set: S): number;
  release(): void;
}
