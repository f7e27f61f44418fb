import GeometryFactory from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';
import GeoJSONReader from 'jsts/org/locationtech/jts/io/GeoJSONReader.js';
import OverlayOp from 'jsts/org/locationtech/jts/operation/overlay/OverlayOp.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type ClipResult, intersect, subtract, union } from '../../src/geometry/clip.ts';
import { ringToGrid } from '../../src/geometry/grid.ts';
import type { Region, Ring } from '../../src/geometry/floorShape.ts';
import { perimeter, regionArea } from '../../src/geometry/ring.ts';
import failures from '../data/geometry/library-failures.json' with { type: 'json' };
import { regionOf } from '../support/floors.ts';

/* Inputs on which polygon libraries threw or were wrong (tests/data/geometry/README.md), and jsts as a second implementation. */
type Case = (typeof failures)[number];

const asRegion = (polygons: Case['A']): Region => polygons as unknown as Region;

function areaOf(result: ClipResult): number {
  return regionArea(regionOf(result));
}

/** What snapping new corners to 1/320 mm can change: 0.005 mm along all edges, mm2. */
function gridSlack(a: Region, b: Region): number {
  return [...a, ...b].flat().reduce((sum, ring) => sum + 0.005 * perimeter(ring), 1);
}

describe('known failures of the libraries', () => {
  it.each(failures.map((one) => [`${one.family} ${one.seed} ${one.op}`, one] as const))(
    '%s: areas add up',
    (_name, one) => {
      // Operands may overlap themselves: each is united first, as every region in the engine is.
      const a = regionOf(union([asRegion(one.A)]));
      const b = regionOf(union([asRegion(one.B)]));
      const both = areaOf(intersect(a, b));
      const onlyA = areaOf(subtract(a, b));
      const onlyB = areaOf(subtract(b, a));
      const [areaA, areaB] = [regionArea(a), regionArea(b)];
      const slack = 1e-6 * (areaA + areaB) + 100;
      expect(Math.abs(both + onlyA - areaA)).toBeLessThan(slack);
      expect(Math.abs(both + onlyB - areaB)).toBeLessThan(slack);
      expect(Math.abs(areaOf(union([a, b])) - both - onlyA - onlyB)).toBeLessThan(slack);
    },
  );

  const recorded = failures.filter((one) => one.kind.startsWith('WRONG') && one.op !== 'xor');
  it.each(recorded.map((one) => [`${one.family} ${one.seed}`, one] as const))(
    '%s: the recorded right answer',
    (_name, one) => {
      const right = Number(/geos (\S+)/u.exec(one.kind)?.[1]);
      const a = regionOf(union([asRegion(one.A)]));
      const b = regionOf(union([asRegion(one.B)]));
      const answers: Readonly<Record<string, () => ClipResult>> = {
        difference: () => subtract(a, b),
        intersection: () => intersect(a, b),
        union: () => union([a, b]),
      };
      expect(areaOf(answers[one.op]?.() ?? { ok: false, code: 'clipFailed' }) / right).toBeCloseTo(1, 5);
    },
  );
});

describe('what polygon-clipping is slow at', () => {
  const spoke = (i: number, count: number): Ring => {
    const at = (k: number): readonly [number, number] => [
      10_000 * Math.cos((2 * Math.PI * k) / count),
      10_000 * Math.sin((2 * Math.PI * k) / count),
    ];
    return [[0, 0], at(i), at(i + 0.5)];
  };
  it('1,000 polygons about one corner unite in time', () => {
    const start = performance.now();
    const area = areaOf(union([Array.from({ length: 1000 }, (_, i) => [spoke(i, 1000)])]));
    expect(area / (1000 * 0.5 * 1e8 * Math.sin(Math.PI / 1000))).toBeCloseTo(1, 4);
    expect(performance.now() - start).toBeLessThan(6000);
  });
  it('500 nested squares unite in time', () => {
    const start = performance.now();
    const square = (s: number): Ring => [
      [-s, -s],
      [s, -s],
      [s, s],
      [-s, s],
    ];
    expect(areaOf(union([Array.from({ length: 500 }, (_, i) => [square(10 * (i + 1))])]))).toBe(1e8);
    expect(performance.now() - start).toBeLessThan(6000);
  });
});

describe('against jsts, 300 random unions and differences', () => {
  const reader = new GeoJSONReader(new GeometryFactory());
  const read = (region: Region) =>
    reader.read({
      type: 'MultiPolygon',
      coordinates: region.map((polygon) => polygon.map((ring) => [...ring, ...ring.slice(0, 1)])),
    });
  const star = fc
    .record({
      x: fc.integer({ min: 0, max: 6000 }),
      y: fc.integer({ min: 0, max: 6000 }),
      radii: fc.array(fc.integer({ min: 800, max: 4000 }), { minLength: 3, maxLength: 12 }),
    })
    .map(({ x, y, radii }): Region => [
      [
        ringToGrid(
          radii.map((r, i) => [
            x + r * Math.cos((2 * Math.PI * i) / radii.length),
            y + r * Math.sin((2 * Math.PI * i) / radii.length),
          ]),
        ),
      ],
    ]);
  it.each([
    ['union', OverlayOp.UNION, (a: Region, b: Region) => union([a, b])],
    ['difference', OverlayOp.DIFFERENCE, subtract],
    ['intersection', OverlayOp.INTERSECTION, intersect],
  ] as const)('%s', (_name, code, ours) => {
    fc.assert(
      fc.property(star, star, (a, b) => {
        const theirs = OverlayOp.overlayOp(read(a), read(b), code).getArea();
        expect(Math.abs(areaOf(ours(a, b)) - theirs)).toBeLessThan(gridSlack(a, b));
      }),
      { numRuns: 100 },
    );
  });
  it('area(A) = area(A and B) + area(A less B)', () => {
    fc.assert(
      fc.property(star, star, (a, b) => {
        const whole = areaOf(intersect(a, b)) + areaOf(subtract(a, b));
        expect(Math.abs(whole - regionArea(a))).toBeLessThan(gridSlack(a, b));
      }),
    );
  });
});
