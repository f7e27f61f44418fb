import type { Page } from '../src/model/records/page.ts';
import { FLOOR, type Point } from './place.ts';
import { HALL } from './workshopFloor.ts';

/*
 * How the invented scan lies on the floor: an A3 sheet at 1:100, read in a little askew by a scanner that stretches
 * one way more than the other. The plan page of the demo is trued by picking three of its printed dimensions.
 *
 *      floor = turn x diag(sx, sy) x pixel + origin
 */
export const SCAN = {
  widthPx: 1986,
  heightPx: 1400,
  sx: 21.15,
  sy: 21.21,
  turnDeg: 0.5,
  origin: [-7500, -6000],
} as const;

const turn = (SCAN.turnDeg * Math.PI) / 180;
const [cos, sin] = [Math.cos(turn), Math.sin(turn)];

/** The map from floor mm to pixels, in the order of SVG. */
export const FLOOR_TO_PIXEL = (() => {
  const { sx, sy, origin } = SCAN;
  const [a, b, c, d] = [cos / sx, -sin / sy, sin / sx, cos / sy];
  return [a, b, c, d, -(a * origin[0] + c * origin[1]), -(b * origin[0] + d * origin[1])] as const;
})();

/** A pick with the mouse: to a tenth of a pixel. */
function pick([x, y]: Point): [number, number] {
  const [a, b, c, d, e, f] = FLOOR_TO_PIXEL;
  return [Math.round((a * x + c * y + e) * 10) / 10, Math.round((b * x + d * y + f) * 10) / 10];
}

export function workshopPage(image: string): Page {
  const topLeft = pick([0, 0]);
  const topRight = pick([HALL.widthMm, 0]);
  const bottomLeft = pick([0, HALL.depthMm]);
  return {
    floor: FLOOR,
    name: 'Ground floor plan, scanned',
    image,
    widthPx: SCAN.widthPx,
    heightPx: SCAN.heightPx,
    origin: SCAN.origin,
    guessMmPerPx: 21,
    dimensions: [
      { from: topLeft, to: topRight, lengthMm: HALL.widthMm, by: 'mouse' },
      { from: topLeft, to: bottomLeft, lengthMm: HALL.depthMm, by: 'mouse' },
      { from: bottomLeft, to: pick([15_000, HALL.depthMm]), lengthMm: 15_000, by: 'mouse' },
    ],
    levelLine: { from: topLeft, to: topRight },
    fade: 0.5,
  };
}
