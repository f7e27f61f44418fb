import {
  type FloorMeasure,
  type FloorShape,
  type MachineShape,
  type Point,
  REST,
  type Region,
  type Ring,
  type ZoneMeasure,
} from '../../src/geometry/floorShape.ts';
import { type DirectFace, bodiesOf, directFaces, distanceTo, netAt } from './directFaces.ts';
import type { Dice } from './dice.ts';
import { hasHairs } from './hairs.ts';
import { windingOf, withoutRefused } from './slowAreas.ts';

/*
 * Points against direct distances. At a point well clear of every drawn edge the plan itself says whether it is net
 * floor and in which zone; distances to the hard faces say, up to a hair, whether it can be strip, must be field, or
 * cannot be field:
 *
 *   within the strip's width of a certain face           not field
 *   beyond that of every possible face                   not strip
 *   under a head whose middle may stand, by every face   field
 *   no place for the middle of any head that covers it   not field
 */

/** Hair, in mm, that outlines of arcs and grids may be off; and as a share of the radius. */
const HAIR_MM = 1;
const HAIR_SHARE = 0.002;

/** Wrong points of an answer, in words. Outlines are asked for. */
export function sampledFaults(given: FloorShape, measure: FloorMeasure, dice: Dice, count: number): string[] {
  const shape = withoutRefused(given, measure.faults);
  const faces = hasHairs(shape) ? null : directFaces(shape);
  const edges = [...bodiesOf(shape), ...shape.zones.map(({ ring }) => ring)].flatMap(edgesOf);
  const box = boxOf(shape.slabs.flatMap(({ ring }) => ring));
  if (!box) return [];
  const faults: string[] = [];
  for (let i = 0; i < count; i += 1) {
    const at: Point = [dice.between(box[0] - 200, box[2] + 200), dice.between(box[1] - 200, box[3] + 200)];
    if (edges.some(([a, b]) => distanceTo(at, a, b) < HAIR_MM)) continue;
    const fault = pointFault(at, shape, faces, measure);
    if (fault) faults.push(`at ${at.join(' ')}: ${fault}`);
  }
  return faults;
}

function pointFault(
  at: Point,
  shape: FloorShape,
  faces: readonly DirectFace[] | null,
  measure: FloorMeasure,
): string | null {
  const found = measure.zones.flatMap((zone) => partsAt(zone, at).map((part) => `${zone.id} ${part}`));
  if (!netAt(shape, at)) return found.length === 0 ? null : `no floor, yet ${found.join(', ')}`;
  const zone = shape.zones.findLast(({ ring }) => windingOf(ring, at) !== 0);
  const id = zone?.id ?? REST;
  if (found.length !== 1) return `floor of ${id}, in ${found.length} parts: ${found.join(', ')}`;
  const part = (['field', 'strip', 'tight'] as const).find((one) => found[0] === `${id} ${one}`);
  if (!part) return `floor of ${id}, yet ${found[0]}`;
  if (!faces) return null;
  const answer = measure.zones.find((one) => one.id === id);
  // An engine that does not answer the fields of a cascade works with the first machine alone.
  const followers = answer?.fields ? (zone ? zone.followedBy : shape.restFollowedBy) : [];
  const crew = crewOf(shape, answer?.machine ?? null, followers ?? []);
  const wrong = partFault(part, at, crew, faces, shape);
  return wrong && `${part} of ${id}, ${wrong}`;
}

function crewOf(shape: FloorShape, first: string | null, followers: readonly string[]): MachineShape[] {
  if (first === null) return [];
  return [first, ...followers].flatMap((id) => shape.machines.find((one) => one.id === id) ?? []);
}

function partsAt(zone: ZoneMeasure, at: Point): string[] {
  const tight = zone.tight.filter(({ region }) => isIn(region, at)).map(() => 'tight');
  return [...(isIn(zone.field, at) ? ['field'] : []), ...(isIn(zone.strip, at) ? ['strip'] : []), ...tight];
}

/** Even-odd: regions have outer rings and holes, never one over the other. */
function isIn(region: Region, at: Point): boolean {
  return region.flat().filter((ring) => windingOf(ring, at) % 2 !== 0).length % 2 === 1;
}

