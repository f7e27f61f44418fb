import type { Point, WallShape } from '../src/geometry/floorShape.ts';
import type { Seeded } from './seeded.ts';
import { type Rect, rectRing, turnedRing } from './worldItems.ts';

const THICK_MM = 150;
/** How far a doorway is cut out on both sides of its wall, in mm: on a slanting wall its corners come to lie a hair beside the faces. */
const CUT_BEYOND_MM = 1;

/**
 *   +------ --+     four walls that lap at their corners round one bay: most with a doorway or two,
 *   |    #    |     one in ten without any, so that its floor is cut off. Others stand free along the
 *   +---------+     columns, with or without a doorway, or slantwise.
 */
export function roomOf(bay: Rect, id: string, isClosed: boolean, chance: Seeded): WallShape[] {
  const { x, y, width, depth } = bay;
  const doorIn = isClosed ? -1 : chance.whole(0, 3);
  const second = !isClosed && chance.next() < 0.3 ? (doorIn + 2) % 4 : -1;
  const bodies: Rect[] = [
    { x, y, width, depth: THICK_MM },
    { x: x + width - THICK_MM, y, width: THICK_MM, depth },
    { x, y: y + depth - THICK_MM, width, depth: THICK_MM },
    { x, y, width: THICK_MM, depth },
  ];
  return bodies.map((body, side) => wallOf(body, `${id}.${side + 1}`, side === doorIn || side === second, chance));
}

/** A wall that stands free: from `at` along x or y, in one case of four turned about its start. */
export function freeWall(at: Point, lengthMm: number, id: string, chance: Seeded): WallShape {
  const isAlongX = chance.next() < 0.5;
  const [x, y] = at;
  const body = isAlongX
    ? { x, y: y - THICK_MM / 2, width: lengthMm, depth: THICK_MM }
    : { x: x - THICK_MM / 2, y, width: THICK_MM, depth: lengthMm };
  const wall = wallOf(body, id, chance.next() < 0.5, chance);
  if (chance.next() < 0.75) return wall;
  const angle = chance.between(0.1, 0.7);
  return {
    ...wall,
    body: turnedRing(wall.body, at, angle),
    gaps: wall.gaps.map((gap) => ({ ...gap, ring: turnedRing(gap.ring, at, angle) })),
  };
}

/** Doorways of 860 to 3,000 mm, somewhere between the corners. */
function wallOf(body: Rect, id: string, hasDoor: boolean, chance: Seeded): WallShape {
  if (!hasDoor) return { id, body: rectRing(body), gaps: [] };
  const isAlongX = body.width > body.depth;
  const lengthMm = Math.max(body.width, body.depth);
  const widthMm = 20 * chance.whole(43, 150);
  const from = chance.between(500, Math.max(500, lengthMm - widthMm - 500));
  const gap = isAlongX
    ? { x: body.x + from, y: body.y - CUT_BEYOND_MM, width: widthMm, depth: body.depth + 2 * CUT_BEYOND_MM }
    : { x: body.x - CUT_BEYOND_MM, y: body.y + from, width: body.width + 2 * CUT_BEYOND_MM, depth: widthMm };
  const passage = { id: `${id}.door`, widthMm, heightMm: null };
  return { id, body: rectRing(body), gaps: [{ passage, ring: rectRing(gap) }] };
}
