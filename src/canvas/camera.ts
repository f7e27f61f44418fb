import type { Box } from '../geometry/box.ts';
import type { Point } from '../geometry/floorShape.ts';

/**
 * Where the eye stands over the floor. Screen px are CSS pixels from the canvas's top left corner, whatever
 * the screen's pixel ratio.
 *
 *   screen = turn(floor - middle) x pxPerMm + view / 2
 */
export interface Camera {
  /** The floor point in the middle of the view, mm. */
  readonly middle: Point;
  readonly pxPerMm: number;
  /** Turn of the plan on the screen, clockwise, degrees. */
  readonly turnDeg: number;
}

export interface View {
  readonly widthPx: number;
  readonly heightPx: number;
}

/** From a whole site of 4 km to a tenth of a millimetre a pixel. */
const LEAST_PX_PER_MM = 0.0002;
const MOST_PX_PER_MM = 10;

export const FIRST_CAMERA: Camera = { middle: [5000, 4000], pxPerMm: 0.06, turnDeg: 0 };

export function toScreen(camera: Camera, view: View, at: Point): Point {
  const [x, y] = turned([at[0] - camera.middle[0], at[1] - camera.middle[1]], camera.turnDeg);
  return [x * camera.pxPerMm + view.widthPx / 2, y * camera.pxPerMm + view.heightPx / 2];
}

export function toFloor(camera: Camera, view: View, screen: Point): Point {
  const [x, y] = byPx(camera, [screen[0] - view.widthPx / 2, screen[1] - view.heightPx / 2]);
  return [x + camera.middle[0], y + camera.middle[1]];
}

/** The plan follows the hand by so many pixels. */
export function pannedBy(camera: Camera, dxPx: number, dyPx: number): Camera {
  const [x, y] = byPx(camera, [dxPx, dyPx]);
  return { ...camera, middle: [camera.middle[0] - x, camera.middle[1] - y] };
}

/** Zoomed by a factor about a place of the screen: the floor under it stays under it. */
export function zoomedAbout(camera: Camera, view: View, screen: Point, factor: number): Camera {
  const pxPerMm = Math.min(MOST_PX_PER_MM, Math.max(LEAST_PX_PER_MM, camera.pxPerMm * factor));
  return keepingUnder({ ...camera, pxPerMm }, view, screen, toFloor(camera, view, screen));
}

/** Turned about a place of the screen. */
export function turnedAbout(camera: Camera, view: View, screen: Point, byDeg: number): Camera {
  const turnDeg = camera.turnDeg + byDeg;
  return keepingUnder({ ...camera, turnDeg }, view, screen, toFloor(camera, view, screen));
}

/** The camera that shows a box whole, with a margin; the turn stays. */
export function fittedTo(box: Box, view: View, marginPx = 48, turnDeg = 0): Camera {
  const corners: readonly Point[] = [
    [box.minX, box.minY],
    [box.maxX, box.minY],
    [box.maxX, box.maxY],
    [box.minX, box.maxY],
  ];
  const seen = corners.map((at) => turned(at, turnDeg));
  const width = Math.max(...seen.map(([x]) => x)) - Math.min(...seen.map(([x]) => x));
  const height = Math.max(...seen.map(([, y]) => y)) - Math.min(...seen.map(([, y]) => y));
  const room = (px: number): number => Math.max(40, px - 2 * marginPx);
  const pxPerMm = Math.min(room(view.widthPx) / Math.max(1, width), room(view.heightPx) / Math.max(1, height), 1);
  return {
    middle: [(box.minX + box.maxX) / 2, (box.minY + box.maxY) / 2],
    pxPerMm: Math.max(LEAST_PX_PER_MM, pxPerMm),
    turnDeg,
  };
}

/** Whether a floor point lies in the view, and not within so many px of its rim. */
export function isSeen(camera: Camera, view: View, at: Point, rimPx = 0): boolean {
  const [x, y] = toScreen(camera, view, at);
  return x >= rimPx && y >= rimPx && x <= view.widthPx - rimPx && y <= view.heightPx - rimPx;
}

/** The upright floor box that holds all that is seen. */
export function seenBox(camera: Camera, view: View): Box {
  const corners = [
    toFloor(camera, view, [0, 0]),
    toFloor(camera, view, [view.widthPx, 0]),
    toFloor(camera, view, [view.widthPx, view.heightPx]),
    toFloor(camera, view, [0, view.heightPx]),
  ];
  return {
    minX: Math.min(...corners.map(([x]) => x)),
    minY: Math.min(...corners.map(([, y]) => y)),
    maxX: Math.max(...corners.map(([x]) => x)),
    maxY: Math.max(...corners.map(([, y]) => y)),
  };
}

function keepingUnder(camera: Camera, view: View, screen: Point, floor: Point): Camera {
  const now = toFloor(camera, view, screen);
  return {
    ...camera,
    middle: [camera.middle[0] + floor[0] - now[0], camera.middle[1] + floor[1] - now[1]],
  };
}

/** A step on the screen as a step on the floor. */
function byPx(camera: Camera, px: Point): Point {
  const [x, y] = turned(px, -camera.turnDeg);
  return [x / camera.pxPerMm, y / camera.pxPerMm];
}

function turned(at: Point, degrees: number): Point {
  if (degrees === 0) return at;
  const angle = (degrees * Math.PI) / 180;
  const cos = Math.cos(angle);
  const sin = Math.sin(angle);
  return [at[0] * cos - at[1] * sin, at[0] * sin + at[1] * cos];
}
