import type { FloorShape, Point } from '../../src/geometry/floorShape.ts';
import { mapped } from '../support/randomFloors.ts';
import { diceOf } from './dice.ts';
import { type Numbers, measured } from './engine.ts';
import { comparedIn } from './laws.ts';
import { SAME_SHARE, SHAKE_MM, WOBBLE_M2 } from './tolerances.ts';

const SHAKES = 6;

/**
 * How far each number of an answer moves when the floor is not quite the one that was drawn: every corner off by a
 * millionth of a millimetre, the same point always by the same, or every head as much wider or narrower.
 */
export function wobbleOf(shape: FloorShape, measure: Numbers): (name: string) => number {
  const answers = [measure, ...nearby(shape).map((near) => measured(near))].map((answer) =>
    comparedIn(answer, SAME_SHARE, new Set()),
  );
  return (name) => {
    const values = answers.map((answer) => answer.get(name)?.value ?? 0);
    return Math.min(Math.max(...values) - Math.min(...values), WOBBLE_M2);
  };
}

function nearby(shape: FloorShape): FloorShape[] {
  const shaken = Array.from({ length: SHAKES }, (_, i) => {
    const shakenPoint = ([x, y]: Point): Point => {
      const dice = diceOf(`${x} ${y}`, i);
      return [x + dice.between(-SHAKE_MM, SHAKE_MM), y + dice.between(-SHAKE_MM, SHAKE_MM)];
    };
    return mapped(shape, shakenPoint);
  });
  const sized = [-SHAKE_MM, SHAKE_MM].map((by) => ({
    ...shape,
    machines: shape.machines.map((one) => ({
      ...one,
      headRadiusMm: Math.max(0, one.headRadiusMm + by),
      passageMm: Math.max(0, one.passageMm + 2 * by),
    })),
  }));
  return [...shaken, ...sized];
}
