import { area as sphericalArea } from '@turf/area';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Ring } from '../../src/geometry/floorShape.ts';
import { lonLatArea } from '../../src/geometry/geodesic.ts';
import { ringArea } from '../../src/geometry/ring.ts';
import footprints from '../data/geo-footprints/footprints.json' with { type: 'json' };

/* Published footprints with areas on the WGS84 ellipsoid (PDDL 1.0; origins in tests/data/geo-footprints/README.md). */
function ringsOf(one: (typeof footprints.features)[number]): Ring[] {
  return one.geometry.coordinates.map((ring) => ring.slice(0, -1).map(([x = NaN, y = NaN]) => [x, y] as const));
}

describe('footprints in longitude and latitude', () => {
  const polygons = footprints.features.filter((one) => one.geometry.type === 'Polygon');
  it.each(polygons.map((one) => [one.id, one] as const))('%s: area within 20 ppm of the ellipsoid', (_id, one) => {
    const answer = lonLatArea(ringsOf(one));
    const areaM2 = answer.ok ? answer.areaM2 : NaN;
    expect(Math.abs(areaM2 / one.properties.checkArea_m2 - 1)).toBeLessThan(2e-5);
  });
  it.each(polygons.map((one) => [one.id, one] as const))(
    '%s: the guard alone is low by 0.16 to 0.33 %%',
    (_id, one) => {
      const low =
        sphericalArea({ type: 'Polygon', coordinates: one.geometry.coordinates }) / one.properties.checkArea_m2 - 1;
      expect(low).toBeLessThan(-0.0015);
      expect(low).toBeGreaterThan(-0.0033);
    },
  );
  it('refuses metres read as degrees, and places off the globe', () => {
    const [first] = polygons;
    const rings = first ? ringsOf(first) : [];
    expect(
      lonLatArea([
        [
          [0, 0],
          [24, 0],
          [24, 16],
          [0, 16],
        ],
      ]),
    ).toEqual({ ok: false, code: 'tooWide' });
    expect(lonLatArea(rings.map((ring) => ring.map(([x, y]) => [y, x] as const)))).toEqual({
      ok: false,
      code: 'notLonLat',
    });
    expect(lonLatArea([])).toEqual({ ok: false, code: 'noArea' });
  });
});

describe('planar area against @turf/area', () => {
  it('agrees on floors mapped to degrees around 0, 0 with R = 6,371,008.8 m', () => {
    const degree = (6_371_008.8 * Math.PI) / 180;
    const star = fc.array(fc.double({ min: 5, max: 40, noNaN: true }), { minLength: 3, maxLength: 24 });
    fc.assert(
      fc.property(star, (radii) => {
        const ring: Ring = radii.map((r, i) => [
          r * Math.cos((2 * Math.PI * i) / radii.length),
          r * Math.sin((2 * Math.PI * i) / radii.length),
        ]);
        const degrees = [...ring, ...ring.slice(0, 1)].map(([x, y]) => [x / degree, y / degree]);
        expect(sphericalArea({ type: 'Polygon', coordinates: [degrees] }) / ringArea(ring)).toBeCloseTo(1, 7);
      }),
    );
  });
});
