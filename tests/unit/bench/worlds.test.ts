import { Clipper, FillRule, type Paths64 } from 'clipper2-ts';
import { describe, expect, test } from 'vitest';
import { type WorldName, world } from '../../../bench/worlds.ts';
import type { FloorShape, Ring } from '../../../src/geometry/floorShape.ts';
import { STEPS_PER_MM, toGrid } from '../../../src/geometry/grid.ts';

function paths(rings: readonly Ring[]): Paths64 {
  return rings.map((ring) =>
    ring.map(([x, y]) => ({ x: Math.round(x * STEPS_PER_MM), y: Math.round(y * STEPS_PER_MM) })),
  );
}

/** Slabs less columns and less walls without their doorways, by clipper2-ts: a general-purpose library, not our engine. */
function netM2(shape: FloorShape): number {
  const walls = shape.walls.flatMap((wall) =>
    Clipper.difference(paths([wall.body]), paths(wall.gaps.map((gap) => gap.ring)), FillRule.NonZero),
  );
  const slabs = paths(shape.slabs.map((slab) => slab.ring));
  const bodies = [...paths(shape.solids.map((solid) => solid.ring)), ...walls];
  return Clipper.areaPaths(Clipper.difference(slabs, bodies, FillRule.NonZero)) / (STEPS_PER_MM * 1000) ** 2;
}

const said: readonly (readonly [name: WorldName, netM2: number, counts: readonly number[]])[] = [
  ['W1', 41, [2, 0, 0, 6, 0]],
  ['W2', 9093, [250, 40, 300, 400, 12]],
  ['W3', 90_692, [2480, 300, 3000, 5000, 60]],
];

describe.each(said)('world %s', (name, areaM2, counts) => {
  const shape = world(name);

  test('has the columns, walls, findings, cracks and zones it says', () => {
    const { solids, walls, findings, lines, zones } = shape;
    expect([solids, walls, findings, lines, zones].map((list) => list.length)).toEqual(counts);
  });

  test('has the net floor it says', () => {
    expect(netM2(shape)).toSatisfy((net: number) => Math.abs(net - areaM2) < 0.5, `net is ${netM2(shape)}`);
  });

  test('comes out the same each time', () => {
    expect(world(name)).toEqual(shape);
  });

  test('lies on the plan grid, with doorways of 860 to 3,000 mm and findings and cracks of the size they say', () => {
    const rings = [...shape.slabs, ...shape.solids, ...shape.zones, ...shape.findings].map((one) => one.ring);
    const points = [...rings, ...shape.walls.map((wall) => wall.body), ...shape.lines.map((line) => line.path)].flat();
    expect(points.flat().every((value) => toGrid(value) === value)).toBe(true);
    const doors = shape.walls.flatMap((wall) => wall.gaps.map((gap) => gap.passage.widthMm));
    expect(doors.every((widthMm) => widthMm >= 860 && widthMm <= 3000)).toBe(true);
    expect(shape.findings.every(({ ring }) => ring.length >= 6 && ring.length <= 24)).toBe(true);
    expect(shape.lines.every(({ path }) => path.length >= 4 && path.length <= 11)).toBe(true);
  });
});
