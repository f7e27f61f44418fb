import { describe, expect, it } from 'vitest';
import type { Ring } from '../../src/geometry/floorShape.ts';
import { measureFloor } from '../../src/geometry/measureFloor.ts';
import { perimeter, ringArea } from '../../src/geometry/ring.ts';
import office from '../data/floor-layouts/office-level-1.json' with { type: 'json' };
import storeyA from '../data/floor-layouts/storey-a.json' with { type: 'json' };
import storeyC from '../data/floor-layouts/storey-c.json' with { type: 'json' };
import { floorOf, machine, slab, total } from '../support/floors.ts';

/*
 * Published floors: rooms of an office (MPL 2.0) and storeys of concrete buildings with their walls (MIT);
 * origins in tests/data/floor-layouts/README.md.
 */
const SMALL = machine(250, 50, 50, { passageMm: 800 });

function inMm(ring: readonly (readonly number[])[]): Ring {
  return ring.map(([x = NaN, y = NaN]) => [x * 1000, -y * 1000]);
}

describe('office, 60 rooms', () => {
  it.each(office.rooms.map((room) => [room.id, room] as const))('%s: net floor with column holes', (_id, room) => {
    const solids = room.holes.map((hole, i) => ({ id: `b${i}`, ring: inMm(hole), solid: true }));
    const measure = measureFloor(floorOf([slab(inMm(room.outer))], SMALL, { solids }));
    expect(measure.faults).toEqual([]);
    expect(measure.netM2).toBeCloseTo(room.area, 3);
    expect(measure.perimeterM).toBeCloseTo(room.perimeterOuter, 3);
    const faces = total(measure, ({ faces: f }) => f.wall + f.obstruction + f.hidden);
    expect(faces).toBeCloseTo(room.perimeterOuter + room.perimeterHoles, 2);
    expect(total(measure, (zone) => zone.fieldM2 + zone.stripM2 + zone.tightM2)).toBeCloseTo(measure.netM2, 3);
  });
  it('adds up to 1,710.60 m2', () => {
    const rooms = office.rooms.map((room) => slab(inMm(room.outer), undefined, room.id));
    const solids = office.rooms.flatMap((room) =>
      room.holes.map((hole, i) => ({ id: `${room.id}-${i}`, ring: inMm(hole), solid: true })),
    );
    const measure = measureFloor(floorOf(rooms, SMALL, { solids }));
    expect(Math.abs(measure.netM2 - office.checks.sumOfRoomAreas)).toBeLessThan(0.02);
  }, 30_000);
});

describe.each([['storey-a', storeyA] as const, ['storey-c', storeyC] as const])('%s', (_name, storey) => {
  const outline = inMm(storey.slab.outer);
  it('has the published slab area and perimeter', () => {
    const measure = measureFloor(floorOf([slab(outline)], SMALL));
    expect(measure.netM2).toBeCloseTo(storey.checks.slabArea, 3);
    expect(measure.perimeterM).toBeCloseTo(storey.checks.slabPerimeter, 3);
  });
  it('has walls of the published length and thickness', () => {
    for (const wall of storey.walls) {
      const [a = [], b = [], c = []] = inMm(wall.outer);
      const sides = [
        Math.hypot((b[0] ?? 0) - (a[0] ?? 0), (b[1] ?? 0) - (a[1] ?? 0)),
        Math.hypot((c[0] ?? 0) - (b[0] ?? 0), (c[1] ?? 0) - (b[1] ?? 0)),
      ];
      expect(
        Math.abs(Math.max(...sides) - Math.max(wall.declaredLength, wall.declaredThickness) * 1000),
      ).toBeLessThanOrEqual(1.31);
      expect(Math.abs(perimeter(inMm(wall.outer)) / 2000 - wall.declaredLength - wall.declaredThickness)).toBeLessThan(
        0.0014,
      );
    }
  });
  it('loses the walls that stand on the slab, each part once', () => {
    const walls = storey.walls.map((wall) => ({ id: wall.id, body: inMm(wall.outer), gaps: [] }));
    const measure = measureFloor(floorOf([slab(outline)], SMALL, { walls }));
    const most = storey.walls.reduce((sum, wall) => sum + ringArea(inMm(wall.outer)) / 1e6, 0);
    const taken = Object.values(measure.deductedM2).reduce((a, b) => a + b, 0);
    expect(measure.faults).toEqual([]);
    expect(taken).toBeLessThanOrEqual(most + 1e-6);
    expect(taken).toBeGreaterThan(most * 0.5);
    expect(measure.netM2).toBeCloseTo(storey.checks.slabArea - taken, 3);
    expect(total(measure, (zone) => zone.fieldM2 + zone.stripM2 + zone.tightM2)).toBeCloseTo(measure.netM2, 2);
  }, 20_000);
});
