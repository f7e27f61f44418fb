import type { FloorShape, Point, Ring } from './floorShape.ts';
import { boxOf, grownBox } from './box.ts';
import { along, dot, minus, quarterTurn, times, unit } from './point.ts';
import { corner, ringContains, signedArea } from './ring.ts';
import { nearestOnSegment } from './segment.ts';
import { boxIndex } from './spatial.ts';

/*
 * On an edge that is not upright, the end of a wall snapped to the grid lies a hair off it, and a slit
 * of 0.002 mm would join two rooms or a skin of 0.002 mm close a door.
 *
 *      wall             wall             corners this near to what they were drawn against are
 *      |  |             |  |             pushed across it: a wall end out of the slab, a column into
 *   ---+- +---   ->   --|  |--- slab     its neighbour, the corner of a door out of its wall
 *                       +--+
 */

/** Corners this near to an edge, in mm, were meant to lie on it. */
const NEAR_MM = 0.05;
/** How far beyond the edge they are put, in mm. */
const ACROSS_MM = 0.02;

interface Target {
  readonly a: Point;
  readonly b: Point;
  /** Unit vector in which a corner is pushed. */
  readonly across: Point;
  readonly of: string;
}

/** The shape with no slits and skins between slabs, walls, gaps, solids and out-of-scope areas. No area changes by more than the push times a side. */
export function welded(shape: FloorShape): FloorShape {
  const slabs = shape.slabs.flatMap(({ id, ring }) => edges(id, ring, 'out'));
  const slabsIn = shape.slabs.length > 1 ? shape.slabs.flatMap(({ id, ring }) => edges(id, ring, 'in')) : [];
  const bodies = [
    ...shape.walls.flatMap(({ id, body }) => edges(id, body, 'in')),
    ...shape.solids.flatMap(({ id, ring, solid }) => (solid ? edges(id, ring, 'in') : [])),
    ...shape.outOfScope.flatMap(({ id, ring }) => edges(id, ring, 'in')),
  ];
  const pushSlab = pusher(slabsIn);
  // Slabs last: where a corner lies on a column and on the slab, it must leave the slab.
  const pushBody = pusher([...bodies, ...slabs]);
  return {
    ...shape,
    slabs: shape.slabs.map((slab) => ({ ...slab, ring: pushSlab(slab.id, slab.ring) })),
    walls: shape.walls.map((wall) => {
      const pushGap = pusher(edges('', wall.body, 'out'));
      return {
        ...wall,
        body: pushBody(wall.id, wall.body),
        gaps: wall.gaps.map((gap) => ({ ...gap, ring: pushGap(wall.id, gap.ring) })),
      };
    }),
    solids: shape.solids.map((solid) => ({
      ...solid,
      ring: solid.solid ? pushBody(solid.id, solid.ring) : solid.ring,
    })),
    outOfScope: shape.outOfScope.map((patch) => ({ ...patch, ring: pushBody(patch.id, patch.ring) })),
  };
}

function edges(of: string, ring: Ring, way: 'in' | 'out'): Target[] {
  const inwards = signedArea(ring) > 0 === (way === 'in') ? 1 : -1;
  return ring.map((a, i) => {
    const b = corner(ring, i + 1);
    return { a, b, across: times(quarterTurn(unit(minus(b, a))), inwards), of };
  });
}

/** Pushes the corners of a ring across the edges of others that they lie on. */
function pusher(targets: readonly Target[]): (of: string, ring: Ring) => Ring {
  if (targets.length === 0) return (_of, ring) => ring;
  const index = boxIndex(targets.map(({ a, b }) => boxOf([a, b])));
  return (of, ring) =>
    ring.map((at) => {
      let moved = at;
      for (const i of index.meeting(grownBox(boxOf([at]), NEAR_MM)).toSorted((x, y) => x - y)) {
        const target = targets[i] as Target;
        if (target.of === of || nearestOnSegment(at, target.a, target.b).distance > NEAR_MM) continue;
        // Into itself: the two lie on the same side of the edge and need no weld.
        if (ringContains(ring, along(at, target.across, 2 * NEAR_MM))) continue;
        const beyond = dot(minus(moved, target.a), target.across);
        if (beyond < ACROSS_MM) moved = along(moved, target.across, ACROSS_MM - beyond);
      }
      return moved;
    });
}
