import type { Point, Region, Ring } from '../floorShape.ts';
import { arcPoints } from '../arc.ts';
import { cross, minus } from '../point.ts';
import { signedArea } from '../ring.ts';
import type { Arc } from './edge.ts';
import { polygonsOf } from './polygons.ts';
import type { Tile } from './tiles.ts';
import type { TracedLoop, TracedPiece } from './trace.ts';

/*
 * Outlines of one part, joined over the sides of the tiles.
 *
 *     ____|____         A loop is cut where it runs along the side of its tile; the ends of what remains lie on sides,
 *    |    |    |        and on the other side of each lies the end of a piece that goes on from there.
 *    |____|____|
 *         |
 */
export interface TileLoops {
  readonly tile: Tile;
  readonly loops: readonly TracedLoop[];
}

/** Ends this near, in mm, are one place. */
const SAME_PLACE_MM = 0.02;

export function joinedRegion(traced: readonly TileLoops[], origin: Point): Region {
  const whole: TracedPiece[][] = [];
  const open: TracedPiece[][] = [];
  for (const { tile, loops } of traced) {
    for (const loop of loops) {
      const runs = cutAtSides(loop, tile);
      if (runs === null) whole.push([...loop]);
      else open.push(...runs);
    }
  }
  const rings = [...whole, ...linked(open)].map((loop) => ringOf(loop, origin)).filter((ring) => ring.length >= 3);
  return polygonsOf(rings);
}

/** The runs of a loop that do not lie along the side of its tile; null when none of it does. */
function cutAtSides(loop: TracedLoop, tile: Tile): TracedPiece[][] | null {
  const first = loop.findIndex((piece) => isSide(piece, tile));
  if (first < 0) return null;
  const runs: TracedPiece[][] = [];
  let run: TracedPiece[] = [];
  for (let i = 1; i <= loop.length; i += 1) {
    const piece = loop[(first + i) % loop.length] as TracedPiece;
    if (!isSide(piece, tile)) run.push(piece);
    else if (run.length > 0) {
      runs.push(run);
      run = [];
    }
  }
  return runs;
}

function isSide({ part, fromY, toY }: TracedPiece, { box }: Tile): boolean {
  if (part) return part.isSide;
  return fromY === toY && (fromY === box.minY || fromY === box.maxY);
}

/** Runs joined end to start into loops; a run that finds no other is closed by itself. */
function linked(runs: readonly TracedPiece[][]): TracedPiece[][] {
  const starts = new Map<string, number[]>();
  for (const [i, run] of runs.entries()) {
    const { fromX, fromY } = run[0] as TracedPiece;
    const key = keyOf(Math.round(fromX / SAME_PLACE_MM), Math.round(fromY / SAME_PLACE_MM));
    const list = starts.get(key);
    if (list) list.push(i);
    else starts.set(key, [i]);
  }
  const isUsed = runs.map(() => false);
  const loops: TracedPiece[][] = [];
  for (const [first, run] of runs.entries()) {
    if (isUsed[first]) continue;
    const loop: TracedPiece[] = [];
    let next: number | null = first;
    while (next !== null && !isUsed[next]) {
      isUsed[next] = true;
      const pieces: TracedPiece[] = runs[next] ?? run;
      loop.push(...pieces);
      next = nearestStart(pieces.at(-1) as TracedPiece, runs, starts, first, isUsed);
    }
    loops.push(loop);
  }
  return loops;
}

function keyOf(x: number, y: number): string {
  return `${x} ${y}`;
}

/** The run that starts where a piece ends; the first run of the loop counts as free, for it closes it. */
function nearestStart(
  { toX, toY }: TracedPiece,
  runs: readonly TracedPiece[][],
  starts: ReadonlyMap<string, readonly number[]>,
  first: number,
  isUsed: readonly boolean[],
): number | null {
  const [cellX, cellY] = [Math.round(toX / SAME_PLACE_MM), Math.round(toY / SAME_PLACE_MM)];
  let best: number | null = null;
  let least = SAME_PLACE_MM;
  for (let x = cellX - 1; x <= cellX + 1; x += 1)
    for (let y = cellY - 1; y <= cellY + 1; y += 1)
      for (const i of starts.get(keyOf(x, y)) ?? []) {
        const start = runs[i]?.[0];
        if (!start) continue;
        const { fromX, fromY } = start;
        const far = Math.hypot(fromX - toX, fromY - toY);
        if (far <= least && (i === first || !isUsed[i])) [best, least] = [i, far];
      }
  return best;
}

/** Corners of a loop: straight runs made one, arcs as points that keep their area. */
function ringOf(loop: readonly TracedPiece[], origin: Point): Ring {
  const points: Point[] = [];
  for (const piece of loop) {
    const { fromX, fromY, part } = piece;
    points.push([fromX + origin[0], fromY + origin[1]]);
    if (part?.edge.arc) points.push(...innerArc(piece, part.edge.arc, origin));
  }
  return withoutStraight(points);
}

function innerArc({ fromX, fromY, toX, toY }: TracedPiece, { cx, cy, radius }: Arc, origin: Point): readonly Point[] {
  const u: Point = [fromX - cx, fromY - cy];
  const v: Point = [toX - cx, toY - cy];
  const turn = Math.atan2(cross(u, v), u[0] * v[0] + u[1] * v[1]);
  const center: Point = [cx + origin[0], cy + origin[1]];
  return arcPoints(center, radius, Math.atan2(u[1], u[0]), turn, 'area').slice(1, -1);
}

/** Corners that turn less than this, as a share of the two lengths, are none. */
const STRAIGHT = 1e-9;

function withoutStraight(points: readonly Point[]): Ring {
  const kept: Point[] = [];
  for (const [i, at] of points.entries()) {
    const before = kept.at(-1) ?? points.at(-1) ?? at;
    const after = points[(i + 1) % points.length] as Point;
    const [u, v] = [minus(at, before), minus(after, at)];
    const size = Math.hypot(u[0], u[1]) * Math.hypot(v[0], v[1]);
    if (size > 0 && Math.abs(cross(u, v)) > STRAIGHT * size) kept.push(at);
  }
  return signedArea(kept) === 0 ? [] : kept;
}
