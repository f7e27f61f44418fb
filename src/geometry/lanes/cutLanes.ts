import type { Point } from '../floorShape.ts';
import type { FieldPiece } from './fieldPieces.ts';

/*
 * A piece of field cut by lines side by side. In the frame of the lanes, along = u, across = v:
 *
 *   v  +------------------+
 *   |  |..................|  line 2      lines lie in the middle of n equal bands that fill the piece
 *   |  |......+----+......|  line 1      from edge to edge: n = extent / useful width, rounded up, so
 *   |  |..................|  line 0      no lane is wider than asked and a rest takes a lane as well
 *   +--+------------------+--> u
 *
 * An edge is asked only for the lines that it crosses, and most short edges of arcs cross none: the work is
 * edges + lanes, not edges x lanes.
 */
export interface PieceCut {
  readonly count: number;
  /** Lanes of line k are first[k] up to, not including, first[k + 1]; left to right. */
  readonly first: Int32Array;
  readonly left: Float64Array;
  readonly right: Float64Array;
  /** Distance of neighbouring lines: the useful width or a little less. */
  readonly stepMm: number;
  /** Ends of a lane in floor mm. */
  readonly ends: (lane: number) => readonly [left: Point, right: Point];
}

/** A rest of less than this share of a lane is rounding and takes no lane. */
const HAIR = 1e-9;
/** Shorter than this, mm, is no lane but a line that grazes a corner. */
const SHORTEST_MM = 1;

/** Cuts a piece along a direction (radians, from x towards y). Lines that graze a corner leave no lane there. */
export function cutPiece(piece: FieldPiece, directionRad: number, usefulWidthMm: number): PieceCut {
  const [cos, sin] = [Math.cos(directionRad), Math.sin(directionRad)];
  const across = acrossOf(piece, cos, sin);
  const extent = across.highest - across.lowest;
  const lines = Math.max(1, Math.ceil(extent / usefulWidthMm - HAIR));
  const stepMm = extent / lines;
  const lineAt = (line: number): number => across.lowest + (line + 0.5) * stepMm;
  const crossings = crossingsOf(piece, across.v, { lines, stepMm, lineAt, cos, sin });
  const { count, first, left, right, lineOf } = lanesBetween(crossings, lines);
  const back = (u: number, v: number): Point => [
    piece.origin[0] + u * cos - v * sin,
    piece.origin[1] + u * sin + v * cos,
  ];
  return {
    count,
    first,
    left,
    right,
    stepMm,
    ends(lane) {
      const v = lineAt(lineOf(lane));
      return [back(left[lane] as number, v), back(right[lane] as number, v)];
    },
  };
}

interface Across {
  readonly v: Float64Array;
  readonly lowest: number;
  readonly highest: number;
}

function acrossOf({ count, x, y }: FieldPiece, cos: number, sin: number): Across {
  const v = new Float64Array(count);
  let lowest = Infinity;
  let highest = -Infinity;
  for (let i = 0; i < count; i += 1) {
    const at = (y[i] as number) * cos - (x[i] as number) * sin;
    v[i] = at;
    if (at < lowest) lowest = at;
    if (at > highest) highest = at;
  }
  return { v, lowest, highest };
}

interface Lines {
  readonly lines: number;
  readonly stepMm: number;
  readonly lineAt: (line: number) => number;
  readonly cos: number;
  readonly sin: number;
}

interface Crossings {
  /** Crossings of line k are start[k] up to start[k + 1], in order along the line. */
  readonly start: Int32Array;
  readonly u: Float64Array;
}

/**
 * Where the outline crosses each line. Each corner is asked once which line comes next above it: an edge crosses the
 * lines from that of its one end up to that of its other, so that a corner on a line counts once, rounding or not.
 */
function crossingsOf({ count, x, y, next }: FieldPiece, v: Float64Array, cut: Lines): Crossings {
  const { lines, stepMm, lineAt, cos, sin } = cut;
  const above = new Int32Array(count);
  const lowest = lineAt(0);
  for (let i = 0; i < count; i += 1) above[i] = Math.ceil(((v[i] as number) - lowest) / stepMm);
  const start = new Int32Array(lines + 1);
  for (let i = 0; i < count; i += 1) {
    const from = above[i] as number;
    const to = above[next[i] as number] as number;
    const last = Math.max(from, to);
    for (let line = Math.min(from, to); line < last; line += 1) start[line + 1] = (start[line + 1] as number) + 1;
  }
  for (let line = 0; line < lines; line += 1) start[line + 1] = (start[line + 1] as number) + (start[line] as number);
  const u = new Float64Array(start[lines] as number);
  const fill = start.slice();
  for (let i = 0; i < count; i += 1) {
    const j = next[i] as number;
    const from = above[i] as number;
    const to = above[j] as number;
    if (from === to) continue;
    const last = Math.max(from, to);
    const fromU = (x[i] as number) * cos + (y[i] as number) * sin;
    const fromV = v[i] as number;
    const slope = ((x[j] as number) * cos + (y[j] as number) * sin - fromU) / ((v[j] as number) - fromV);
    for (let line = Math.min(from, to); line < last; line += 1) {
      const slot = fill[line] as number;
      u[slot] = fromU + slope * (lineAt(line) - fromV);
      fill[line] = slot + 1;
    }
  }
  for (let line = 0; line < lines; line += 1) u.subarray(start[line], start[line + 1]).sort();
  return { start, u };
}

interface LaneList {
  readonly count: number;
  readonly first: Int32Array;
  readonly left: Float64Array;
  readonly right: Float64Array;
  readonly lineOf: (lane: number) => number;
}

/** Lanes lie between the first and second crossing of a line, the third and fourth, and so on. */
function lanesBetween({ start, u }: Crossings, lines: number): LaneList {
  const most = u.length >> 1;
  const [left, right, line] = [new Float64Array(most), new Float64Array(most), new Int32Array(most)];
  const first = new Int32Array(lines + 1);
  let count = 0;
  for (let k = 0; k < lines; k += 1) {
    first[k] = count;
    for (let i = start[k] as number; i + 1 < (start[k + 1] as number); i += 2) {
      const [from, to] = [u[i] as number, u[i + 1] as number];
      if (to - from < SHORTEST_MM) continue;
      left[count] = from;
      right[count] = to;
      line[count] = k;
      count += 1;
    }
  }
  first[lines] = count;
  return { count, first, left, right, lineOf: (lane) => line[lane] as number };
}
