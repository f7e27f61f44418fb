import type { Point, Region, Ring } from './floorShape.ts';
import { angleOf, sector } from './arc.ts';
import type { WidthByKind } from './bands.ts';
import { boxOf, grownBox } from './box.ts';
import type { Face } from './hardFace.ts';
import { along, between, cross, distance, dot, lengthOf, minus, plus, times, unit } from './point.ts';
import { corner } from './ring.ts';
import { nearestOnSegment } from './segment.ts';
import { type BoxIndex, boxIndex } from './spatial.ts';

/*
 * From where the middle of a machine can stand to what its head covers.
 *
 *     face  ==============      each piece of the outline knows the face or the corner that made it:
 *           moved to c          a straight piece moves towards its face, an arc shrinks towards its
 *     ------------------        corner (so no second polygon error), and a sector fills each convex
 *       outline of P            corner between two of them
 */

/** The thing that made a piece of outline, and where the piece moves to. */
type Maker =
  | { readonly kind: 'face'; readonly face: Face; readonly toMm: number }
  | { readonly kind: 'corner'; readonly at: Point; readonly share: number };

/** How far an outline may lie from where its face puts it: snapping, in mm, and the sagitta of an arc drawn in segments, a share of its radius. */
const SNAP_MM = 0.1;
const SAGITTA = 0.0013;
/** Two moved points this near, in mm, are one smooth piece. */
const JOINED_MM = 0.2;

/**
 * Polygons that overlap and together cover what the head covers: P, a ribbon from each run of its
 * outline towards the faces that made it, and sectors at its convex corners.
 * `standMm` is how far P stays from each kind of face, `clearMm` how far the head does; `biasMm` is
 * added to the corner radius that `standMm` was made too small by.
 */
export function growBack(
  pieces: Region,
  faces: readonly Face[],
  standMm: WidthByKind,
  clearMm: WidthByKind,
  biasMm: number,
): Region {
  const index = boxIndex(faces.map((face) => boxOf([face.a, face.b])));
  const reach = Math.max(...Object.values(standMm)) + 2;
  const makerOf = (a: Point, b: Point): Maker | null =>
    findMaker(between(a, b, 0.5), faces, index, reach, standMm, clearMm);
  return pieces.flatMap((polygon) => {
    const grown: Ring[][] = [[...polygon]];
    for (const ring of polygon) grown.push(...growRing(ring, makerOf, biasMm));
    return grown;
  });
}

function findMaker(
  middle: Point,
  faces: readonly Face[],
  index: BoxIndex,
  reach: number,
  standMm: WidthByKind,
  clearMm: WidthByKind,
): Maker | null {
  let best: Maker | null = null;
  let least = 1;
  for (const i of index.meeting(grownBox(boxOf([middle]), reach))) {
    const face = faces[i] as Face;
    const { at, share, distance: off } = nearestOnSegment(middle, face.a, face.b);
    const stand = standMm[face.kind];
    // Straight in front of an end, where two faces meet on one line, is still in front of the face.
    const isEnd = (share === 0 || share === 1) && Math.abs(dot(minus(middle, at), face.run)) > SNAP_MM;
    const miss = Math.abs(off - stand) / (isEnd ? SNAP_MM + SAGITTA * stand : SNAP_MM);
    if (stand <= 0 || miss >= 1 || !(miss < least || isTie(best, at, clearMm[face.kind] / stand))) continue;
    if (!isEnd && dot(minus(middle, face.a), face.inward) < 0) continue;
    least = miss;
    best = isEnd
      ? { kind: 'corner', at, share: clearMm[face.kind] / stand }
      : { kind: 'face', face, toMm: clearMm[face.kind] };
  }
  return best;
}

/** Two faces end in one corner: the one to keep further from decides. */
function isTie(best: Maker | null, at: Point, share: number): boolean {
  return best?.kind === 'corner' && distance(best.at, at) < SNAP_MM && share > best.share;
}

function moved(p: Point, maker: Maker): Point {
  if (maker.kind === 'corner') return plus(maker.at, times(minus(p, maker.at), maker.share));
  const { face, toMm } = maker;
  return along(along(face.a, face.run, dot(minus(p, face.a), face.run)), face.inward, toMm);
}

/** Ribbons and sectors of one ring, floor on its left. */
function growRing(ring: Ring, makerOf: (a: Point, b: Point) => Maker | null, biasMm: number): Ring[][] {
  const makers = ring.map((a, i) => makerOf(a, corner(ring, i + 1)));
  const isBreak = ring.map((_, i) => breaksAt(ring, makers, i));
  const start = isBreak.indexOf(true);
  if (start < 0) return closedRibbon(ring, makers);

  const out: Ring[][] = [];
  let near: Point[] = [];
  let far: Point[] = [];
  const finish = (): void => {
    if (near.length > 1) out.push([[...near, ...far.toReversed()]]);
    near = [];
    far = [];
  };
  for (let k = 0; k < ring.length; k += 1) {
    const i = (start + k) % ring.length;
    if (isBreak[i]) {
      finish();
      out.push(...cornerSector(ring, makers, i, biasMm));
    }
    const maker = makers[i];
    if (!maker) continue;
    const [a, b] = [corner(ring, i), corner(ring, i + 1)];
    if (near.length === 0) {
      near.push(a);
      far.push(moved(a, maker));
    }
    near.push(b);
    far.push(moved(b, maker));
  }
  finish();
  return out;
}

function breaksAt(ring: Ring, makers: readonly (Maker | null)[], i: number): boolean {
  const before = makers.at(i - 1);
  const after = makers[i];
  if (!before || !after) return before !== after;
  return distance(moved(corner(ring, i), before), moved(corner(ring, i), after)) > JOINED_MM;
}

function closedRibbon(ring: Ring, makers: readonly (Maker | null)[]): Ring[][] {
  const far: Point[] = [];
  for (const [i, at] of ring.entries()) {
    const maker = makers[i];
    if (!maker) return [];
    far.push(moved(at, maker));
  }
  // Moved towards a column the ring gets smaller, towards walls around it larger: the larger one is the outline.
  return [boxIsWider(far, ring) ? [far, ring] : [ring, far]];
}

function boxIsWider(a: Ring, b: Ring): boolean {
  const [outer, inner] = [boxOf(a), boxOf(b)];
  return outer.maxX - outer.minX > inner.maxX - inner.minX;
}

/** The head turned into a corner: a sector between the two directions in which the pieces beside it moved. */
function cornerSector(ring: Ring, makers: readonly (Maker | null)[], i: number, biasMm: number): Ring[][] {
  const before = makers.at(i - 1);
  const after = makers[i];
  if (!before || !after) return [];
  const at = corner(ring, i);
  // Convex or not is asked of the two directions, not of the edges: beside a crossing an edge may be a snap of the grid long.
  const [from, to] = [minus(moved(at, before), at), minus(moved(at, after), at)];
  const radius = Math.min(lengthOf(from), lengthOf(to));
  const [u, v] = [unit(from), unit(to)];
  const sweep = Math.atan2(cross(u, v), dot(u, v));
  if (radius <= 0 || sweep <= 0) return [];
  // P was made too large by the bias: the true corner lies that much further in, and its radius is that much larger.
  const opening = 1 + dot(u, v);
  const shift = opening > 0.1 ? biasMm / opening : 0;
  const center = minus(at, times(plus(u, v), shift));
  return [[sector(center, radius + (shift > 0 ? biasMm : 0), angleOf(u), sweep, 'area')]];
}