function partFault(
  part: 'field' | 'strip' | 'tight',
  at: Point,
  crew: readonly MachineShape[],
  faces: readonly DirectFace[],
  shape: FloorShape,
): string | null {
  const last = crew.at(-1);
  if (!last) return part === 'tight' ? null : 'where no machine works';
  const strip = (face: DirectFace): number => distanceTo(at, face.a, face.b) - last.clearanceMm[face.kind] - last.lapMm;
  const outline = faces.filter((face) => face.isOnFloor);
  const inStrip = outline.find((face) => face.isCertain && strip(face) < -hairOf(last));
  if (part === 'field' && inStrip) return `${-strip(inStrip)} mm within the strip of a face (${inStrip.kind})`;
  const isBeyond = outline.every((face) => strip(face) > hairOf(last));
  if (part === 'strip' && isBeyond) return 'beyond the strip of every face';
  if (!isBeyond) return null;
  if (part === 'field') {
    return crew.some((machine) => mayCover(at, machine, faces)) ? null : 'where no head finds room';
  }
  return isFree(shape) && crew.some((machine) => mustCover(at, machine, faces, shape))
    ? 'under a head that has room'
    : null;
}

function hairOf(machine: MachineShape): number {
  return HAIR_MM + HAIR_SHARE * (machine.headRadiusMm + Math.max(...Object.values(machine.clearanceMm)));
}

/** Without entrances or passages that bar, everything that a machine can stand on counts as reached. */
function isFree(shape: FloorShape): boolean {
  const passages = [
    ...shape.walls.flatMap(({ gaps }) => gaps),
    ...shape.slabs.flatMap((slab) => slab.passages.filter(Boolean)),
  ];
  return shape.entrances.length === 0 && passages.length === 0;
}

const AROUND = 24;
const SHARES = [0, 0.25, 0.5, 0.75, 1];

/** Places for the middle of a head that covers a point. */
function* middles([x, y]: Point, radiusMm: number): Generator<Point> {
  for (const share of SHARES) {
    for (let i = 0; i < (share === 0 ? 1 : AROUND); i += 1) {
      const angle = (2 * Math.PI * i) / AROUND;
      yield [x + share * radiusMm * Math.cos(angle), y + share * radiusMm * Math.sin(angle)];
    }
  }
}

/** What a middle has to spare beyond the stand-off of each face; distance to a face grows no faster than the way gone. */
function spare(at: Point, faces: readonly DirectFace[], standOff: (face: DirectFace) => number): number {
  return Math.min(...faces.map((face) => distanceTo(at, face.a, face.b) - standOff(face)));
}

/** False only where the head surely finds no room: between two tried middles none can have more to spare than the step. */
function mayCover(at: Point, machine: MachineShape, faces: readonly DirectFace[]): boolean {
  const { headRadiusMm, clearanceMm } = machine;
  const certain = faces.filter((face) => face.isCertain && face.isOnFloor);
  const step = headRadiusMm * Math.hypot(0.125, Math.PI / AROUND);
  const need = (face: DirectFace): number => headRadiusMm + clearanceMm[face.kind];
  for (const middle of middles(at, headRadiusMm)) {
    if (spare(middle, certain, need) > -step - hairOf(machine)) return true;
  }
  return false;
}

function mustCover(at: Point, machine: MachineShape, faces: readonly DirectFace[], shape: FloorShape): boolean {
  const { headRadiusMm, clearanceMm, passageMm } = machine;
  const hair = hairOf(machine);
  if (headRadiusMm <= hair) return false;
  const need = (face: DirectFace): number => Math.max(headRadiusMm + clearanceMm[face.kind], passageMm / 2);
  for (const middle of middles(at, headRadiusMm - hair)) {
    if (spare(middle, faces, need) > hair && netAt(shape, middle)) return true;
  }
  return false;
}

function edgesOf(ring: Ring): [Point, Point][] {
  return ring.map((a, i) => [a, ring[(i + 1) % ring.length] ?? a]);
}

function boxOf(points: readonly Point[]): readonly [number, number, number, number] | null {
  if (points.length === 0) return null;
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)];
}
