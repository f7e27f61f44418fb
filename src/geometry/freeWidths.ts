import type { Point } from './floorShape.ts';
import { type Box, boxOf, grownBox } from './box.ts';
import type { Face } from './hardFace.ts';
import { between, distance, dot, minus, times, unit } from './point.ts';
import { crossing, nearestOnSegment } from './segment.ts';
import { boxIndex } from './spatial.ts';

/*
 * Where floor is narrow: the free width between two faces that look at each other.
 *
 *   ----+  p       +----      p, q  ends of the width, one on each face
 *       |<-------->|          The width is a least one when it grows whichever way an end slides along
 *       |  niche   | q        its face. In a corner it only shrinks towards nothing, so a corner has none.
 *       +----------+
 */
export interface FreeWidth {
  readonly faces: readonly [Face, Face];
  readonly from: Point;
  readonly to: Point;
  readonly widthMm: number;
  /** True for a least width; false where the faces go on closing in a little on one side. */
  readonly isLeast: boolean;
  /** In the middle of two faces that run along each other: how far they do, mm; elsewhere 0. */
  readonly alongMm: number;
}

/** An end may slide and shrink its width by this share of the way (a slope of half a degree) and still count as the least. */
const LEAST_SLOPE = 0.01;
/** Faces that close in more steeply than this (20 degrees) are a corner and no gap. */
const STEEPEST_SLOPE = Math.sin((20 * Math.PI) / 180);
/** How far, in mm, corners of faces that meet may lie apart. */
const MEET_MM = 0.05;

/**
 * All free widths, in mm, between faces that look at each other over floor, where `limitMm` of the two faces is not
 * exceeded. No other face stands between the two ends.
 */
export function freeWidths(faces: readonly Face[], limitMm: (a: Face, b: Face) => number): readonly FreeWidth[] {
  const room: FaceRoom = { faces, index: boxIndex(faces.map((face) => boxOf([face.a, face.b]))) };
  const farthest = Math.max(0, ...faces.map((face) => limitMm(face, face)));
  return faces.flatMap((face, i) => {
    const near = room.index.meeting(grownBox(boxOf([face.a, face.b]), farthest));
    return near
      .filter((j) => j > i)
      .toSorted((x, y) => x - y)
      .flatMap((j) => {
        const other = faces[j];
        return other ? widthsBetween(face, other, limitMm(face, other), room) : [];
      });
  });
}

interface FaceRoom {
  readonly faces: readonly Face[];
  readonly index: { meeting(box: Box): readonly number[] };
}

function widthsBetween(a: Face, b: Face, limitMm: number, room: FaceRoom): FreeWidth[] {
  if (dot(a.inward, b.inward) > 0.5) return [];
  return spans(a, b).flatMap(({ from, to, alongMm }) => {
    const widthMm = distance(from, to);
    if (widthMm <= MEET_MM || widthMm > limitMm) return [];
    const across = unit(minus(to, from));
    const back = times(across, -1);
    if (dot(across, a.inward) < -LEAST_SLOPE || dot(back, b.inward) < -LEAST_SLOPE) return [];
    // Most pairs fail on their own two faces: only the others are worth a look at their neighbours.
    if (steepest(from, across, [a]) > STEEPEST_SLOPE || steepest(to, back, [b]) > STEEPEST_SLOPE) return [];
    const slope = Math.max(steepest(from, across, facesAt(from, room)), steepest(to, back, facesAt(to, room)));
    if (slope > STEEPEST_SLOPE || isBarred(from, to, room)) return [];
    return [{ faces: [a, b], from, to, widthMm, isLeast: slope <= LEAST_SLOPE, alongMm }];
  });
}

/** Where a least width may lie: at the middle of what the faces share, and at each of the four ends. */
function spans(a: Face, b: Face): Pick<FreeWidth, 'from' | 'to' | 'alongMm'>[] {
  const [first, last] = [nearestOnSegment(b.a, a.a, a.b), nearestOnSegment(b.b, a.a, a.b)];
  const middle = between(first.at, last.at, 0.5);
  return [
    { from: middle, to: nearestOnSegment(middle, b.a, b.b).at, alongMm: distance(first.at, last.at) },
    ...[a.a, a.b].map((end) => ({ from: end, to: nearestOnSegment(end, b.a, b.b).at, alongMm: 0 })),
    { from: first.at, to: b.a, alongMm: 0 },
    { from: last.at, to: b.b, alongMm: 0 },
  ];
}

/** How fast the width shrinks when its end at `at` slides along one of the faces there: the cosine of the angle between the two. */
function steepest(at: Point, across: Point, faces: readonly Face[]): number {
  return Math.max(-1, ...faces.flatMap((face) => waysFrom(at, face)).map((way) => dot(way, across)));
}

function facesAt(at: Point, room: FaceRoom): readonly Face[] {
  return room.index.meeting(grownBox(boxOf([at]), MEET_MM)).flatMap((i) => room.faces[i] ?? []);
}

/** The directions in which a point that lies on a face can slide along it. */
function waysFrom(at: Point, face: Face): Point[] {
  if (nearestOnSegment(at, face.a, face.b).distance > MEET_MM) return [];
  const back = times(face.run, -1);
  return [...(distance(at, face.b) > MEET_MM ? [face.run] : []), ...(distance(at, face.a) > MEET_MM ? [back] : [])];
}

/** True when a face stands between the two ends. */
function isBarred(from: Point, to: Point, room: FaceRoom): boolean {
  return room.index.meeting(boxOf([from, to])).some((i) => {
    const face = room.faces[i];
    const meet = face ? crossing(from, to, face.a, face.b) : null;
    return meet !== null && distance(meet.at, from) > MEET_MM && distance(meet.at, to) > MEET_MM;
  });
}
