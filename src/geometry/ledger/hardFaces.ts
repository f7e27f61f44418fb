import { type Box, boxOf, grownBox } from '../box.ts';
import type { Point } from '../floorShape.ts';
import { type Chain, type Face, faceBetween } from '../hardFace.ts';
import { along, between, cross, distance, dot, isSame, minus } from '../point.ts';
import { boxIndex } from '../spatial.ts';
import { facesBetweenSlabs } from './betweenSlabs.ts';
import { type BoundaryFace, type ClusterTrace, type DrawnEdge, type HardItem, isSlab, rankOf } from './cluster.ts';
import { HARD_LAYERS } from './layers.ts';
import { isNet as isNetFloor } from './cells.ts';
import { type Place, placeIn } from './place.ts';
import type { TileEdges } from './tileEdges.ts';
import type { TracedPiece } from './trace.ts';
import { askAt } from './walks.ts';

/*
 * From the traced boundary of a cluster to its chains of hard faces.
 *
 *    --wall--+--doorway--+--wall--      each piece takes the kind of what it was drawn as; pieces drawn as one edge
 *            |           |              become one face again; `run` and soft edges break a chain
 */
export interface ClusterFaces {
  readonly chains: readonly Chain[];
  /** Edges beyond which the same floor runs on. */
  readonly runEdges: readonly BoundaryFace[];
  /** Sides of floor so thin that it is none; no machine stands on it. */
  readonly skins: readonly BoundaryFace[];
}

/** Two things drawn within this of each other, in mm, were meant to touch: between them is neither slit nor skin. */
const TOUCHING_MM = 0.05;
/** Ends of faces within this of each other, in mm, are one corner. */
const JOINED_MM = 0.15;
/** Shorter pieces, and edges nearer to each other than this, in mm, are rounding. */
const NOTHING_MM = 1e-6;
/** Of ends of faces that are as near to each other but for this, in mm, none is the nearest. */
const SAME_GAP_MM = 1e-3;
/** Faces that turn less than this, in radians, are one. */
const STRAIGHT = 1e-9;
/** Faces that turn back on each other within this, in radians, are the two sides of one edge. */
const FOLD = 1e-6;

export function clusterFaces(trace: ClusterTrace, items: readonly HardItem[]): ClusterFaces {
  const drawn = drawnEdges(items, trace.tile);
  const loops = trace.net.map((loop) => loop.flatMap((piece) => facesOf(piece, drawn)));
  const inner = facesBetweenSlabs(trace, items);
  const { real, skins } = sortedFaces(loops, inner, askedIn(trace.tile, isNetFloor));
  const chains = linked([...real, ...inner].filter(isHard))
    .filter(({ faces }) => lengthOf(faces) > JOINED_MM)
    .map(({ faces, closed }) => ({
      faces: faces.map(({ a, b, kind, of }) => faceBetween(a, b, kind as Face['kind'], of)),
      closed,
    }));
  return { chains, runEdges: real.filter((face) => face.kind === 'run'), skins };
}

/** Faces shorter than a joint, all together, are the end of a sheet too thin to have sides: it has no end either. */
function lengthOf(faces: readonly BoundaryFace[]): number {
  return faces.reduce((sum, { a, b }) => sum + distance(a, b), 0);
}

function isHard(face: BoundaryFace): boolean {
  return face.kind !== 'run' && face.kind !== 'soft';
}

type AskAt = (p: Point) => boolean;

/** What was drawn of a cluster, to be asked along its traced boundary. */
interface DrawnEdges {
  readonly near: (box: Box) => readonly DrawnEdge[];
  readonly ofSlabs: ReadonlySet<DrawnEdge>;
  /** Whether something stands at a point. */
  readonly isBodyAt: AskAt;
}

function drawnEdges(items: readonly HardItem[], tile: TileEdges): DrawnEdges {
  const drawn = items.flatMap((item) => item.drawn);
  const index = boxIndex(
    drawn.map(({ ax, ay, bx, by }) =>
      boxOf([
        [ax, ay],
        [bx, by],
      ]),
    ),
  );
  return {
    near: (box) => index.meeting(box).map((i) => drawn[i] as DrawnEdge),
    ofSlabs: new Set(items.filter(isSlab).flatMap((item) => item.drawn)),
    isBodyAt: askedIn(tile, ({ bodies }) => bodies.length > 0),
  };
}

/**
 * A traced piece cut where what was drawn along it ends, each part of the kind that says most about the floor beside it.
 * Which of two edges on each other the sweep came along is rounding. Where nothing stands beyond them only the slab's
 * own say anything, as in a trace.
 */
function facesOf(piece: TracedPiece, { near, ofSlabs, isBodyAt }: DrawnEdges): BoundaryFace[] {
  const a: Point = [piece.fromX, piece.fromY];
  const b: Point = [piece.toX, piece.toY];
  const size = distance(a, b);
  if (size <= NOTHING_MM) return [];
  const own = piece.part?.edge.source as DrawnEdge | null | undefined;
  const others = near(grownBox(boxOf([a, b]), NOTHING_MM)).flatMap((edge) => stretchAlong(a, b, size, edge) ?? []);
  const here = own ? [...others, { edge: own, from: 0, to: 1, isOwnSide: isAlong(a, b, own) }] : others;
  const shares = [0, 1, ...here.flatMap(({ from, to }) => [from, to])].toSorted((x, y) => x - y);
  return shares.slice(1).flatMap((to, i): BoundaryFace[] => {
    const from = shares[i] as number;
    if ((to - from) * size <= NOTHING_MM) return [];
    const around = here.filter((one) => one.from <= from && one.to >= to);
    const slabs = around.filter(({ edge }) => ofSlabs.has(edge));
    const isMixed = slabs.length > 0 && slabs.length < around.length;
    const meant = isMixed && !isBodyAt(rightOf(a, b, (from + to) / 2)) ? slabs : around;
    const best = meant.toSorted((x, y) => rankOf(y.edge, y.isOwnSide) - rankOf(x.edge, x.isOwnSide))[0];
    return best ? [{ a: at({ a, b }, from), b: at({ a, b }, to), kind: best.edge.kind, of: best.edge.of }] : [];
  });
}

