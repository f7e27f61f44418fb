import type { Point } from '../floorShape.ts';
import { boxOf, grownBox } from '../box.ts';
import { along, between, cross, distance, dot, isSame, minus } from '../point.ts';
import { boxIndex } from '../spatial.ts';
import type { BoundaryFace } from './cluster.ts';

/*
 * Faces whose ends meet, one after the other:
 *
 *    a -----> b  a -----> b           ends within a joint of each other are one corner: where the two lines cross, or
 *                        |            halfway; what goes straight on is one face
 *                        v
 */

/** Ends of faces within this of each other, in mm, are one corner. */
export const JOINED_MM = 0.15;
/** Of ends of faces that are as near to each other but for this, in mm, none is the nearest. */
const SAME_GAP_MM = 1e-3;
/** Faces that turn less than this, in radians, are one. */
const STRAIGHT = 1e-9;
/** Faces that turn back on each other within this, in radians, are the two sides of one edge. */
const FOLD = 1e-6;

interface LinkedFaces {
  readonly faces: readonly BoundaryFace[];
  readonly closed: boolean;
}

/** Faces whose ends meet, one after the other. */
export function linkedFaces(faces: readonly BoundaryFace[]): LinkedFaces[] {
  const { next, hasBefore } = pairedEnds(faces);
  const done = faces.map(() => false);
  const chains: LinkedFaces[] = [];
  const follow = (start: number): void => {
    const out: BoundaryFace[] = [];
    let i = start;
    for (; i >= 0 && !done[i]; i = next[i] as number) {
      done[i] = true;
      addFace(out, faces[i] as BoundaryFace);
    }
    const closed = i === start && out.length > 1;
    chains.push({ faces: withCorners(closed ? joinedAround(out) : out, closed), closed });
  };
  for (const i of faces.keys()) if (!hasBefore[i] && !done[i]) follow(i);
  for (const i of faces.keys()) if (!done[i]) follow(i);
  return chains;
}

/** The end of one face and the start of another, within reach of each other. */
interface Meeting {
  readonly before: number;
  readonly after: number;
  readonly gapMm: number;
  readonly turn: number;
}

/**
 * Which face goes on into which. The best pair of all comes first, and not the best for whichever face was drawn first:
 * that would be another one when the floor is drawn the other way round.
 */
function pairedEnds(faces: readonly BoundaryFace[]): { next: number[]; hasBefore: boolean[] } {
  const next = faces.map(() => -1);
  const hasBefore = faces.map(() => false);
  for (const { before, after } of meetingsOf(faces).toSorted(worseLast)) {
    if (next[before] !== -1 || hasBefore[after]) continue;
    next[before] = after;
    hasBefore[after] = true;
  }
  return { next, hasBefore };
}

function meetingsOf(faces: readonly BoundaryFace[]): Meeting[] {
  const index = boxIndex(faces.map((face) => boxOf([face.a])));
  return faces.flatMap((face, before) =>
    index.meeting(grownBox(boxOf([face.b]), JOINED_MM)).flatMap((after): Meeting[] => {
      const other = faces[after] as BoundaryFace;
      const gapMm = distance(face.b, other.a);
      return after === before || gapMm > JOINED_MM ? [] : [{ before, after, gapMm, turn: turnInto(face, other) }];
    }),
  );
}

/**
 * The nearest first; and where chains touch in one corner, those that keep most to their left, so that none crosses
 * another. Round the end of an edge with floor on both sides is the last thing.
 */
function worseLast(p: Meeting, q: Meeting): number {
  const fold = Number(isFold(p)) - Number(isFold(q));
  const gap = Math.round(p.gapMm / SAME_GAP_MM) - Math.round(q.gapMm / SAME_GAP_MM);
  return fold || gap || q.turn - p.turn || p.before - q.before || p.after - q.after;
}

function isFold({ turn }: Meeting): boolean {
  return Math.abs(turn) > Math.PI - FOLD;
}

function turnInto(before: BoundaryFace, after: BoundaryFace): number {
  const [u, v] = [minus(before.b, before.a), minus(after.b, after.a)];
  return Math.atan2(cross(u, v), dot(u, v));
}

/** Adds a face to its chain: made one with the last when it goes straight on. */
function addFace(chain: BoundaryFace[], face: BoundaryFace): void {
  const last = chain.at(-1);
  if (last && isOneFace(last, face)) chain[chain.length - 1] = { ...last, b: face.b };
  else chain.push(face);
}

/** Faces that meet exactly, each in one corner with the next. */
function withCorners(chain: readonly BoundaryFace[], closed: boolean): BoundaryFace[] {
  return chain.map((face, i) => {
    const before = i > 0 || closed ? chain.at(i - 1) : undefined;
    const after = chain[i + 1] ?? (closed ? chain[0] : undefined);
    return { ...face, a: before ? cornerOf(before, face) : face.a, b: after ? cornerOf(face, after) : face.b };
  });
}

/** The corner of two faces that were drawn a little off each other: where their lines cross, or halfway from one to the other. */
function cornerOf(before: BoundaryFace, after: BoundaryFace): Point {
  if (isSame(before.b, after.a)) return before.b;
  const [u, v] = [minus(before.b, before.a), minus(after.b, after.a)];
  const across = cross(u, v);
  const middle = between(before.b, after.a, 0.5);
  if (across === 0) return middle;
  const met = along(before.a, u, cross(minus(after.a, before.a), v) / across);
  return distance(met, middle) <= JOINED_MM ? met : middle;
}

function isOneFace(before: BoundaryFace, after: BoundaryFace): boolean {
  return before.kind === after.kind && before.of === after.of && Math.abs(turnInto(before, after)) <= STRAIGHT;
}

/** A closed chain does not start in the middle of a face. */
function joinedAround(chain: BoundaryFace[]): BoundaryFace[] {
  const [first, last] = [chain[0] as BoundaryFace, chain.at(-1) as BoundaryFace];
  return chain.length > 3 && isOneFace(last, first) ? [{ ...first, a: last.a }, ...chain.slice(1, -1)] : chain;
}
