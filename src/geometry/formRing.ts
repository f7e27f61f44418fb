import type { Point, Ring } from './floorShape.ts';

/*
 *    0 ---- width ---- 1
 *    |                 |      `at` is the middle; the turn is clockwise on screen, from the x axis
 *  depth      at       |
 *    3 --------------- 2
 */

/** A thing that stands on the floor, as it is drawn: sizes in mm, the turn in degrees. */
export type Form =
  | {
      readonly form: 'rectangle';
      readonly at: Point;
      readonly widthMm: number;
      readonly depthMm: number;
      readonly turnDeg: number;
    }
  | { readonly form: 'circle'; readonly at: Point; readonly diameterMm: number }
  | { readonly form: 'polygon'; readonly ring: Ring };

const CIRCLE_SIDES = 64;

/**
 * Outline of a form, mm: what is seen, touched and taken from the floor alike. A circle is a polygon of the same area
 * (its corners lie a little outside the circle), so that what it takes is exact.
 */
export function formRing(form: Form): Ring {
  switch (form.form) {
    case 'polygon':
      return form.ring;
    case 'circle':
      return circleRing(form.at, form.diameterMm / 2);
    case 'rectangle':
      return rectangleRing(form);
  }
}

/** A rectangle's own axes, as unit vectors: along its width, along its depth. */
export function rectangleAxes(turnDeg: number): readonly [Point, Point] {
  const turn = (turnDeg * Math.PI) / 180;
  const along: Point = [Math.cos(turn), Math.sin(turn)];
  return [along, [-along[1], along[0]]];
}

function rectangleRing({ at, widthMm, depthMm, turnDeg }: Extract<Form, { form: 'rectangle' }>): Ring {
  const [along, across] = rectangleAxes(turnDeg);
  const place = (x: number, y: number): Point => [
    at[0] + along[0] * x + across[0] * y,
    at[1] + along[1] * x + across[1] * y,
  ];
  const [x, y] = [widthMm / 2, depthMm / 2];
  return [place(-x, -y), place(x, -y), place(x, y), place(-x, y)];
}

function circleRing(at: Point, radiusMm: number): Ring {
  const step = (2 * Math.PI) / CIRCLE_SIDES;
  // A polygon of n sides with corners at R has n/2 R^2 sin(2 pi/n); R makes that pi r^2.
  const reach = radiusMm * Math.sqrt(step / Math.sin(step));
  return Array.from({ length: CIRCLE_SIDES }, (_, side): Point => [
    at[0] + reach * Math.cos(side * step),
    at[1] + reach * Math.sin(side * step),
  ]);
}
