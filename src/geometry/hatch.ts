import type { Point, Region } from './floorShape.ts';
import { boxOfRegion } from './box.ts';
import { between, isSame } from './point.ts';
import { insideShares, regionIndex } from './regionIndex.ts';

/*
 * The hatch of a profile: rows of teeth, coarser as the floor gets rougher; even numbers lean 45 degrees.
 *
 *    /\  /\  /\        tooth   width of one tooth
 *   /  \/  \/  \       height  0 for CSP 1: plain lines
 *                      pitch   from row to row
 *    /\  /\  /\
 */
export interface Teeth {
  readonly pitch: number;
  readonly tooth: number;
  readonly height: number;
  readonly stroke: number;
  readonly leanDeg: 0 | 45;
}

/** Row pitch, tooth width, tooth height and stroke of CSP 1 to 10, in px of the screen; on paper mm = px x 0.26. Ours; CSP numbers after ICRI 310.2R, from memory. */
const ROWS: readonly (readonly [number, number, number, number])[] = [
  [5, 8, 0, 0.7],
  [6, 8, 1.2, 0.8],
  [8, 8, 2.6, 0.95],
  [9.5, 9, 3.4, 1.1],
  [12, 11, 5, 1.25],
  [14, 12, 6, 1.45],
  [17, 15, 8.5, 1.7],
  [20, 17, 10, 2],
  [24, 21, 13, 2.3],
  [30, 26, 17, 2.8],
];

/** The teeth of a CSP in px; numbers beyond 1 to 10 take the nearest. */
export function teethOf(csp: number): Teeth {
  const number = Math.min(10, Math.max(1, Math.round(csp)));
  const [pitch, tooth, height, stroke] = ROWS[number - 1] ?? [8, 8, 2.6, 0.95];
  return { pitch, tooth, height, stroke, leanDeg: number % 2 === 0 ? 45 : 0 };
}

/**
 * The hatch of a region as polylines clipped to it, for paper. `unitsPerPx` is the length of one px of the
 * table in the region's unit (for mm of floor at 1:50 on paper: 0.26 x 50 = 13). Rows hang on the origin, so
 * that regions side by side share them. More than `mostRows` rows across (a scale gone wrong) answers none.
 */
export function hatchLines(
  region: Region,
  csp: number,
  unitsPerPx: number,
  mostRows = 4000,
): readonly (readonly Point[])[] {
  const teeth = teethOf(csp);
  const [pitch, tooth, height] = [teeth.pitch * unitsPerPx, teeth.tooth * unitsPerPx, teeth.height * unitsPerPx];
  const lean = turnBy((-teeth.leanDeg * Math.PI) / 180);
  const upright = turnBy((teeth.leanDeg * Math.PI) / 180);
  const leaning = region.map((polygon) => polygon.map((ring) => ring.map(upright)));
  const { minX, minY, maxX, maxY } = boxOfRegion(leaning);
  if (!(pitch > 0) || !((maxY - minY) / pitch <= mostRows)) return [];
  const index = regionIndex(leaning);
  const lines: Point[][] = [];
  for (let row = Math.floor(minY / pitch); row * pitch <= maxY + height; row += 1) {
    const y = row * pitch;
    const path = height === 0 ? [[minX, y] as const, [maxX, y] as const] : zigzag(minX, maxX, y, tooth, height);
    lines.push(...clipped(path, (a, b) => insideShares(index, a, b)));
  }
  return lines.map((line) => line.map(lean));
}

function zigzag(from: number, to: number, y: number, tooth: number, height: number): Point[] {
  const half = tooth / 2;
  const path: Point[] = [];
  for (let i = Math.floor(from / half); (i - 1) * half <= to; i += 1)
    path.push([i * half, i % 2 === 0 ? y : y - height]);
  return path;
}

/** The parts of a path that lie inside, joined where they follow each other. */
function clipped(
  path: readonly Point[],
  inside: (a: Point, b: Point) => readonly (readonly [number, number])[],
): Point[][] {
  const lines: Point[][] = [];
  for (const [i, a] of path.entries()) {
    const b = path[i + 1];
    if (!b) break;
    for (const [from, to] of inside(a, b)) {
      const [start, end] = [from === 0 ? a : between(a, b, from), to === 1 ? b : between(a, b, to)];
      const last = lines.at(-1);
      const tail = last?.at(-1);
      if (last && tail && isSame(tail, start)) last.push(end);
      else lines.push([start, end]);
    }
  }
  return lines;
}

function turnBy(angle: number): (p: Point) => Point {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return ([x, y]) => [x * c - y * s, x * s + y * c];
}
