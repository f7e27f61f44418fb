import { formRing, rectangleAxes, type Form } from '../geometry/formRing.ts';
import type { Point } from '../geometry/floorShape.ts';
import { dot, minus, plus } from '../geometry/point.ts';

type Rectangle = Extract<Form, { form: 'rectangle' }>;

/** The rectangle after one of its corners was carried to `to`; the opposite corner and the turn stay. */
export function resizedRectangle(shape: Rectangle, corner: number, to: Point): Rectangle {
  const opposite = formRing(shape)[(corner + 2) % 4] ?? shape.at;
  const [along, across] = rectangleAxes(shape.turnDeg);
  const diagonal = minus(to, opposite);
  const middle = plus(to, opposite);
  return {
    ...shape,
    at: [middle[0] / 2, middle[1] / 2],
    widthMm: Math.abs(dot(diagonal, along)),
    depthMm: Math.abs(dot(diagonal, across)),
  };
}
