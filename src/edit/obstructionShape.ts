import type { Point, Ring } from '../geometry/floorShape.ts';
import { dot, minus, plus } from '../geometry/point.ts';
import type { Obstruction } from '../model/records/obstruction.ts';

/*
 *    0 ---- width ---- 1
 *    |                 |      `at` is the middle; the turn is clockwise on screen,
 *  depth      at       |      from the x axis
 *    3 --------------- 2
 */

type Shape = Obstruction['shape'];
type Rectangle = Extract<Shape, { form: 'rectangle' }>;

const CIRCLE_SIDES = 64;

/** The rectangle's own axes, as unit vectors: along its width, along its depth. */
export function rectangleAxes(turnDeg: number): readonly [Point, Point] {
  const turn = (turnDeg * Math.PI) / 180;
  const along: Point = [Math.cos(turn), Math.sin(turn)];
  return [along, [-along[1], along[0]]];
}

function rectangleRing({ at, widthMm, depthMm, turnDeg }: Rectangle): Ring {
  const [along, across] = rectangleAxes(turnDeg);
  const place = (x: number, y: number): Point => [
    at[0] + along[0] * x + across[0] * y,
    at[1] + along[1] * x + across[1] * y,
  ];
  const x = widthMm / 2;
  const y = depthMm / 2;
  return [place(-x, -y), place(x, -y), place(x, y), place(-x, y)];
}

/** The outline that is seen and touched. Circles are drawn with 64 sides; areas come from the takeoff, not from this. */
export function obstructionRing(shape: Shape): Ring {
  if (shape.form === 'polygon') return shape.ring;
  if (shape.form === 'rectangle') return rectangleRing(shape);
  const radius = shape.diameterMm / 2;
  return Array.from({ length: CIRCLE_SIDES }, (_, side): Point => {
    const angle = (side * 2 * Math.PI) / CIRCLE_SIDES;
    return [shape.at[0] + radius * Math.cos(angle), shape.at[1] + radius * Math.sin(angle)];
  });
}

/** The rectangle after one of its corners was carried to `to`; the opposite corner and the turn stay. */
export function resizedRectangle(shape: Rectangle, corner: number, to: Point): Rectangle {
  const opposite = rectangleRing(shape)[(corner + 2) % 4] ?? shape.at;
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
