import { type Box, boxOf, boxesMeet, grownBox } from '../box.ts';
import type { Point } from '../floorShape.ts';
import type { Face } from '../hardFace.ts';
import { along, between, distance, quarterTurn, unit } from '../point.ts';
import { crossing, nearestOnSegment } from '../segment.ts';
import type { Arc } from './edge.ts';
import { type EnteredAt, type MachineAt, bodyOutlines, roomHolding } from './reach.ts';
import { standLoops } from './roomLoops.ts';
import type { TileGrid } from './tiles.ts';
import type { TracedPiece } from './trace.ts';

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
  const found = nearestInSight(at, within, machine, grid, facesNear);
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

/** The room of the nearest floor that a body can stand on, with no face in between. */
function nearestInSight(
  at: Point,
  withinMm: number,
  machine: MachineAt,
  grid: TileGrid,
  facesNear: (box: Box) => readonly Face[],
): EnteredAt | null {
  const box = grownBox(boxOf([at]), withinMm);
  const outlines = [...new Set(grid.meeting(box).flatMap((tile) => bodyOutlines(tile, machine)))];
  const loops = standLoops(box, outlines, false);
  if (loops === 'all') return roomHolding(at, machine, grid);
  const faces = facesNear(box);
  const seen = loops
    .flatMap((loop) => loop.flatMap((piece) => nearestOf(piece, at)))
    .filter(({ place }) => distance(place, at) <= withinMm && isInSight(at, place, faces))
    .toSorted((p, q) => distance(p.place, at) - distance(q.place, at))[0];
  return seen ? roomBeside(seen.piece, machine, grid) : null;
}

/**
 * The room that a piece of outline belongs to, asked for well away from its ends: beyond the tip of a wedge, straight on
 * from the entrance, there may be no floor.
 */
function roomBeside(
  { fromX, fromY, toX, toY, part }: TracedPiece,
  machine: MachineAt,
  grid: TileGrid,
): EnteredAt | null {
  for (const share of [0.5, 0.25, 0.75]) {
    const [x, y] = between([fromX, fromY], [toX, toY], share);
    const arc = part?.edge.arc;
    const far = arc ? arc.radius / Math.hypot(x - arc.cx, y - arc.cy) : 1;
    const on: Point = arc ? [arc.cx + (x - arc.cx) * far, arc.cy + (y - arc.cy) * far] : [x, y];
    // The part lies to the left of the walk.
    const found = roomHolding(along(on, quarterTurn(unit([toX - fromX, toY - fromY])), INSIDE_MM), machine, grid);
    if (found) return found;
  }
  return null;
}

interface NearPlace {
  readonly place: Point;
  readonly piece: TracedPiece;
}

/** Nearest places on a piece of outline; sides of the box that was looked at are no outline. */
function nearestOf(piece: TracedPiece, at: Point): NearPlace[] {
  const { fromX, fromY, toX, toY, part } = piece;
  if (part?.isSide) return [];
  const [from, to]: [Point, Point] = [
    [fromX, fromY],
    [toX, toY],
  ];
  const arc = part?.edge.arc;
  const places = arc ? nearestOnArc(arc, from, to, at) : [nearestOnSegment(at, from, to).at];
  return places.map((place) => ({ place, piece }));
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
