import { describe, expect, it } from 'vitest';
import { measureFloor } from '../../../src/geometry/measureFloor.ts';
import { regionArea } from '../../../src/geometry/ring.ts';
import { floorOf, machine, rectangle, slab, zoneNamed } from '../../support/floors.ts';

/**
 * Floors so wide that the middle is far from every face, for a machine whose body needs more room than its head. The
 * number of the field and its outline are made in different ways: they have to agree, and with the closed form.
 */
describe('a wide room for a body wider than its head', () => {
  // Head 250, clearance 50, lap 50: strip 100 wide, and in each corner what a round head leaves beyond the strip.
  const wide = machine(250, 50, 50, { passageMm: 800 });
  const sizes = [14_100, 14_800, 21_200, 26_400, 45_000];

  it.each(sizes.flatMap((width) => sizes.map((depth) => [width, depth] as const)))('%d by %d mm', (width, depth) => {
    const { netM2, fieldM2, stripM2, tightM2, field } = zoneNamed(
      measureFloor(floorOf([slab(rectangle(0, 0, width, depth))], wide)),
    );
    const inner = ((width - 200) * (depth - 200)) / 1e6;
    // The corner of the square of 200 mm beyond the strip, less the quarter disc of the head in it: 4 corners.
    const corner = 200 ** 2 - quarterDiscIn(250, 50);
    expect(fieldM2).toBeCloseTo(inner - (4 * corner) / 1e6, 9);
    expect(regionArea(field) / 1e6).toBeCloseTo(fieldM2, 9);
    expect(fieldM2 + stripM2 + tightM2).toBeCloseTo(netM2, 9);
  });
});

/** Area of a quarter disc of radius r about (0, 0) where both x and y are under r - cut. */
function quarterDiscIn(r: number, cut: number): number {
  const side = r - cut;
  const half = Math.sqrt(r * r - side * side);
  const under = (x: number): number => (x * Math.sqrt(r * r - x * x) + r * r * Math.asin(x / r)) / 2;
  return side * half + under(side) - under(half);
}
