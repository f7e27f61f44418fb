/**
 * Sources: the scan `scan-office-level-1.png` with its truth file (geometry of an office model published under MPL 2.0 with
 * engine_web-ifc), and the storeys a and c of MLSTRUCT-FP (MIT), whose publisher states pixels per metre, slab area and perimeter.
 * See tests/data/plan-scans/README.md and tests/data/floor-layouts/README.md.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { fitTrue, trueMatrix, type KnownDimension } from '../../src/geometry/fitTrue.ts';
import type { Point } from '../../src/geometry/floorShape.ts';
import { ringToGrid } from '../../src/geometry/grid.ts';
import { perimeter, ringArea } from '../../src/geometry/ring.ts';
import { mapPoint } from '../../src/geometry/transform.ts';

function data(path: string): unknown {
  return JSON.parse(readFileSync(new URL(`../data/${path}`, import.meta.url), 'utf8'));
}

/** Trues the page and traces the outline on it, as the app does: pixels to floor, then to the plan's grid. */
function traced(dimensions: readonly KnownDimension[], outlinePx: readonly Point[]) {
  const result = fitTrue(dimensions);
  if (!result.ok) throw new Error(result.fault);
  const matrix = trueMatrix(result.fit, [0, 0]);
  const ring = ringToGrid(outlinePx.map((at) => mapPoint(matrix, at)));
  return { areaM2: ringArea(ring) / 1e6, perimeterM: perimeter(ring) / 1e3, fit: result.fit };
}

interface ScanTruth {
  readonly outlinePx: readonly Point[];
  readonly trueArea_m2: number;
  readonly truePerimeter_m: number;
  readonly holes_m: readonly (readonly Point[])[];
  readonly outline_m: readonly Point[];
  readonly dimensions: readonly { readonly value_m: number; readonly endpointsPx: readonly [Point, Point] }[];
  readonly expected: { readonly errorPct: { readonly dimension1: number; readonly dimension2: number } };
}

describe('scan of an office level, stretched by its scanner', () => {
  const truth = data('plan-scans/scan-office-level-1.truth.json') as ScanTruth;
  const known = truth.dimensions.map(({ value_m, endpointsPx }): KnownDimension => {
    return { from: endpointsPx[0], to: endpointsPx[1], lengthMm: value_m * 1000, by: 'mouse' };
  });
  /** The stated area is of the room less its column. */
  const columnM2 = truth.holes_m.reduce((total, hole) => total + ringArea(hole), 0);

  test('two dimensions give area and perimeter within 0.05 %', () => {
    const { areaM2, perimeterM, fit } = traced(known, truth.outlinePx);
    expect(Math.abs((areaM2 - columnM2) / truth.trueArea_m2 - 1)).toBeLessThan(0.0005);
    expect(Math.abs(perimeterM / perimeter(truth.outline_m) - 1)).toBeLessThan(0.0005);
    expect(fit.oneScale).toBe(false);
    // The scanner stretched by 0.997 and 1.003: 0.6 % between the two directions.
    expect(fit.stretchPct).toBeCloseTo(0.6, 1);
  });

  test('one dimension is wrong by what the truth file says it must be', () => {
    const first = traced([known[0] as KnownDimension], truth.outlinePx);
    const second = traced([known[1] as KnownDimension], truth.outlinePx);
    expect((first.areaM2 - columnM2) / truth.trueArea_m2 - 1).toBeCloseTo(truth.expected.errorPct.dimension1 / 100, 4);
    expect((second.areaM2 - columnM2) / truth.trueArea_m2 - 1).toBeCloseTo(truth.expected.errorPct.dimension2 / 100, 4);
  });

  test('the plus/minus stated for picks of 1.5 px covers the error of picks that are off by as much', () => {
    const shifted = known.map((one) => ({ ...one, to: [one.to[0] + 1.5, one.to[1] - 1.5] as const }));
    const { areaM2, fit } = traced(shifted, truth.outlinePx);
    expect(Math.abs((areaM2 - columnM2) / truth.trueArea_m2 - 1) * 100).toBeLessThan(fit.areaPlusMinusPct);
  });
});

interface Storey {
  readonly image: { readonly pixelsPerMetre: number };
  readonly checks: { readonly slabArea: number; readonly slabPerimeter: number };
  readonly slab: { readonly outer: readonly Point[] };
}

describe.each(['storey-a', 'storey-c'])('drawing of %s, trued on two edges of its outline', (name) => {
  const storey = data(`floor-layouts/${name}.json`) as Storey;
  const { pixelsPerMetre } = storey.image;
  const outlinePx = storey.slab.outer.map(([x, y]): Point => [
    Math.round(x * pixelsPerMetre),
    Math.round(-y * pixelsPerMetre),
  ]);

  /** The longest edge along x and the longest along y, read off the outline in whole pixels. */
  const edges = outlinePx.map((from, i): KnownDimension => {
    const j = (i + 1) % outlinePx.length;
    const [a, b] = [storey.slab.outer[i] as Point, storey.slab.outer[j] as Point];
    return { from, to: outlinePx[j] as Point, lengthMm: Math.hypot(b[0] - a[0], b[1] - a[1]) * 1000, by: 'mouse' };
  });
  const along = edges.filter((one) => one.from[1] === one.to[1]).toSorted((a, b) => b.lengthMm - a.lengthMm)[0];
  const across = edges.filter((one) => one.from[0] === one.to[0]).toSorted((a, b) => b.lengthMm - a.lengthMm)[0];

  test('area and perimeter as published, within the whole pixels that were picked', () => {
    const { areaM2, perimeterM, fit } = traced([along as KnownDimension, across as KnownDimension], outlinePx);
    expect(fit.oneScale).toBe(false);
    expect(Math.abs(areaM2 / storey.checks.slabArea - 1)).toBeLessThan(0.0005);
    expect(Math.abs(perimeterM / storey.checks.slabPerimeter - 1)).toBeLessThan(0.0005);
    expect(Math.abs(1000 / fit.sx / pixelsPerMetre - 1)).toBeLessThan(0.0005);
  });
});
