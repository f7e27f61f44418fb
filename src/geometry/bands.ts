import type { Point, Region, Ring } from './floorShape.ts';
import { type ArcFit, angleOf, arcPoints, sector } from './arc.ts';
import { type Chain, type Face, type HardKind, turnBetween } from './hardFace.ts';
import { along } from './point.ts';

/*
 * The band of a chain of faces: all floor nearer than w to it, as polygons that may overlap.
 *
 *         ____________
 *        (  |      |  )     one ribbon along faces that turn away from the floor, with sectors of
 *        |  +------+  |     exact area at outer corners; a new ribbon at each inner corner;
 *   -----+--|      |--+     half a disc where a chain ends (a jamb)
 */
export interface Stretch extends Chain {
  /** Round the end with half a disc: true at the end of a wall, false where a face is merely cut. */
  readonly roundStart: boolean;
  readonly roundEnd: boolean;
}

export type WidthByKind = Readonly<Record<HardKind, number>>;

/** Smallest turn, in radians, that makes a corner. */
const STRAIGHT = 1e-6;

export function wholeStretch(chain: Chain): Stretch {
  return { ...chain, roundStart: !chain.closed, roundEnd: !chain.closed };
}

/**
 * Bands of all stretches, each face with the width of its kind in mm (0 or less: none). Polygons may
 * overlap and reach outside the floor. Fit 'area' for bands that are measured, 'inside' for those that
 * say where a machine cannot stand: a gap of just the width it needs must not close by a rounding.
 */
export function bandsOf(stretches: readonly Stretch[], widthMm: WidthByKind, fit: ArcFit): Region {
  return stretches.flatMap((stretch) => bandOf(stretch, widthMm, fit));
}

function bandOf(stretch: Stretch, widthMm: WidthByKind, fit: ArcFit): Ring[][] {
  const { faces, closed } = stretch;
  const first = faces[0];
  const last = faces.at(-1);
  if (!first || !last) return [];
  const around = closed ? outlineAround(faces, widthMm, fit) : null;
  if (around) return [around];

  const items: Ring[][] = [];
  for (const ribbon of ribbonsOf(faces, closed, widthMm)) items.push([ribbonRing(ribbon, widthMm, fit)]);
  for (let i = 0; i < (closed ? faces.length : faces.length - 1); i += 1) {
    const before = faces[i] as Face;
    const after = faces[(i + 1) % faces.length] as Face;
    if (widthMm[before.kind] === widthMm[after.kind]) continue;
    items.push(...endCap(before, widthMm, fit), ...startCap(after, widthMm, fit));
  }
  if (!closed && stretch.roundStart) items.push(...startCap(first, widthMm, fit));
  if (!closed && stretch.roundEnd) items.push(...endCap(last, widthMm, fit));
  return items;
}

/** A column as one polygon: its outline grown by one width, itself as the hole. Null when a corner is an inner one or widths differ. */
function outlineAround(faces: readonly Face[], widthMm: WidthByKind, fit: ArcFit): Ring[] | null {
  const width = widthMm[(faces[0] as Face).kind];
  if (width <= 0) return null;
  const grown: Point[] = [];
  for (const [i, face] of faces.entries()) {
    const after = faces[(i + 1) % faces.length] as Face;
    if (widthMm[after.kind] !== width || turnBetween(face, after) > STRAIGHT) return null;
    grown.push(
      along(face.a, face.inward, width),
      along(face.b, face.inward, width),
      ...roundTurn(face, after, width, fit),
    );
  }
  return [grown, faces.map((face) => face.a)];
}

/** Faces in runs that can be one polygon: same width, no inner corner, half a turn at most. */
function ribbonsOf(faces: readonly Face[], closed: boolean, widthMm: WidthByKind): Face[][] {
  const ribbons: Face[][] = [];
  let turned = 0;
  let before: Face | null = null;
  for (const face of startAtBreak(faces, closed, widthMm)) {
    if (widthMm[face.kind] <= 0) {
      before = null;
      continue;
    }
    const ribbon = ribbons.at(-1);
    if (before && ribbon && joins(before, face, widthMm) && turned + Math.abs(turnBetween(before, face)) <= Math.PI) {
      turned += Math.abs(turnBetween(before, face));
      ribbon.push(face);
    } else {
      // The sector of a turn that begins a new ribbon belongs to it: repeat the face before it.
      ribbons.push(before && joins(before, face, widthMm) ? [before, face] : [face]);
      turned = before && joins(before, face, widthMm) ? Math.abs(turnBetween(before, face)) : 0;
    }
    before = face;
  }
  return ribbons;
}

/** A closed chain begins behind an inner corner, so that no ribbon is cut at an arbitrary place; without one, its first face is repeated. */
function startAtBreak(faces: readonly Face[], closed: boolean, widthMm: WidthByKind): readonly Face[] {
  if (!closed) return faces;
  const start = faces.findIndex((face, i) => !joins(faces.at(i - 1) as Face, face, widthMm));
  return start >= 0 ? [...faces.slice(start), ...faces.slice(0, start)] : [...faces, faces[0] as Face];
}

function joins(before: Face, after: Face, widthMm: WidthByKind): boolean {
  return widthMm[before.kind] === widthMm[after.kind] && turnBetween(before, after) <= STRAIGHT;
}

function ribbonRing(ribbon: readonly Face[], widthMm: WidthByKind, fit: ArcFit): Ring {
  const width = widthMm[(ribbon[0] as Face).kind];
  const near: Point[] = [];
  const far: Point[] = [];
  for (const [i, face] of ribbon.entries()) {
    near.push(face.a);
    far.push(along(face.a, face.inward, width), along(face.b, face.inward, width));
    const after = ribbon[i + 1];
    if (after) far.push(...roundTurn(face, after, width, fit));
  }
  near.push((ribbon.at(-1) as Face).b);
  return [...near, ...far.toReversed()];
}

/** Inner points of the arc around the corner between two faces; its ends are the ends of their offset lines. */
function roundTurn(before: Face, after: Face, width: number, fit: ArcFit): readonly Point[] {
  const sweep = turnBetween(before, after);
  return sweep < -STRAIGHT ? arcPoints(before.b, width, angleOf(before.inward), sweep, fit).slice(1, -1) : [];
}

function startCap(face: Face, widthMm: WidthByKind, fit: ArcFit): Ring[][] {
  const width = widthMm[face.kind];
  return width > 0 ? [[sector(face.a, width, angleOf(face.inward), Math.PI, fit)]] : [];
}

function endCap(face: Face, widthMm: WidthByKind, fit: ArcFit): Ring[][] {
  const width = widthMm[face.kind];
  return width > 0 ? [[sector(face.b, width, angleOf(face.inward), -Math.PI, fit)]] : [];
}
