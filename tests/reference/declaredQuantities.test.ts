import { describe, expect, it } from 'vitest';
import type { Ring } from '../../src/geometry/floorShape.ts';
import { subtract, union } from '../../src/geometry/clip.ts';
import { measureFloor } from '../../src/geometry/measureFloor.ts';
import { perimeter, regionArea, ringArea, tidyRing } from '../../src/geometry/ring.ts';
import cases from '../data/ifc-quantities/cases.json' with { type: 'json' };
import facets from '../data/ifc-quantities/facets.json' with { type: 'json' };
import variants from '../data/ifc-quantities/variants.json' with { type: 'json' };
import { floorOf, machine, regionOf, slab } from '../support/floors.ts';

/*
 * Areas and perimeters declared by authoring programs in published ISO 16739 models (CC BY 4.0 and CDDL 1.0;
 * origins in tests/data/ifc-quantities/README.md). Tolerance 1e-6, but for wedge-01: a slab sloped for
 * drainage, which the model measures in the slope (0.003 %).
 */
const MM: Readonly<Record<string, number>> = { m: 1000, mm: 1, ft: 304.8 };

function inMm(ring: readonly (readonly number[])[], unit = 'm'): Ring {
  const factor = MM[unit] ?? NaN;
  return ring.map(([x = NaN, y = NaN]) => [x * factor, -y * factor]);
}

describe('ISO 16739 models, declared quantities', () => {
  it.each(cases.cases.map((one) => [one.id, one] as const))('%s: area and perimeter', (id, one) => {
    const outer = inMm(one.outer);
    const holes = one.holes.map((hole) => inMm(hole));
    const area = (ringArea(outer) - holes.reduce((sum, hole) => sum + ringArea(hole), 0)) / 1e6;
    const tolerance = id === 'wedge-01' ? 3e-5 : 1e-6;
    expect(Math.abs(area / one.declaredArea - 1)).toBeLessThan(tolerance);
    const holesRound = one.perimeterIncludesHoles ? holes.reduce((sum, hole) => sum + perimeter(hole), 0) : 0;
    const round = (perimeter(outer) + holesRound) / 1000;
    // A model may declare no perimeter; then there is nothing to compare with.
    expect(Math.abs(round / (one.declaredPerimeter ?? round) - 1)).toBeLessThan(1e-6);
  });

  it.each(cases.cases.map((one) => [one.id, one] as const))('%s: the same through the whole engine', (id, one) => {
    const solids = one.holes.map((hole, i) => ({ id: `h${i}`, ring: inMm(hole), solid: true }));
    const measure = measureFloor(floorOf([slab(inMm(one.outer))], machine(250, 50, 50), { solids }));
    expect(measure.faults).toEqual([]);
    expect(Math.abs(measure.netM2 / one.declaredArea - 1)).toBeLessThan(id === 'wedge-01' ? 3e-5 : 2e-6);
    const [rest] = measure.zones;
    expect(Math.abs((rest?.fieldM2 ?? 0) + (rest?.stripM2 ?? 0) + (rest?.tightM2 ?? 0) - measure.netM2)).toBeLessThan(
      1e-4 * measure.netM2,
    );
  });

  it.each(variants.cases.map((one) => [one.id, one] as const))('%s: turned, moved or in another unit', (_id, one) => {
    const cut = subtract(
      [[inMm(one.outer, one.unit)]],
      one.holes.map((hole) => [inMm(hole, one.unit)]),
    );
    const declared =
      one.areaUnit === 'ft2' ? one.area * 0.09290304 : one.areaUnit === 'mm2' ? one.area / 1e6 : one.area;
    expect(Math.abs(regionArea(regionOf(cut)) / 1e6 / declared - 1)).toBeLessThan(1e-5);
  });

  it.each(facets.cases.map((one) => [one.id, one] as const))('%s: facets unite to one outline', (_id, one) => {
    const whole = regionOf(union(one.facets.map((facet) => [[inMm(facet)]])));
    expect(whole).toHaveLength(one.expected.polygons);
    expect(whole[0]).toHaveLength(1 + one.expected.holes);
    expect(tidyRing(whole[0]?.[0] ?? [])).toHaveLength(one.expected.cornersWithoutCollinear);
    expect(regionArea(whole) / 1e6).toBeCloseTo(one.expected.area, 3);
  });

  it('has read all 22 cases', () => {
    expect(cases.cases).toHaveLength(22);
  });
});
