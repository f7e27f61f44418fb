import { describe, expect, it } from 'vitest';
import { measureFloor } from '../../src/geometry/measureFloor.ts';
import { column, floorOf, machine, rectangle, slab, zoneNamed } from '../support/floors.ts';

/*
 * Worked examples E01 to E04 of the trade, retyped; each was recomputed by a second, independent program.
 * Head radius 0 and lap 0, so that square corners stay square; where two answers are given, the eroded one.
 */
describe('worked examples of field and edge', () => {
  it('E01: room 12 x 8 m, gap 75 mm', () => {
    const zone = zoneNamed(measureFloor(floorOf([slab(rectangle(0, 0, 12_000, 8_000))], machine(0, 75, 0))));
    expect(zone.netM2).toBeCloseTo(96, 9);
    expect(zone.fieldM2).toBeCloseTo(93.0225, 9);
    expect(zone.stripM2).toBeCloseTo(2.9775, 9);
    expect(zone.faces.wall).toBeCloseTo(40, 9);
    expect(zone.innerCorners).toBe(4);
  });
  it('E01 with a head of 250 mm: field and cusps together are that field', () => {
    const zone = zoneNamed(measureFloor(floorOf([slab(rectangle(0, 0, 12_000, 8_000))], machine(250, 75, 0))));
    expect(zone.fieldM2 + zone.tightM2).toBeCloseTo(93.0225, 6);
  });
  it('E02: L-shape 10 x 8 m with a 4 x 3 m notch, gap 100 mm', () => {
    const ring = [
      [0, 0],
      [10_000, 0],
      [10_000, 5_000],
      [6_000, 5_000],
      [6_000, 8_000],
      [0, 8_000],
    ] as const;
    const zone = zoneNamed(measureFloor(floorOf([slab(ring)], machine(0, 100, 0))));
    expect(zone.netM2).toBeCloseTo(68, 9);
    expect(zone.faces.wall).toBeCloseTo(36, 9);
    expect(zone.fieldM2).toBeCloseTo(64.44214601836603, 6);
  });
  it('E03: column 0.5 x 0.5 m in the field, gap 100 mm', () => {
    const room = slab(rectangle(0, 0, 6_000, 6_000));
    const bare = zoneNamed(measureFloor(floorOf([room], machine(0, 100, 0))));
    const zone = zoneNamed(
      measureFloor(floorOf([room], machine(0, 100, 0), { solids: [column('b1', 2_000, 2_000, 500)] })),
    );
    expect(bare.netM2 - zone.netM2).toBeCloseTo(0.25, 9);
    expect(bare.fieldM2 - zone.fieldM2).toBeCloseTo(0.48141592653589793, 6);
    expect(zone.faces.obstruction).toBeCloseTo(2, 9);
  });
  it('E04: garage 6 x 6 m, door of 4.9 m: 19.1 m of edge, 4.9 m of stop line', () => {
    const ring = [
      [0, 0],
      [6_000, 0],
      [6_000, 6_000],
      [1_100, 6_000],
      [0, 6_000],
    ] as const;
    const zone = zoneNamed(
      measureFloor(floorOf([slab(ring, ['wall', 'wall', 'stop', 'wall', 'wall'])], machine(0, 50, 0))),
    );
    expect(zone.faces.wall).toBeCloseTo(19.1, 9);
    expect(zone.faces.stop).toBeCloseTo(4.9, 9);
    expect(zone.stripM2).toBeCloseTo(24 * 0.05 - 4 * 0.05 * 0.05, 9);
  });
});
