import type { Point } from './floorShape.ts';
import { distance } from './point.ts';
import { type Matrix, stretchTurnShift } from './transform.ts';

/*
 * From pixels of a scanned page to floor millimetres.
 *
 *      floor = turn x diag(sx, sy) x pixel + origin
 *
 *      page  +-------------+     A scanner stretches along the page's own axes and does not shear, so two
 *            |  |--5.20--| |     scales are all there is to find: a dimension of (dx, dy) pixels and length L
 *            |  -          |     says  sx^2 dx^2 + sy^2 dy^2 = L^2.  One length gives sx = sy; two in different
 *            |  3.40       |     directions give both; more are fitted by least squares of the lengths.
 *            +--|----------+
 */
export interface KnownDimension {
  readonly from: Point;
  readonly to: Point;
  readonly lengthMm: number;
  readonly by: 'mouse' | 'pen' | 'finger';
}

export interface TrueFit {
  /** mm per pixel along the page's own axes. */
  readonly sx: number;
  readonly sy: number;
  /** Turn in radians from the page's x towards its y. */
  readonly turn: number;
  /** One scale for both directions: the dimensions do not tell two apart. */
  readonly oneScale: boolean;
  /** Measured on the trued page less typed, mm, in the order of the dimensions. */
  readonly residualsMm: readonly number[];
  /** How much longer one direction is than the other, percent of the shorter. */
  readonly stretchPct: number;
  /** Uncertainty of lengths along x, along y, and of areas, percent. */
  readonly lengthPlusMinusPct: readonly [x: number, y: number];
  readonly areaPlusMinusPct: number;
}

export type TrueFault = 'noDimension' | 'zeroLength' | 'notALength' | 'impossible';
export type TrueResult =
  | { readonly ok: true; readonly fit: TrueFit }
  | { readonly ok: false; readonly fault: TrueFault };

/** A pick is good to this many pixels (common practice, no source). */
const PICK_PX = { mouse: 1.5, pen: 1.5, finger: 3 } as const;
/** Shorter than this on the page is not a dimension but a slip of the hand. */
const LEAST_PX = 4;
/** Least difference in how much of a dimension lies along x (share of its square) to tell two scales apart. */
const LEAST_SPREAD = 0.25;

/**
 * Fits the page's scales to known dimensions.
 * `levelLine`: two pixels of a line that is level on the floor; without it the longest dimension is laid level
 * or plumb, whichever is nearer. The turn changes no quantity.
 */
export function fitTrue(
  dimensions: readonly KnownDimension[],
  levelLine: { readonly from: Point; readonly to: Point } | null = null,
): TrueResult {
  if (dimensions.length === 0) return { ok: false, fault: 'noDimension' };
  if (dimensions.some((one) => !(one.lengthMm > 0) || !Number.isFinite(one.lengthMm)))
    return { ok: false, fault: 'notALength' };
  if (dimensions.some((one) => !(distance(one.from, one.to) >= LEAST_PX))) return { ok: false, fault: 'zeroLength' };

  const shares = dimensions.map(shareAlongX);
  const oneScale = Math.max(...shares) - Math.min(...shares) < LEAST_SPREAD;
  const scales = oneScale ? fitOneScale(dimensions) : fitTwoScales(dimensions);
  if (!scales) return { ok: false, fault: 'impossible' };
  const [sx, sy] = scales;

  const residualsMm = dimensions.map((one) => lengthAt(one, sx, sy) - one.lengthMm);
  const [ex, ey, area] = plusMinus(dimensions, sx, sy, oneScale, residualsMm);
  return {
    ok: true,
    fit: {
      sx,
      sy,
      turn: turnOf(levelLine ?? longest(dimensions), sx, sy, levelLine !== null),
      oneScale,
      residualsMm,
      stretchPct: (Math.max(sx, sy) / Math.min(sx, sy) - 1) * 100,
      lengthPlusMinusPct: [ex * 100, ey * 100],
      areaPlusMinusPct: area * 100,
    },
  };
}

/** The page's map from pixels to floor mm; `origin` is where pixel 0,0 lies. */
export function trueMatrix(fit: TrueFit, origin: Point): Matrix {
  return stretchTurnShift(fit.sx, fit.sy, fit.turn, origin);
}

function shareAlongX(one: KnownDimension): number {
  const [dx, dy] = span(one);
  return (dx * dx) / (dx * dx + dy * dy);
}

function span(one: { readonly from: Point; readonly to: Point }): Point {
  return [one.to[0] - one.from[0], one.to[1] - one.from[1]];
}

function lengthAt(one: { readonly from: Point; readonly to: Point }, sx: number, sy: number): number {
  const [dx, dy] = span(one);
  return Math.hypot(sx * dx, sy * dy);
}

function fitOneScale(dimensions: readonly KnownDimension[]): readonly [number, number] {
  let products = 0;
  let squares = 0;
  for (const one of dimensions) {
    const px = distance(one.from, one.to);
    products += px * one.lengthMm;
    squares += px * px;
  }
  return [products / squares, products / squares];
}

