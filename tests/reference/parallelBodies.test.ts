import { describe, expect, it } from 'vitest';
import { measureFloor } from '../../src/geometry/measureFloor.ts';
import { column, floorOf, machine, rectangle, slab, zoneNamed } from '../support/floors.ts';

/*
 * Closed forms for strips and cusps. Source: Steiner's formula for parallel bodies,
 * A(K + rB) = A(K) + r L(K) + pi r^2 for convex K, and plane geometry of circles in corners.
 * Millimetres in, m2 out; tolerance 1e-6 of the net floor: the grid of 1/320 mm.
 */
const PI = Math.PI;

describe('Steiner: room of W x H', () => {
  const [W, H] = [12_000, 8_000];
  it('strip is 2 (W + H) w - 4 w^2', () => {
    for (const w of [75, 100, 137.5]) {
      const zone = zoneNamed(measureFloor(floorOf([slab(rectangle(0, 0, W, H))], machine(250, w, 0))));
      expect(zone.stripM2).toBeCloseTo((2 * (W + H) * w - 4 * w * w) / 1e6, 6);
      expect(zone.faces.wall).toBeCloseTo(40, 9);
      expect([zone.innerCorners, zone.outerCorners, zone.faces.hidden]).toEqual([4, 0, 0]);
    }
  });
  it('tight with w = c is (4 - pi) r^2 in four cusps', () => {
    const zone = zoneNamed(measureFloor(floorOf([slab(rectangle(0, 0, W, H))], machine(250, 75, 0))));
    expect(zone.tightM2).toBeCloseTo(((4 - PI) * 250 * 250) / 1e6, 5);
    expect(zone.tight.map((piece) => piece.kind)).toEqual(['gap', 'gap', 'gap', 'gap']);
    expect(zone.fieldM2 + zone.stripM2 + zone.tightM2).toBeCloseTo(96, 6);
  });
});

describe('Steiner: column of side a in the field', () => {
  it('adds a strip of 4 a c + pi c^2', () => {
    const [a, c] = [500, 100];
    const room = slab(rectangle(0, 0, 12_000, 8_000));
    const bare = zoneNamed(measureFloor(floorOf([room], machine(250, c, 0))));
    const zone = zoneNamed(
      measureFloor(floorOf([room], machine(250, c, 0), { solids: [column('b1', 5000, 4000, a)] })),
    );
    expect(zone.stripM2 - bare.stripM2).toBeCloseTo((4 * a * c + PI * c * c) / 1e6, 6);
    expect(zone.faces.obstruction).toBeCloseTo(2, 9);
    expect(zone.outerCorners).toBe(4);
    expect(zone.tightM2).toBeCloseTo(bare.tightM2, 6);
    expect(zone.netM2).toBeCloseTo(95.75, 9);
  });
});

describe('Steiner: L-shaped room', () => {
  it('strip is L w - 5 w^2 + pi w^2 / 4, tight 5 (1 - pi / 4) r^2', () => {
    const ring = [
      [0, 0],
      [10_000, 0],
      [10_000, 5_000],
      [6_000, 5_000],
      [6_000, 8_000],
      [0, 8_000],
    ] as const;
    const [w, r, L] = [100, 250, 36_000];
    const zone = zoneNamed(measureFloor(floorOf([slab(ring)], machine(r, w, 0))));
    expect(zone.stripM2).toBeCloseTo((L * w - 5 * w * w + (PI * w * w) / 4) / 1e6, 6);
    expect(zone.tightM2).toBeCloseTo((5 * (1 - PI / 4) * r * r) / 1e6, 5);
    expect([zone.innerCorners, zone.outerCorners]).toEqual([5, 1]);
  });
});

describe('Steiner: a door of width D', () => {
  const ring = [
    [0, 0],
    [6_000, 0],
    [6_000, 6_000],
    [3_500, 6_000],
    [2_500, 6_000],
    [0, 6_000],
  ] as const;
  const [L, D, c] = [24_000, 1_000, 100];
  it('that runs on leaves a strip of (L - D) c - 4 c^2 + pi c^2 / 2', () => {
    const faces = ['wall', 'wall', 'wall', 'run', 'wall', 'wall'] as const;
    const zone = zoneNamed(measureFloor(floorOf([slab(ring, faces)], machine(250, c, 0))));
    expect(zone.stripM2).toBeCloseTo(((L - D) * c - 4 * c * c + (PI * c * c) / 2) / 1e6, 6);
    expect(zone.faces.wall).toBeCloseTo(23, 9);
    expect(zone.faces.stop).toBe(0);
  });
  it('that stops leaves L c - 4 c^2, D of it stop line', () => {
    const faces = ['wall', 'wall', 'wall', 'stop', 'wall', 'wall'] as const;
    const zone = zoneNamed(measureFloor(floorOf([slab(ring, faces)], machine(250, c, 0))));
    expect(zone.stripM2).toBeCloseTo((L * c - 4 * c * c) / 1e6, 6);
    expect(zone.faces.stop).toBeCloseTo(1, 9);
    expect(zone.faces.wall).toBeCloseTo(23, 9);
  });
});
