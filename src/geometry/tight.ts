import type { FloorShape, MachineShape, Point, Region, TightPiece } from './floorShape.ts';
import { boxOf } from './box.ts';
import { labelSpot } from './labelSpot.ts';
import type { Face } from './hardFace.ts';
import { between, cross, distance, minus } from './point.ts';
import { type RegionIndex, regionIndex } from './regionIndex.ts';
import { corner, perimeter, regionArea } from './ring.ts';
import { nearestOnSegment } from './segment.ts';
import { type Way, blockedEntrance, tooTight } from './ways.ts';

/** Pieces thinner than this on average, in mm, or smaller than this, in mm2, are the rounding of the grid and no floor. */
const THINNEST_MM = 0.02;
export const SMALLEST_MM2 = 1;
/** How far, in mm, the clip grid may leave a piece's edge off the face that it lies on. */
const ALONG_MM = 0.05;
/** An edge and a face that share no more than this, in mm, only meet. */
const SHARED_MM = 1;

/** True when one of the polygon's edges and the face share a stretch: either may go on beyond it. */
export function liesAlong(polygon: Region[number], face: Face): boolean {
  return polygon.some((ring) =>
    ring.some((a, i) => {
      const b = corner(ring, i + 1);
      const shared = [
        ...[a, b].filter((at) => nearestOnSegment(at, face.a, face.b).distance < ALONG_MM),
        ...[face.a, face.b].filter((at) => nearestOnSegment(at, a, b).distance < ALONG_MM),
      ];
      return shared.some((at) => distance(at, shared[0] ?? at) > SHARED_MM);
    }),
  );
}

/** True for what only the snapping to the grid has left over. */
export function isSliver(polygon: Region[number]): boolean {
  const edge = polygon.reduce((sum, ring) => sum + perimeter(ring), 0);
  return regionArea([polygon]) < Math.max(SMALLEST_MM2, (THINNEST_MM * edge) / 2);
}

/** The passage nearest to reached floor that leads into the piece and does not let the machine through. */
export function blockerOf(
  piece: RegionIndex,
  field: RegionIndex,
  machine: MachineShape,
  ways: readonly Way[],
  shape: Pick<FloorShape, 'entrances'>,
): TightPiece['blockedBy'] {
  for (const entrance of shape.entrances) {
    const why = blockedEntrance(entrance, machine, ways);
    if (why && touches(piece, entrance.at, 10)) return why;
  }
  const near = ways.flatMap((way) => {
    const { middle, size } = placeOf(way);
    if (!touches(piece, middle, size)) return [];
    const why = tooTight(way.passage, machine);
    return [{ way, why, far: field.nearest(middle, size + 2 * machine.passageMm)?.distance ?? Infinity }];
  });
  const stated = near.filter((found) => found.why !== null).toSorted((a, b) => a.far - b.far)[0];
  if (stated?.why) return { passage: stated.way.passage, ...stated.why };
  // Wide enough as stated, too narrow as drawn: something stands in it.
  const drawn = near.filter((found) => found.far < Infinity).toSorted((a, b) => a.far - b.far)[0];
  return drawn ? { passage: drawn.way.passage, needsMm: machine.passageMm, what: 'width' } : null;
}

function placeOf(way: Way): { readonly middle: Point; readonly size: number } {
  const { minX, minY, maxX, maxY } = boxOf(way.ring);
  return { middle: [(minX + maxX) / 2, (minY + maxY) / 2], size: Math.hypot(maxX - minX, maxY - minY) / 2 + 1 };
}

function touches(piece: RegionIndex, at: Point, withinMm: number): boolean {
  return piece.contains(at) || piece.nearest(at, withinMm) !== null;
}

/** A place for the tag of a small piece: its middle of mass where that lies inside, else a spot that does. */
export function pieceSpot(region: Region): Point {
  const outer = region[0]?.[0] ?? [];
  const origin = outer[0] ?? [0, 0];
  let [sum, x, y] = [0, 0, 0];
  for (let i = 1; i + 1 < outer.length; i += 1) {
    const [a, b] = [corner(outer, i), corner(outer, i + 1)];
    const part = cross(minus(a, origin), minus(b, origin));
    const middle = between(between(origin, a, 0.5), b, 1 / 3);
    sum += part;
    x += part * (middle[0] - origin[0]);
    y += part * (middle[1] - origin[1]);
  }
  const at: Point = sum === 0 ? origin : [origin[0] + x / sum, origin[1] + y / sum];
  return regionIndex(region).contains(at) ? at : (labelSpot(region) ?? origin);
}
