import type { Chain, Face, HardKind } from '../hardFace.ts';
import { turnBetween } from '../hardFace.ts';
import { along, plus, unit } from '../point.ts';
import { type Outline, type PathStep, pathOutline } from './outline.ts';

/*
 * The floor nearer than w to a chain of faces, as outlines that may overlap.
 *
 *         ____________
 *        (  |      |  )     one ribbon along faces that turn away from the floor, round at their outer corners;
 *        |  +------+  |     a new ribbon at each inner corner; half a disc where a chain ends (a jamb)
 *   -----+--|      |--+
 */
export interface Stretch extends Chain {
  /** Nothing but solid lies inside a closed chain: its band may cover all of it. */
  readonly isFilled?: boolean;
  /** Round the end with half a disc: true at the end of a wall, false where a face is merely cut. */
  readonly roundStart: boolean;
  readonly roundEnd: boolean;
}

export type WidthByKind = Readonly<Record<HardKind, number>>;

export function byKind(width: (kind: HardKind) => number): WidthByKind {
  return { wall: width('wall'), obstruction: width('obstruction'), drop: width('drop'), stop: width('stop') };
}

/** Smallest turn, in radians, that makes a corner. */
const STRAIGHT = 1e-6;

export function wholeStretch(chain: Chain): Stretch {
  return { ...chain, roundStart: !chain.closed, roundEnd: !chain.closed };
}

/**
 * How far a band that keeps machines off goes behind its faces, in mm. Nothing is there to stand on, but for the billionth
 * of a millimetre that rounding leaves between a face and what it was traced from: a head that stood on that would reach
 * as far as from any other floor. No further than in front: behind a wall of no thickness, as where two slabs overlap, is
 * floor again.
 */
export const BEHIND_MM = 0.1;

/** Bands of a stretch, each face with the width of its kind in mm (0 or less: none), as outlines of a layer. */
export function bandOutlines(stretch: Stretch, widthMm: WidthByKind, layer: number, behindMm = 0): Outline[] {
  const { faces, closed } = stretch;
  const [first, last] = [faces[0], faces.at(-1)];
  if (!first || !last) return [];
  if (closed && isRoundedAllAround(faces, widthMm)) {
    const outer = pathOutline(aroundPath(faces, widthMm), layer, 0);
    return [stretch.isFilled === true ? outer : withHole(outer, faces, behindMm)];
  }
  const paths = ribbonsOf(faces, closed, widthMm).map((ribbon) => ribbonPath(ribbon, widthMm, behindMm));
  for (let i = 0; i < (closed ? faces.length : faces.length - 1); i += 1) {
    const before = faces[i] as Face;
    const after = faces[(i + 1) % faces.length] as Face;
    if (widthMm[before.kind] !== widthMm[after.kind])
      paths.push(...endCap(before, widthMm), ...startCap(after, widthMm));
  }
  if (!closed && stretch.roundStart) paths.push(...startCap(first, widthMm));
  if (!closed && stretch.roundEnd) paths.push(...endCap(last, widthMm));
  return paths.map((path) => pathOutline(path, layer, 0));
}

/** A column: one width all round and no inner corner. */
function isRoundedAllAround(faces: readonly Face[], widthMm: WidthByKind): boolean {
  const width = widthMm[(faces[0] as Face).kind];
  return (
    width > 0 &&
    faces.every((face, i) => {
      const after = faces[(i + 1) % faces.length] as Face;
      return widthMm[after.kind] === width && turnBetween(face, after) <= STRAIGHT;
    })
  );
}

/** What lies inside the faces is left out: a room may be built there. */
function withHole(outer: Outline, faces: readonly Face[], behindMm: number): Outline {
  const hole = pathOutline(nearSteps(faces, behindMm), outer.layer, 0);
  return { ...outer, edges: [...outer.edges, ...hole.edges], levels: [...outer.levels, ...hole.levels] };
}

