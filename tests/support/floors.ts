import type { ClipResult } from '../../src/geometry/clip.ts';
import type {
  FaceKind,
  FloorMeasure,
  FloorShape,
  MachineShape,
  Point,
  Region,
  Ring,
  SlabShape,
  SolidShape,
  ZoneMeasure,
} from '../../src/geometry/floorShape.ts';

/** Builders of floors for tests: plain, invented, in mm. */

export function rectangle(x: number, y: number, width: number, height: number): Ring {
  return [
    [x, y],
    [x + width, y],
    [x + width, y + height],
    [x, y + height],
  ];
}

export function slab(ring: Ring, faces: readonly FaceKind[] = ring.map(() => 'wall'), id = 'slab'): SlabShape {
  return { id, ring, faces, passages: ring.map(() => null) };
}

export function column(id: string, x: number, y: number, width: number, height = width): SolidShape {
  return { id, ring: rectangle(x, y, width, height), solid: true };
}

/** A machine with one clearance for all faces; drops too unless told. Its passage is what its head needs. */
export function machine(
  headRadiusMm: number,
  clearance: number,
  lapMm: number,
  more: Partial<MachineShape> = {},
): MachineShape {
  return {
    id: 'm',
    headRadiusMm,
    clearanceMm: { wall: clearance, obstruction: clearance, drop: clearance, stop: clearance },
    lapMm,
    passageMm: 2 * (headRadiusMm + clearance),
    heightMm: 1200,
    ...more,
  };
}

/** One slab, one machine for everything; the rest as given. */
export function floorOf(slabs: readonly SlabShape[], one: MachineShape, more: Partial<FloorShape> = {}): FloorShape {
  return {
    slabs,
    walls: [],
    solids: [],
    outOfScope: [],
    zones: [],
    restMachine: one.id,
    findings: [],
    lines: [],
    machines: [one],
    entrances: [],
    ...more,
  };
}

export function zoneNamed(measure: FloorMeasure, id = 'rest'): ZoneMeasure {
  const zone = measure.zones.find((one) => one.id === id);
  if (!zone) throw new Error(`no zone ${id}`);
  return zone;
}

/** Sum over zones, for laws about the whole floor. */
export function total(measure: FloorMeasure, of: (zone: ZoneMeasure) => number): number {
  return measure.zones.reduce((sum, zone) => sum + of(zone), 0);
}

export function turned(at: Point, radians: number): Point {
  const [c, s] = [Math.cos(radians), Math.sin(radians)];
  return [at[0] * c - at[1] * s, at[0] * s + at[1] * c];
}

/** The region of a clip that must have worked. */
export function regionOf(result: ClipResult): Region {
  if (!result.ok) throw new Error(result.code);
  return result.region;
}
