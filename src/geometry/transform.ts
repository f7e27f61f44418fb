import type { Point } from './floorShape.ts';

/**
 * Affine maps of the plane: x' = a x + c y + e, y' = b x + d y + f, in the order of SVG and of a canvas.
 */
export type Matrix = readonly [a: number, b: number, c: number, d: number, e: number, f: number];

export const IDENTITY: Matrix = [1, 0, 0, 1, 0, 0];

export function mapPoint([a, b, c, d, e, f]: Matrix, [x, y]: Point): Point {
  return [a * x + c * y + e, b * x + d * y + f];
}

/** First `inner`, then `outer`. */
export function compose(outer: Matrix, inner: Matrix): Matrix {
  const [a, b, c, d] = outer;
  const origin = mapPoint(outer, [inner[4], inner[5]]);
  return [
    a * inner[0] + c * inner[1],
    b * inner[0] + d * inner[1],
    a * inner[2] + c * inner[3],
    b * inner[2] + d * inner[3],
    origin[0],
    origin[1],
  ];
}

/** The way back, or null for a map that flattens the plane. */
export function invert([a, b, c, d, e, f]: Matrix): Matrix | null {
  const det = a * d - b * c;
  if (!Number.isFinite(det) || det === 0) return null;
  return [d / det, -b / det, -c / det, a / det, (c * f - d * e) / det, (b * e - a * f) / det];
}

/** Turn by an angle in radians from x towards y, after stretching x by sx and y by sy, then a shift. */
export function stretchTurnShift(sx: number, sy: number, turn: number, shift: Point): Matrix {
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  return [sx * cos, sx * sin, -sy * sin, sy * cos, shift[0], shift[1]];
}