/** All of a column and the band around it. */
function aroundPath(faces: readonly Face[], widthMm: WidthByKind): PathStep[] {
  return faces.flatMap((face, i) => farSteps(face, faces.at(i - 1), faces[(i + 1) % faces.length], widthMm));
}

/** Faces in runs without a break: one width and no inner corner. */
function ribbonsOf(faces: readonly Face[], closed: boolean, widthMm: WidthByKind): Face[][] {
  const ribbons: Face[][] = [];
  let before: Face | null = null;
  for (const face of closed ? startAtBreak(faces, widthMm) : faces) {
    if (widthMm[face.kind] <= 0) {
      before = null;
      continue;
    }
    if (before && joins(before, face, widthMm)) (ribbons.at(-1) as Face[]).push(face);
    else ribbons.push([face]);
    before = face;
  }
  return ribbons;
}

function startAtBreak(faces: readonly Face[], widthMm: WidthByKind): readonly Face[] {
  const start = faces.findIndex((face, i) => !joins(faces.at(i - 1) as Face, face, widthMm));
  return start > 0 ? [...faces.slice(start), ...faces.slice(0, start)] : faces;
}

function joins(before: Face, after: Face, widthMm: WidthByKind): boolean {
  return widthMm[before.kind] === widthMm[after.kind] && turnBetween(before, after) <= STRAIGHT;
}

/** Along the faces backwards, and along what lies the width away from them forwards. */
function ribbonPath(ribbon: readonly Face[], widthMm: WidthByKind, behindMm: number): PathStep[] {
  const first = ribbon[0] as Face;
  const [startX, startY] = first.a;
  return [
    ...nearSteps(ribbon, Math.min(behindMm, widthMm[first.kind])),
    { x: startX, y: startY },
    ...ribbon.flatMap((face, i) => farSteps(face, ribbon[i - 1], ribbon[i + 1], widthMm)),
  ];
}

/** Along the faces backwards, or a little behind them and by each corner back to them: so each face has its own strip behind. */
function nearSteps(faces: readonly Face[], behindMm: number): PathStep[] {
  return faces.toReversed().flatMap(({ a, b, inward }) => {
    const steps = behindMm === 0 ? [b] : [b, along(b, inward, -behindMm), along(a, inward, -behindMm)];
    return steps.map(([x, y]) => ({ x, y }));
  });
}

/**
 * The line one width off a face, with the arc that leads to it from the face before. Faces that all but go straight on
 * share one corner: two of them, a hair apart, would make a spike that runs backwards.
 */
function farSteps(face: Face, before: Face | undefined, after: Face | undefined, widthMm: WidthByKind): PathStep[] {
  const width = widthMm[face.kind];
  const turn = before ? turnBetween(before, face) : 0;
  const goesOn = after !== undefined && Math.abs(turnBetween(face, after)) <= STRAIGHT;
  const [endX, endY] = along(face.b, goesOn ? unit(plus(face.inward, after.inward)) : face.inward, width);
  const end = { x: endX, y: endY };
  if (before && Math.abs(turn) <= STRAIGHT) return [end];
  const [x, y] = along(face.a, face.inward, width);
  return turn < -STRAIGHT
    ? [{ x, y, arc: { cx: face.a[0], cy: face.a[1], radius: width, turn } }, end]
    : [{ x, y }, end];
}

function startCap(face: Face, widthMm: WidthByKind): PathStep[][] {
  return cap(face.a, face, widthMm[face.kind], 1);
}

function endCap(face: Face, widthMm: WidthByKind): PathStep[][] {
  return cap(face.b, face, widthMm[face.kind], -1);
}

/** Half a disc about the end of a face, away from the face. */
function cap([cx, cy]: Face['a'], { inward }: Face, width: number, sense: 1 | -1): PathStep[][] {
  if (width <= 0) return [];
  const [x, y] = along([cx, cy], inward, width);
  const [farX, farY] = along([cx, cy], inward, -width);
  return [
    [
      { x, y },
      { x: farX, y: farY, arc: { cx, cy, radius: width, turn: sense * Math.PI } },
    ],
  ];
}
