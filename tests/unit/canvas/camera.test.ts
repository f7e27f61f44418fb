import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  fittedTo,
  isSeen,
  pannedBy,
  seenBox,
  toFloor,
  toScreen,
  turnedAbout,
  zoomedAbout,
  type Camera,
} from '../../../src/canvas/camera.ts';
import type { Point } from '../../../src/geometry/floorShape.ts';

const view = { widthPx: 1440, heightPx: 900 };
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const camera: fc.Arbitrary<Camera> = fc.record({
  middle: fc.tuple(number(-1e6, 1e6), number(-1e6, 1e6)),
  pxPerMm: number(0.001, 5),
  turnDeg: number(-360, 360),
});
const screen: fc.Arbitrary<Point> = fc.tuple(number(0, 1440), number(0, 900));

function near(a: Point, b: Point, by: number): void {
  expect(Math.hypot(a[0] - b[0], a[1] - b[1])).toBeLessThan(by);
}

test('there and back again', () => {
  fc.assert(
    fc.property(camera, screen, (eye, at) => {
      near(toScreen(eye, view, toFloor(eye, view, at)), at, 1e-5);
    }),
  );
});

test('zoom and turn about a point leave it where it is; zoom back gives the start', () => {
  fc.assert(
    fc.property(camera, screen, number(0.6, 1.6), number(-180, 180), (eye, at, factor, turn) => {
      const floor = toFloor(eye, view, at);
      const zoomed = zoomedAbout(eye, view, at, factor);
      near(toScreen(zoomed, view, floor), at, 1e-4);
      near(toScreen(turnedAbout(eye, view, at, turn), view, floor), at, 1e-4);
      const back = zoomedAbout(zoomed, view, at, 1 / factor);
      near(toScreen(back, view, floor), at, 1e-4);
    }),
  );
});

test('pan: the floor follows the hand, turned or not', () => {
  fc.assert(
    fc.property(camera, screen, number(-500, 500), number(-500, 500), (eye, at, dx, dy) => {
      const floor = toFloor(eye, view, at);
      near(toScreen(pannedBy(eye, dx, dy), view, floor), [at[0] + dx, at[1] + dy], 1e-4);
    }),
  );
});

test('fit shows all of a box, with its margin, whichever way the plan is turned', () => {
  const box = { minX: -1000, minY: 2000, maxX: 23_000, maxY: 18_000 };
  for (const turnDeg of [0, 30, 90, -135]) {
    const eye = fittedTo(box, view, 48, turnDeg);
    for (const corner of [
      [-1000, 2000],
      [23_000, 2000],
      [23_000, 18_000],
      [-1000, 18_000],
    ] as const) {
      const [x, y] = toScreen(eye, view, corner);
      expect(x).toBeGreaterThan(47.9);
      expect(x).toBeLessThan(1440 - 47.9);
      expect(y).toBeGreaterThan(47.9);
      expect(y).toBeLessThan(900 - 47.9);
    }
    const seen = seenBox(eye, view);
    expect(seen.minX).toBeLessThan(box.minX);
    expect(seen.maxY).toBeGreaterThan(box.maxY);
  }
  expect(fittedTo(box, view).pxPerMm).toBeCloseTo((900 - 96) / 16_000, 9);
});

test('turn is clockwise on the screen', () => {
  const eye = { middle: [0, 0], pxPerMm: 1, turnDeg: 90 } as const;
  const [x, y] = toScreen(eye, view, [100, 0]);
  expect(x).toBeCloseTo(720, 9);
  expect(y).toBeCloseTo(550, 9);
});

test('a point is seen inside the view, and not within its rim', () => {
  const eye: Camera = { middle: [0, 0], pxPerMm: 1, turnDeg: 0 };
  const small = { widthPx: 200, heightPx: 100 };
  expect(isSeen(eye, small, [99, 0])).toBe(true);
  expect(isSeen(eye, small, [99, 0], 16)).toBe(false);
  expect(isSeen(eye, small, [80, 30], 16)).toBe(true);
  expect(isSeen(eye, small, [0, 51])).toBe(false);
});
