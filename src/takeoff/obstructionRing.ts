import type { Point, Ring } from '../geometry/floorShape.ts';
import type { Obstruction } from '../model/records/obstruction.ts';

const CIRCLE_SIDES = 64;

/**
 * Outline of an obstruction, mm. Rectangles turn clockwise about their middle. A circle is a polygon of the same area
 * (its corners lie a little outside the circle), so that what it takes from the floor is exact.
 */
export function obstructionRing(shape: Obstruction['shape']): Ring {
  if (shape.form === 'polygon') return shape.ring;
  if (shape.form === 'circle') return circleRing(shape.at, shape.diameterMm / 2);
  const turn = (shape.turnDeg * Math.PI) / 180;
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const place = (x: number, y: number): Point => [shape.at[0] + x * cos - y * sin, shape.at[1] + x * sin + y * cos];
  const [x, y] = [shape.widthMm / 2, shape.depthMm / 2];
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
