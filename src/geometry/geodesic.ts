import { area as sphericalArea } from '@turf/area';
import type { Point, Ring } from './floorShape.ts';
import { ringArea } from './ring.ts';

/*
 * Outlines that come as longitude and latitude in degrees (WGS84), as map data does.
 *
 *   degrees --> local plane with the ellipsoid's own radii at the outline --> planar area: the number
 *           \-> @turf/area on a sphere, its bias at that latitude taken off --> must agree: the guard
 */

/** WGS84 ellipsoid: semi-major axis in m and first eccentricity squared. NGA.STND.0036. */
const AXIS_M = 6_378_137;
const ECCENTRICITY_2 = 0.006_694_379_990_14;
/** Radius of the sphere that @turf/area takes, in m (mean earth radius, IUGG). */
const SPHERE_M = 6_371_008.8;
/** A floor spans less than this many degrees; metres read as degrees span far more. */
const WIDEST_DEG = 0.2;
/** How far number and guard may differ, as a share. */
const AGREE = 5e-4;

export type LonLatFault = 'notLonLat' | 'tooWide' | 'noArea' | 'guardDisagrees';

/** A plane about one place: maps [longitude, latitude] in degrees to floor mm, x east, y south (down the page). */
export interface LonLatPlane {
  toFloor(lonLat: Point): Point;
  /** Area on the sphere of the guard over area on the ellipsoid, here. */
  readonly sphereShare: number;
}

/** Local plane with the radii of the WGS84 ellipsoid at its middle; within 1e-5 over a few km. */
export function lonLatPlane([lon0, lat0]: Point): LonLatPlane {
  const lat = radians(lat0);
  const bend = 1 - ECCENTRICITY_2 * Math.sin(lat) ** 2;
  const acrossM = AXIS_M / Math.sqrt(bend);
  const alongM = (AXIS_M * (1 - ECCENTRICITY_2)) / bend ** 1.5;
  return {
    toFloor: ([x, y]) => [radians(x - lon0) * acrossM * Math.cos(lat) * 1000, -radians(y - lat0) * alongM * 1000],
    sphereShare: SPHERE_M ** 2 / (acrossM * alongM),
  };
}

/**
 * Area in m2 of an outline and its holes in degrees of longitude and latitude. Faults: not degrees, wider
 * than a floor can be (metres taken for degrees), no area, or the spherical guard disagrees by more than
 * 0.05 % after its bias (low by 0.16 % at 42 N, 0.32 % at 49 N) is taken off.
 */
export function lonLatArea(
  rings: readonly Ring[],
): { readonly ok: true; readonly areaM2: number } | { readonly ok: false; readonly code: LonLatFault } {
  const corners = rings[0] ?? [];
  if (!rings.flat().every(isLonLat)) return { ok: false, code: 'notLonLat' };
  const [lons, lats] = [corners.map((p) => p[0]), corners.map((p) => p[1])];
  const [west, east] = [Math.min(...lons), Math.max(...lons)];
  const [south, north] = [Math.min(...lats), Math.max(...lats)];
  if (east - west > WIDEST_DEG || north - south > WIDEST_DEG) return { ok: false, code: 'tooWide' };
  const plane = lonLatPlane([(west + east) / 2, (south + north) / 2]);
  const [outer = 0, ...holes] = rings.map((ring) => ringArea(ring.map((p) => plane.toFloor(p))) / 1e6);
  const areaM2 = outer - holes.reduce((sum, hole) => sum + hole, 0);
  if (!(areaM2 > 0)) return { ok: false, code: 'noArea' };
  const guardM2 = guardArea(rings) / plane.sphereShare;
  return Math.abs(guardM2 / areaM2 - 1) <= AGREE ? { ok: true, areaM2 } : { ok: false, code: 'guardDisagrees' };
}

function guardArea(rings: readonly Ring[]): number {
  const closed = rings.map((ring) => [...ring, ...ring.slice(0, 1)].map(([x, y]) => [x, y]));
  return sphericalArea({ type: 'Polygon', coordinates: closed });
}

function isLonLat([lon, lat]: Point): boolean {
  return Math.abs(lon) <= 180 && Math.abs(lat) <= 90;
}

function radians(degrees: number): number {
  return (degrees * Math.PI) / 180;
}