/** Gauss-Newton on the lengths, begun at the exact solution for the squares of the scales. */
function fitTwoScales(dimensions: readonly KnownDimension[]): readonly [number, number] | null {
  const start = solve2(
    dimensions.map((one) => {
      const [dx, dy] = span(one);
      // Divided by the length, so that a long dimension does not weigh by its cube.
      return { x: (dx * dx) / one.lengthMm, y: (dy * dy) / one.lengthMm, value: one.lengthMm };
    }),
  );
  if (!start || !(start[0] > 0) || !(start[1] > 0)) return null;
  let [sx, sy] = [Math.sqrt(start[0]), Math.sqrt(start[1])];
  for (let round = 0; round < 20; round += 1) {
    const step = solve2(
      dimensions.map((one) => {
        const [jx, jy] = slope(one, sx, sy);
        return { x: jx, y: jy, value: one.lengthMm - lengthAt(one, sx, sy) };
      }),
    );
    if (!step) return null;
    sx += step[0];
    sy += step[1];
    if (Math.hypot(step[0] / sx, step[1] / sy) < 1e-14) break;
  }
  return sx > 0 && sy > 0 ? [sx, sy] : null;
}

/** How the length of a dimension grows with sx and with sy, mm per (mm per pixel). */
function slope(one: KnownDimension, sx: number, sy: number): readonly [number, number] {
  const [dx, dy] = span(one);
  const length = lengthAt(one, sx, sy);
  return [(sx * dx * dx) / length, (sy * dy * dy) / length];
}

interface Row {
  readonly x: number;
  readonly y: number;
  readonly value: number;
}

/** Least squares for two unknowns, or null when the rows do not tell them apart. */
function solve2(rows: readonly Row[]): readonly [number, number] | null {
  const [xx, xy, yy] = normal(rows);
  const xv = sum(rows.map((row) => row.x * row.value));
  const yv = sum(rows.map((row) => row.y * row.value));
  const det = xx * yy - xy * xy;
  if (!(Math.abs(det) > 1e-12 * xx * yy)) return null;
  return [(yy * xv - xy * yv) / det, (xx * yv - xy * xv) / det];
}

function normal(rows: readonly { readonly x: number; readonly y: number }[]): readonly [number, number, number] {
  return [
    sum(rows.map((row) => row.x * row.x)),
    sum(rows.map((row) => row.x * row.y)),
    sum(rows.map((row) => row.y * row.y)),
  ];
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}

/**
 * Relative uncertainty of sx, sy and of areas. The pick error of both ends goes through the fit; with spare
 * dimensions the residual counts when it is the larger. Two scales add in quadrature; one scale serves both
 * directions, so its error counts twice in an area.
 */
function plusMinus(
  dimensions: readonly KnownDimension[],
  sx: number,
  sy: number,
  oneScale: boolean,
  residualsMm: readonly number[],
): readonly [number, number, number] {
  const unknowns = oneScale ? 1 : 2;
  const spare = dimensions.length - unknowns;
  const scatterMm = spare > 0 ? Math.sqrt(sum(residualsMm.map((r) => r * r)) / spare) : 0;
  const errorsMm = dimensions.map((one) => {
    const mmPerPx = lengthAt(one, sx, sy) / distance(one.from, one.to);
    return Math.max(Math.SQRT2 * PICK_PX[one.by] * mmPerPx, scatterMm);
  });
  if (oneScale) {
    const information = sum(dimensions.map((one, i) => (one.lengthMm / (errorsMm[i] ?? 1)) ** 2));
    const relative = 1 / Math.sqrt(information);
    return [relative, relative, 2 * relative];
  }
  const [xx, xy, yy] = normal(
    dimensions.map((one, i) => {
      const [jx, jy] = slope(one, sx, sy);
      return { x: jx / (errorsMm[i] ?? 1), y: jy / (errorsMm[i] ?? 1) };
    }),
  );
  const det = xx * yy - xy * xy;
  const ex = Math.sqrt(yy / det) / sx;
  const ey = Math.sqrt(xx / det) / sy;
  return [ex, ey, Math.hypot(ex, ey)];
}

function longest(dimensions: readonly KnownDimension[]): KnownDimension {
  return dimensions.reduce((best, one) => (one.lengthMm > best.lengthMm ? one : best));
}

/** The turn that lays a line level; a dimension may be plumb as well, whichever is nearer. */
function turnOf(
  line: { readonly from: Point; readonly to: Point },
  sx: number,
  sy: number,
  mustBeLevel: boolean,
): number {
  const [dx, dy] = span(line);
  const angle = Math.atan2(sy * dy, sx * dx);
  const step = mustBeLevel ? Math.PI : Math.PI / 2;
  return Math.round(angle / step) * step - angle;
}
