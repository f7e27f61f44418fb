import type { FaceKind, Point, Region, Ring } from './floorShape.ts';
import { boxOf, grownBox } from './box.ts';
import { type Chain, type Face, faceBetween } from './hardFace.ts';
import { along, between, distance, dot, minus, quarterTurn, unit } from './point.ts';
import { corner } from './ring.ts';
import { boxIndex } from './spatial.ts';

/*
 * A boolean forgets which wall an edge came from, and joins a wall and a doorway on one line.
 * This puts the memory back: every edge of the net floor is cut where its sources end,
 * and each piece takes the hardest source that lies along it.
 *
 *   net floor   +-----------------------------+
 *   sources     |--wall--|--doorway--|--wall--|
 */
/** An edge as drawn, floor on its left. */
export interface SourceEdge {
  readonly a: Point;
  readonly b: Point;
  /** 'soft': floor goes on but is not ours to measure (out of scope). */
  readonly kind: FaceKind | 'soft';
  readonly of: string;
}

export interface BoundaryEdge {
  readonly a: Point;
  readonly b: Point;
  readonly kind: FaceKind | 'soft';
  readonly of: string;
}

/** How far, in mm, welding and the snapped corners of a boolean may leave the edge they came from. */
const NEAR_MM = 0.05;

/** What the slab says of its own edge stands, but for `run`: a column drawn against the outside of that is a face. */
const HARDNESS: Readonly<Record<FaceKind | 'soft', number>> = {
  wall: 5,
  drop: 4,
  stop: 4,
  obstruction: 3,
  run: 2,
  soft: 1,
};

/** The rings of a region as edges with their sources; an edge without any counts as wall. */
export function tagBoundary(region: Region, sources: readonly SourceEdge[]): readonly (readonly BoundaryEdge[])[] {
  const index = boxIndex(sources.map((edge) => boxOf([edge.a, edge.b])));
  return region.flat().map((ring) =>
    ringEdges(ring).flatMap(([a, b]) => {
      const near = index.meeting(grownBox(boxOf([a, b]), NEAR_MM)).flatMap((i) => sources[i] ?? []);
      return tagEdge(a, b, near);
    }),
  );
}

function ringEdges(ring: Ring): (readonly [Point, Point])[] {
  return ring.map((a, i) => [a, corner(ring, i + 1)] as const);
}

interface Cover {
  readonly from: number;
  readonly to: number;
  readonly source: SourceEdge;
}

function tagEdge(a: Point, b: Point, near: readonly SourceEdge[]): BoundaryEdge[] {
  const size = distance(a, b);
  const covers = near.flatMap((source) => coverOf(a, b, source) ?? []);
  const least = NEAR_MM / size;
  const cuts = [0, 1, ...covers.flatMap((cover) => [cover.from, cover.to])]
    .filter((s) => s >= 0 && s <= 1)
    .toSorted((x, y) => x - y);
  const edges: BoundaryEdge[] = [];
  let start = 0;
  for (const cut of cuts) {
    if (cut - start <= least || (cut < 1 && 1 - cut <= least)) continue;
    const middle = (start + cut) / 2;
    let best: SourceEdge | null = null;
    for (const cover of covers) {
      if (cover.from > middle || cover.to < middle) continue;
      if (!best || rankOf(cover.source, a, b) > rankOf(best, a, b)) best = cover.source;
    }
    const kind = best?.kind ?? 'wall';
    const of = best?.of ?? '';
    const last = edges.at(-1);
    const from = start === 0 ? a : (last?.b ?? a);
    const to = cut === 1 ? b : between(a, b, cut);
    if (last && last.kind === kind && last.of === of) edges[edges.length - 1] = { ...last, b: to };
    else edges.push({ a: from, b: to, kind, of });
    start = cut;
  }
  return edges;
}

/** Hardness, and before it whether a hard source has its floor on the side the edge has: between two slabs each keeps its own kind. */
function rankOf(source: SourceEdge, a: Point, b: Point): number {
  const isOwnSide = dot(minus(source.b, source.a), minus(b, a)) > 0;
  return HARDNESS[source.kind] + (isOwnSide && HARDNESS[source.kind] > HARDNESS.run ? 10 : 0);
}

/** What a source covers of an edge, as shares of the edge, or null when it does not lie along it. */
function coverOf(a: Point, b: Point, source: SourceEdge): Cover | null {
  const run = minus(b, a);
  const square = dot(run, run);
  const [s, t] = [dot(minus(source.a, a), run) / square, dot(minus(source.b, a), run) / square];
  const from = Math.max(0, Math.min(s, t));
  const to = Math.min(1, Math.max(s, t));
  if ((to - from) * Math.sqrt(square) <= NEAR_MM) return null;
  const side = quarterTurn(unit(minus(source.b, source.a)));
  const off = (share: number): number => Math.abs(dot(minus(between(a, b, share), source.a), side));
  return off(from) <= NEAR_MM && off(to) <= NEAR_MM ? { from: Math.min(s, t), to: Math.max(s, t), source } : null;
}

/** Chains of hard faces round one ring; soft and `run` edges break them. */
export function chainsOf(edges: readonly BoundaryEdge[]): readonly Chain[] {
  const start = edges.findIndex((edge, i) => isHard(edge) && !isHard(edges.at(i - 1) as BoundaryEdge));
  if (start < 0) {
    const first = edges[0];
    return first && isHard(first) ? [{ faces: edges.flatMap(toFace), closed: true }] : [];
  }
  const chains: Face[][] = [];
  let open: Face[] | null = null;
  for (const edge of [...edges.slice(start), ...edges.slice(0, start)]) {
    const faces = toFace(edge);
    if (faces.length === 0) open = null;
    else if (open) open.push(...faces);
    else chains.push((open = [...faces]));
  }
  return chains.map((faces) => ({ faces, closed: false }));
}

function isHard(edge: BoundaryEdge): boolean {
  return edge.kind !== 'run' && edge.kind !== 'soft';
}

function toFace(edge: BoundaryEdge): Face[] {
  return edge.kind === 'run' || edge.kind === 'soft' ? [] : [faceBetween(edge.a, edge.b, edge.kind, edge.of)];
}

/** A point just inside the floor beside an edge, to ask what covers it. */
export function besideFace(face: Face, share: number, offMm: number): Point {
  return along(between(face.a, face.b, share), face.inward, offMm);
}