/** Right beside a piece at a share of it, where its floor is not. */
function rightOf(a: Point, b: Point, share: number): Point {
  const size = distance(a, b);
  const outward: Point = [(b[1] - a[1]) / size, -(b[0] - a[0]) / size];
  return along(between(a, b, share), outward, TOUCHING_MM);
}

/** A drawn edge that lies on a piece of boundary, from share to share of it. */
interface Stretch {
  readonly edge: DrawnEdge;
  readonly from: number;
  readonly to: number;
  readonly isOwnSide: boolean;
}

function stretchAlong(a: Point, b: Point, size: number, edge: DrawnEdge): Stretch | null {
  const run = minus(b, a);
  const [start, end]: [Point, Point] = [
    [edge.ax, edge.ay],
    [edge.bx, edge.by],
  ];
  const [s, t] = [dot(minus(start, a), run) / (size * size), dot(minus(end, a), run) / (size * size)];
  const [from, to] = [Math.max(0, Math.min(s, t)), Math.min(1, Math.max(s, t))];
  if ((to - from) * size <= NOTHING_MM) return null;
  const offAt = (share: number): number =>
    Math.abs(cross(run, minus(between(start, end, (share - s) / (t - s)), a))) / size;
  return offAt(from) <= NOTHING_MM && offAt(to) <= NOTHING_MM ? { edge, from, to, isOwnSide: t > s } : null;
}

function isAlong(a: Point, b: Point, { ax, ay, bx, by }: DrawnEdge): boolean {
  return (b[0] - a[0]) * (bx - ax) + (b[1] - a[1]) * (by - ay) > 0;
}

/** Faces with floor on one side only, apart from the sides of slits and skins; cut where a slit or skin ends. */
function sortedFaces(
  loops: readonly (readonly BoundaryFace[])[],
  inner: readonly BoundaryFace[],
  isNet: AskAt,
): { real: BoundaryFace[]; skins: BoundaryFace[] } {
  const faces = loops.flat();
  const ends = [...faces.map((face) => face.a), ...inner.flatMap((face) => [face.a, face.b])];
  const index = boxIndex(ends.map((end) => boxOf([end])));
  const real: BoundaryFace[] = [];
  const skins: BoundaryFace[] = [];
  for (const face of faces) {
    const size = distance(face.a, face.b);
    if (size === 0) continue;
    const near = index.meeting(grownBox(boxOf([face.a, face.b]), TOUCHING_MM)).map((i) => ends[i] as Point);
    const shares = [0, ...near.flatMap((end) => shareBeside(face, end, size) ?? []).toSorted((x, y) => x - y), 1];
    for (let i = 0; i + 1 < shares.length; i += 1) {
      const [from, to] = [shares[i] as number, shares[i + 1] as number];
      if ((to - from) * size <= NOTHING_MM) continue;
      const part = { ...face, a: at(face, from), b: at(face, to) };
      const [inside, outside] = sidesOf(part, isNet);
      if (!inside) skins.push(part);
      else if (!outside) real.push(part);
    }
  }
  return { real, skins };
}

/** Whether net floor lies right beside the middle of a face, inside and outside. */
function sidesOf({ a, b }: BoundaryFace, isNet: AskAt): readonly [boolean, boolean] {
  const size = distance(a, b);
  const inward: Point = [-(b[1] - a[1]) / size, (b[0] - a[0]) / size];
  const middle = between(a, b, 0.5);
  return [isNet(along(middle, inward, TOUCHING_MM)), isNet(along(middle, inward, -TOUCHING_MM))];
}

function at(face: Pick<BoundaryFace, 'a' | 'b'>, share: number): Point {
  return share === 0 ? face.a : share === 1 ? face.b : between(face.a, face.b, share);
}

/** Where another corner lies beside a face, nearer than touching, as a share of the face. */
function shareBeside(face: BoundaryFace, other: Point, size: number): number | null {
  const run = minus(face.b, face.a);
  const off = minus(other, face.a);
  const share = dot(off, run) / (size * size);
  const isInner = share * size > TOUCHING_MM && (1 - share) * size > TOUCHING_MM;
  return isInner && Math.abs(cross(run, off)) / size <= TOUCHING_MM ? share : null;
}

/** Whether something holds at a point of a cluster. */
function askedIn(tile: TileEdges, ask: (place: Place) => boolean): AskAt {
  const place = placeIn(tile, HARD_LAYERS);
  return ([x, y]) => askAt(tile, place, x, y, ask);
}

interface LinkedFaces {
  readonly faces: readonly BoundaryFace[];
  readonly closed: boolean;
}

/** Faces whose ends meet, one after the other. */
function linked(faces: readonly BoundaryFace[]): LinkedFaces[] {
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
