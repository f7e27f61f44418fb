import { type Box, boxOf, boxesMeet, grownBox } from '../box.ts';
import type { Point } from '../floorShape.ts';
import type { Face } from '../hardFace.ts';
import { between, distance } from '../point.ts';
import { crossing, nearestOnSegment } from '../segment.ts';
import type { Arc } from './edge.ts';
import { type EnteredAt, type MachineAt, bodyOutlines, roomHolding } from './reach.ts';
import { standLoops } from './roomLoops.ts';
import type { TileGrid } from './tiles.ts';
import type { TracedLoop } from './trace.ts';

/*
 * Where a machine comes on to the floor from an entrance.
 *
 *    wall ====x====      An entrance mostly lies on a face, where nothing can stand: the machine starts from the
 *            / \         nearest floor in sight. Along an edge where the floor runs on it may start anywhere.
 */

/** An entrance this near to an edge, in mm, leads in through it. */
export const ON_EDGE_MM = 5;
/** How far apart floor is asked for along an edge where machines come on, in mm. */
const STEP_MM = 25;
/** How far beyond the outline of floor, in mm, a place is surely inside. */
const INSIDE_MM = 1e-3;

/** Rooms that an entrance leads to: the one it lies in, all along the open edge it lies on, or the nearest in sight. */
export function roomsAt(
  at: Point,
  machine: MachineAt,
  grid: TileGrid,
  runEdges: readonly { readonly a: Point; readonly b: Point }[],
  facesNear: (box: Box) => readonly Face[],
): EnteredAt[] {
  const holding = roomHolding(at, machine, grid);
  if (holding) return [holding];
  const edge = runEdges.find(({ a, b }) => nearestOnSegment(at, a, b).distance <= ON_EDGE_MM);
  if (edge) return roomsAlong(edge.a, edge.b, machine, grid);
  const within = Math.max(...Object.values(machine.sizes.bodyMm)) * 1.5 + ON_EDGE_MM;
  const place = nearestInSight(at, within, machine, grid, facesNear);
  const found = place && roomHolding(place, machine, grid);
  return found ? [found] : [];
}

function roomsAlong(a: Point, b: Point, machine: MachineAt, grid: TileGrid): EnteredAt[] {
  const steps = Math.max(1, Math.ceil(distance(a, b) / STEP_MM));
  const found: EnteredAt[] = [];
  for (let i = 0; i <= steps; i += 1) {
    const at = roomHolding(between(a, b, i / steps), machine, grid);
    if (at && !found.some((other) => other.tile === at.tile && other.room === at.room)) found.push(at);
  }
  return found;
}

/** A place just inside the nearest floor that a body can stand on, with no face in between. */
function nearestInSight(
  at: Point,
  withinMm: number,
  machine: MachineAt,
  grid: TileGrid,
  facesNear: (box: Box) => readonly Face[],
): Point | null {
  const box = grownBox(boxOf([at]), withinMm);
  const outlines = [...new Set(grid.meeting(box).flatMap((tile) => bodyOutlines(tile, machine)))];
  const loops = standLoops(box, outlines, false);
  if (loops === 'all') return at;
  const faces = facesNear(box);
  const places = loops.flatMap((loop) => nearestOf(loop, at)).filter((place) => distance(place, at) <= withinMm);
  const seen = places
    .filter((place) => isInSight(at, place, faces))
    .toSorted((p, q) => distance(p, at) - distance(q, at))[0];
  if (!seen) return null;
  const far = distance(seen, at);
  return between(at, seen, (far + INSIDE_MM) / far);
}

/** Nearest places on the pieces of an outline; sides of the box that was looked at are no outline. */
function nearestOf(loop: TracedLoop, at: Point): Point[] {
  return loop.flatMap(({ fromX, fromY, toX, toY, part }): Point[] => {
    if (part?.isSide) return [];
    const [from, to]: [Point, Point] = [
      [fromX, fromY],
      [toX, toY],
    ];
    const arc = part?.edge.arc;
    return arc ? nearestOnArc(arc, from, to, at) : [nearestOnSegment(at, from, to).at];
  });
}

/** The place of an arc straight ahead, or where that lies beyond its ends, both of them. */
function nearestOnArc({ cx, cy, radius, half }: Arc, from: Point, to: Point, at: Point): Point[] {
  const far = Math.hypot(at[0] - cx, at[1] - cy);
  const ahead: Point = [cx + ((at[0] - cx) * radius) / far, cy + ((at[1] - cy) * radius) / far];
  const isBetween = ahead[1] >= Math.min(from[1], to[1]) && ahead[1] <= Math.max(from[1], to[1]);
  return isBetween && (ahead[0] - cx) * half >= 0 ? [ahead] : [from, to];
}

/** No face between the two places; the face the entrance stands in does not hide anything. */
function isInSight(at: Point, to: Point, faces: readonly Face[]): boolean {
  return faces.every((face) => {
    const meet = crossing(at, to, face.a, face.b);
    return !meet || distance(meet.at, at) <= ON_EDGE_MM;
  });
}

export function facesIn(faces: readonly Face[], box: Box): readonly Face[] {
  return faces.filter(({ a, b }) => boxesMeet(box, boxOf([a, b])));
}
