import fc from 'fast-check';
import type { FaceKind, FloorShape, MachineShape, Point, Ring } from '../../src/geometry/floorShape.ts';
import { column, floorOf, machine, rectangle, slab } from './floors.ts';

/** Random floors for laws: an L-shaped hall with columns, a wall with a door, zones, findings, cracks. Seeds are printed by fast-check. */

const step = (least: number, most: number): fc.Arbitrary<number> =>
  fc.integer({ min: least / 50, max: most / 50 }).map((n) => n * 50);

const face: fc.Arbitrary<FaceKind> = fc.constantFrom('wall', 'wall', 'wall', 'stop', 'run', 'drop');

const outline: fc.Arbitrary<Ring> = fc
  .record({
    width: step(6_000, 14_000),
    height: step(6_000, 12_000),
    cutX: step(1_000, 4_000),
    cutY: step(1_000, 4_000),
  })
  .map(({ width, height, cutX, cutY }): Ring => [
    [0, 0],
    [width, 0],
    [width, height - cutY],
    [width - cutX, height - cutY],
    [width - cutX, height],
    [0, height],
  ]);

const place = fc.record({
  x: step(-500, 12_000),
  y: step(-500, 10_000),
  width: step(100, 900),
  height: step(100, 900),
});

const patch = fc
  .record({ x: step(-2_000, 9_000), y: step(-2_000, 9_000), width: step(500, 8_000), height: step(500, 8_000) })
  .map(({ x, y, width, height }) => rectangle(x, y, width, height));

const somewhere: fc.Arbitrary<Point> = fc.tuple(step(-500, 14_000), step(-500, 12_000));

export const anyMachine: fc.Arbitrary<MachineShape> = fc
  .record({
    head: fc.constantFrom(62.5, 125, 250, 400),
    wall: fc.constantFrom(0, 25, 50, 100),
    column: fc.constantFrom(25, 50, 75),
    drop: fc.constantFrom(100, 300, 600),
    lap: fc.constantFrom(0, 50, 100),
    body: fc.constantFrom(0, 800),
  })
  .map(({ head, wall, column: round, drop, lap, body }) =>
    machine(head, wall, lap, {
      clearanceMm: { wall, obstruction: round, drop, stop: wall },
      passageMm: Math.max(2 * (head + wall), body),
    }),
  );

export const anyFloor: fc.Arbitrary<FloorShape> = fc
  .record({
    ring: outline,
    faces: fc.array(face, { minLength: 6, maxLength: 6 }),
    columns: fc.array(place, { maxLength: 5 }),
    // Never in line with the outline: there two rooms would touch in one point, together or apart by a rounding.
    wall: fc.option(
      fc.record({ x: step(2_000, 5_000).map((x) => x + 37), door: step(600, 1_200), at: step(500, 3_000) }),
      { nil: null },
    ),
    zones: fc.array(patch, { maxLength: 3 }),
    findings: fc.array(patch, { maxLength: 2 }),
    lines: fc.array(fc.array(somewhere, { minLength: 2, maxLength: 4 }), { maxLength: 3 }),
    one: anyMachine,
    entrance: fc.option(fc.tuple(step(200, 2_000), step(200, 2_000)), { nil: null }),
  })
  .map(({ ring, faces, columns, wall, zones, findings, lines, one, entrance }) =>
    floorOf([slab(ring, faces)], one, {
      solids: columns.map(({ x, y, width, height }, i) => column(`b${i}`, x, y, width, height)),
      walls: wall
        ? [
            {
              id: 'w1',
              body: rectangle(wall.x, 0, 150, 5_000),
              gaps: [
                {
                  passage: { id: 'd1', widthMm: wall.door, heightMm: null },
                  ring: rectangle(wall.x, wall.at, 150, wall.door),
                },
              ],
            },
          ]
        : [],
      zones: zones.map((zone, i) => ({ id: `z${i}`, ring: zone, machine: i === 1 ? null : one.id })),
      findings: findings.map((finding, i) => ({ id: `f${i}`, ring: finding })),
      lines: lines.map((path, i) => ({ id: `c${i}`, path })),
      entrances: entrance ? [{ id: 'e1', at: entrance, widthMm: null, heightMm: null }] : [],
    }),
  );

/** The same floor with every point mapped. */
export function mapped(shape: FloorShape, map: (at: Point) => Point): FloorShape {
  const ring = (points: readonly Point[]): Ring => points.map(map);
  return {
    ...shape,
    slabs: shape.slabs.map((one) => ({ ...one, ring: ring(one.ring) })),
    walls: shape.walls.map((wall) => ({
      ...wall,
      body: ring(wall.body),
      gaps: wall.gaps.map((gap) => ({ ...gap, ring: ring(gap.ring) })),
    })),
    solids: shape.solids.map((one) => ({ ...one, ring: ring(one.ring) })),
    outOfScope: shape.outOfScope.map((one) => ({ ...one, ring: ring(one.ring) })),
    zones: shape.zones.map((one) => ({ ...one, ring: ring(one.ring) })),
    findings: shape.findings.map((one) => ({ ...one, ring: ring(one.ring) })),
    lines: shape.lines.map((one) => ({ ...one, path: ring(one.path) })),
    entrances: shape.entrances.map((one) => ({ ...one, at: map(one.at) })),
  };
}
