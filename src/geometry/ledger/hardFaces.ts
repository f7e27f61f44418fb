import { type Box, boxOf, grownBox } from '../box.ts';
import type { Point } from '../floorShape.ts';
import { type Chain, type Face, faceBetween } from '../hardFace.ts';
import { along, between, cross, distance, dot, minus } from '../point.ts';
import { boxIndex } from '../spatial.ts';
import { facesBetweenSlabs } from './betweenSlabs.ts';
import { type BoundaryFace, type ClusterTrace, type DrawnEdge, type HardItem, isSlab, rankOf } from './cluster.ts';
import { HARD_LAYERS } from './layers.ts';
import { JOINED_MM, linkedFaces } from './linkedFaces.ts';
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
/** Shorter pieces, and edges nearer to each other than this, in mm, are rounding. */
const NOTHING_MM = 1e-6;

export function clusterFaces(trace: ClusterTrace, items: readonly HardItem[]): ClusterFaces {
  const drawn = drawnEdges(items, trace.tile);
  const loops = trace.net.map((loop) => loop.flatMap((piece) => facesOf(piece, drawn)));
  const inner = facesBetweenSlabs(trace, items);
  const { real, skins } = sortedFaces(loops, inner, askedIn(trace.tile, isNetFloor));
  const chains = linkedFaces([...real, ...inner].filter(isHard))
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
