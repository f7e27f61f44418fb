import initGeosJs from 'geos-wasm';
import type { Point, Ring } from '../../../src/geometry/floorShape.ts';
import type { PlaneSets } from './planeSets.ts';
import { isSimple, twiceArea, windingOf } from './ringTests.ts';

type Geos = Awaited<ReturnType<typeof initGeosJs>>;
type Geometry = number;

const POLYGON_COLLECTION = 7;

/** Sets by GEOS 3.13 (geos-wasm, LGPL): overlays on floats. `quadrantSegments` is for its own buffers. */
export async function geosSets(quadrantSegments: number): Promise<PlaneSets<Geometry>> {
  const geos = await initGeosJs();
  const { Module } = geos;
  const made = new Set<Geometry>();
  const kept = (geometry: Geometry, what: string): Geometry => {
    if (!geometry) throw new Error(`GEOS gave up on ${what}`);
    made.add(geometry);
    return geometry;
  };
  /** A handle that GEOS takes over, or that is freed at once. */
  const given = (geometry: Geometry): Geometry => {
    made.delete(geometry);
    return geometry;
  };
  const collection = (parts: readonly Geometry[]): Geometry => {
    const pointer = Module._malloc(Math.max(1, parts.length) * 4);
    Module.HEAPU32.set(parts, pointer / 4);
    const whole = kept(geos.GEOSGeom_createCollection(POLYGON_COLLECTION, pointer, parts.length), 'a collection');
    Module._free(pointer);
    return whole;
  };
  const united = (parts: readonly Geometry[]): Geometry => {
    const whole = collection(parts);
    const union = kept(geos.GEOSUnaryUnion(whole), 'a union');
    geos.GEOSGeom_destroy(given(whole));
    return union;
  };
  const polygon = (ring: Ring): Geometry =>
    geos.GEOSGeom_createPolygon(geos.GEOSGeom_createLinearRing(sequence(geos, [...ring, ring[0] as Point])), 0, 0);

  return {
    name: 'geos-wasm',
    fill: (ring) => (isSimple(ring) ? kept(polygon(ring), 'a ring') : united(woundFaces(geos, ring))),
    cover: (rings) => united(rings.map(polygon)),
    union: (sets) => united(sets.map((set) => geos.GEOSGeom_clone(set))),
    subtract: (from, what) => kept(geos.GEOSDifference(from, what), 'a difference'),
    intersect: (one, other) => kept(geos.GEOSIntersection(one, other), 'an intersection'),
    grow: (set, byMm) => kept(geos.GEOSBuffer(set, byMm, quadrantSegments), 'a buffer'),
    window: (set, box) => kept(geos.GEOSClipByRect(set, box.minX, box.minY, box.maxX, box.maxY), 'a window'),
    pieces: (set) =>
      Array.from({ length: geos.GEOSGetNumGeometries(set) }, (_, i) =>
        kept(geos.GEOSGeom_clone(geos.GEOSGetGeometryN(set, i)), 'a copy'),
      ).filter((piece) => readNumber(geos, (pointer) => geos.GEOSArea(piece, pointer)) > 0),
    outlines: (set) => outlines(geos, set),
    areaMm2: (set) => readNumber(geos, (pointer) => geos.GEOSArea(set, pointer)),
    lengthMm: (path, set) => {
      const line = geos.GEOSGeom_createLineString(sequence(geos, path));
      const inside = geos.GEOSIntersection(line, set);
      if (!inside) throw new Error('GEOS gave up on a line');
      const length = readNumber(geos, (pointer) => geos.GEOSLength(inside, pointer));
      geos.GEOSGeom_destroy(line);
      geos.GEOSGeom_destroy(inside);
      return length;
    },
    release: () => {
      for (const geometry of made) geos.GEOSGeom_destroy(geometry);
      made.clear();
    },
  };
}

function readNumber(geos: Geos, ask: (pointer: number) => number): number {
  const pointer = geos.Module._malloc(8);
  ask(pointer);
  const value = geos.Module.HEAPF64[pointer / 8] ?? NaN;
  geos.Module._free(pointer);
  return value;
}

function sequence(geos: Geos, points: readonly Point[]): number {
  const pointer = geos.Module._malloc(points.length * 16);
  const heap = geos.Module.HEAPF64;
  for (const [i, [x, y]] of points.entries()) {
    heap[pointer / 8 + 2 * i] = x;
    heap[pointer / 8 + 2 * i + 1] = y;
  }
  const made = geos.GEOSCoordSeq_copyFromBuffer(pointer, points.length, 0, 0);
  geos.Module._free(pointer);
  return made;
}

function pointsOf(geos: Geos, line: Geometry): Point[] {
  const coordinates = geos.GEOSGeom_getCoordSeq(line);
  const count = geos.GEOSGeomGetNumPoints(line);
  const pointer = geos.Module._malloc(count * 16);
  geos.GEOSCoordSeq_copyToBuffer(coordinates, pointer, 0, 0);
  const flat = geos.Module.HEAPF64.slice(pointer / 8, pointer / 8 + 2 * count);
  geos.Module._free(pointer);
  return Array.from({ length: count }, (_, i): Point => [flat[2 * i] ?? NaN, flat[2 * i + 1] ?? NaN]);
}

/** GEOS fills evenly and oddly; here its faces between the lines of a ring are kept where the ring winds about them. */
function woundFaces(geos: Geos, ring: Ring): Geometry[] {
  const { Module } = geos;
  const line = geos.GEOSGeom_createLineString(sequence(geos, [...ring, ring[0] as Point]));
  const noded = geos.GEOSUnaryUnion(line);
  const list = Module._malloc(4);
  Module.HEAPU32.set([noded], list / 4);
  const faces = geos.GEOSPolygonize(list, 1);
  Module._free(list);
  const wound: Geometry[] = [];
  for (let i = 0; i < geos.GEOSGetNumGeometries(faces); i += 1) {
    const face = geos.GEOSGetGeometryN(faces, i);
    const inside = geos.GEOSPointOnSurface(face);
    const x = readNumber(geos, (pointer) => geos.GEOSGeomGetX(inside, pointer));
    const y = readNumber(geos, (pointer) => geos.GEOSGeomGetY(inside, pointer));
    if (windingOf(ring, [x, y]) !== 0) wound.push(geos.GEOSGeom_clone(face));
    geos.GEOSGeom_destroy(inside);
  }
  for (const used of [line, noded, faces]) geos.GEOSGeom_destroy(used);
  return wound;
}

function outlines(geos: Geos, set: Geometry): Ring[] {
  const rings: Ring[] = [];
  for (let i = 0; i < geos.GEOSGetNumGeometries(set); i += 1) {
    const part = geos.GEOSGetGeometryN(set, i);
    if (geos.GEOSGeomTypeId(part) !== 3) continue;
    const outer = pointsOf(geos, geos.GEOSGetExteriorRing(part)).slice(1);
    if (outer.length > 2) rings.push(directed(outer, true));
    for (let hole = 0; hole < geos.GEOSGetNumInteriorRings(part); hole += 1) {
      rings.push(directed(pointsOf(geos, geos.GEOSGetInteriorRingN(part, hole)).slice(1), false));
    }
  }
  return rings;
}

function directed(ring: Ring, isOuter: boolean): Ring {
  return twiceArea(ring) > 0 === isOuter ? ring : ring.toReversed();
}
