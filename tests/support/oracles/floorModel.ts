import { type FloorShape, type MachineShape, type Point, REST, type Ring } from '../../../src/geometry/floorShape.ts';
import { apronsOf, skinsOf } from './aprons.ts';
import { areaTrueOffset } from './areaTrueOffset.ts';
import { enteredPieces } from './enteredPieces.ts';
import type { OracleAnswers, PartAreas } from './oracle.ts';
import type { PlaneSets } from './planeSets.ts';
import { isSimple } from './ringTests.ts';

/** A gap of exactly the width needed counts as passed: the way in is looked for with a machine this much smaller, in mm. */
const BIAS_MM = 0.25;
const APRON_BEYOND_MM = 200;

/** What the model needs of a library: its sets, and how a set grows (positive) or shrinks by a disc. */
export interface Library<S> {
  readonly sets: PlaneSets<S>;
  /** How much smaller, in mm, the machine is taken that looks for ways in; 0 spares one offset. */
  readonly biasMm: number;
  grow(set: S, byMm: number): S;
}

/** Grows with sectors of true area, so many segments a circle. */
export function areaTrueLibrary<S>(sets: PlaneSets<S>, segments: number): Library<S> {
  return { sets, biasMm: BIAS_MM, grow: (set, byMm) => areaTrueOffset(sets, set, byMm, segments) };
}

/** The parts of the whole floor. */
export interface FloorParts<S> {
  readonly net: S;
  readonly raw: S;
  readonly band: S;
  readonly field: S;
}

/**
 * The model of oracle.ts by any library: areas in m2. The shape is one that `beyondOracles` lets through.
 * Throws what the library throws; all it made is released.
 */
export function modelAnswers<S>(given: FloorShape, library: Library<S>): OracleAnswers {
  const { sets } = library;
  try {
    const shape = aboutOrigin(given);
    const parts = floorParts(shape, library);
    const zones: Record<string, PartAreas> = {};
    for (const { id, set } of zoneSets(shape, parts.net, sets)) {
      const inZone = (part: S): S => sets.intersect(part, set);
      zones[id] = partAreas(sets, {
        net: inZone(parts.net),
        raw: inZone(parts.raw),
        band: inZone(parts.band),
        field: inZone(parts.field),
      });
    }
    return { ...partAreas(sets, parts), zones };
  } finally {
    sets.release();
  }
}

export function floorParts<S>(shape: FloorShape, library: Library<S>): FloorParts<S> {
  const { sets, grow, biasMm } = library;
  const machine = shape.machines[0] as MachineShape;
  const clearMm = machine.clearanceMm.wall;
  const standMm = machine.headRadiusMm + clearMm;

  const gross = filled(shape.slabs, sets);
  const bodies = sets.union(bodySets(shape, sets));
  const standing = sets.subtract(gross, bodies);
  const net = shape.outOfScope.length > 0 ? sets.subtract(standing, filled(shape.outOfScope, sets)) : standing;

  // The sides of an apron are no faces: nothing is known to stand there. So it is made wider for what the middle keeps
  // off, and the middle stays on the apron itself.
  const depthMm = 2 * standMm + APRON_BEYOND_MM;
  const aprons = apronsOf(shape.slabs, depthMm);
  const widened = apronsOf(shape.slabs, depthMm + standMm, 2 * standMm);
  const skins = skinsOf(shape.slabs, widened);
  const wide = aprons.length > 0 ? sets.subtract(sets.union([gross, sets.cover(widened)]), bodies) : standing;
  const slit = (set: S): S => (skins.length > 0 ? sets.subtract(set, sets.cover(skins)) : set);
  const room = slit(wide);
  const faced =
    aprons.length > 0
      ? slit(sets.subtract(sets.union([gross, sets.cover(widened)]), facingBodies(bodies, gross, library)))
      : room;
  const standable = aprons.length > 0 ? sets.union([gross, sets.cover(aprons)]) : null;

  const blocked = blockedWays(shape, machine);
  const openTo = (offMm: number): S => {
    const off = grow(room, -offMm);
    const places = standable === null ? off : sets.intersect(off, standable);
    return blocked.length > 0 ? sets.subtract(places, filled(blocked, sets)) : places;
  };
  const centres = openTo(standMm);
  const ways = biasMm > 0 ? openTo(standMm - biasMm) : centres;
  const entered = enteredPieces(shape, sets.pieces(ways), standMm, sets);
  const reach = entered === 'all' ? centres : sets.intersect(centres, sets.union(entered));
  const raw = sets.intersect(grow(reach, machine.headRadiusMm), net);
  const band = sets.subtract(net, grow(faced, -(clearMm + machine.lapMm)));
  return { net, raw, band, field: sets.subtract(raw, band) };
}

/** How near to the slabs, in mm, a body is against them; wider than the libraries' grid. */
const AGAINST_MM = 1e-4;
/** A corner that touches a slab is no face: it leaves less than this, in mm2, and a face of a tenth of a millimetre more. */
const LEAST_FACE_MM2 = 1e-5;

/** Of bodies, what stands on the slabs or against them. Further out, beyond an edge where the floor runs on, they bound no floor: they keep heads off and have no strip. */
function facingBodies<S>(bodies: S, gross: S, { sets, grow }: Library<S>): S {
  const near = sets.pieces(sets.intersect(bodies, grow(gross, AGAINST_MM)));
  return sets.union(near.filter((piece) => sets.areaMm2(piece) > LEAST_FACE_MM2));
}

/** What rings cover: in one step when none crosses itself. Fewer than three corners cover nothing. */
export function filled<S>(items: readonly { readonly ring: Ring }[], sets: PlaneSets<S>): S {
  const rings = items.map((item) => item.ring).filter((ring) => ring.length > 2);
  return rings.every(isSimple) ? sets.cover(rings) : sets.union(rings.map((ring) => sets.fill(ring)));
}

function bodySets<S>(shape: FloorShape, sets: PlaneSets<S>): S[] {
  const whole = shape.walls.filter((wall) => wall.gaps.length === 0).map((wall) => ({ ring: wall.body }));
  const pierced = shape.walls
    .filter((wall) => wall.gaps.length > 0)
    .map((wall) => sets.subtract(filled([{ ring: wall.body }], sets), filled(wall.gaps, sets)));
  const solids = shape.solids.filter((solid) => solid.solid);
  return [filled([...solids, ...whole], sets), ...pierced];
}

/** Gaps in walls that say they are too narrow or too low, whatever their ring says. */
function blockedWays(shape: FloorShape, machine: MachineShape): { readonly ring: Ring }[] {
  return shape.walls
    .flatMap((wall) => wall.gaps)
    .filter(({ passage: { widthMm, heightMm } }) => {
      const isNarrow = widthMm < machine.passageMm - 2 * BIAS_MM;
      return isNarrow || (heightMm !== null && heightMm < machine.heightMm);
    });
}

/** Each zone without those on top of it, and what is left of the floor. */
function zoneSets<S>(shape: FloorShape, net: S, sets: PlaneSets<S>): { readonly id: string; readonly set: S }[] {
  const whole = shape.zones.map((zone) => filled([zone], sets));
  const seen = shape.zones.map(({ id }, i) => ({
    id,
    set: sets.subtract(whole[i] as S, sets.union(whole.slice(i + 1))),
  }));
  return [...seen, { id: REST, set: sets.subtract(net, sets.union(whole)) }];
}

function partAreas<S>(sets: PlaneSets<S>, { net, raw, band, field }: FloorParts<S>): PartAreas {
  const areaM2 = (set: S): number => sets.areaMm2(set) / 1e6;
  return { netM2: areaM2(net), rawFieldM2: areaM2(raw), bandM2: areaM2(band), fieldM2: areaM2(field) };
}

/** Moved so that the first corner of the first slab lies in the origin: a far plan would cost digits. */
export function aboutOrigin(shape: FloorShape): FloorShape {
  const [originX, originY] = shape.slabs[0]?.ring[0] ?? [0, 0];
  const at = ([x, y]: Point): Point => [x - originX, y - originY];
  const moved = <T extends { readonly ring: Ring }>(one: T): T => ({ ...one, ring: one.ring.map(at) });
  return {
    ...shape,
    slabs: shape.slabs.map(moved),
    walls: shape.walls.map((wall) => ({ ...wall, body: wall.body.map(at), gaps: wall.gaps.map(moved) })),
    solids: shape.solids.map(moved),
    outOfScope: shape.outOfScope.map(moved),
    zones: shape.zones.map(moved),
    findings: shape.findings.map(moved),
    lines: shape.lines.map((line) => ({ ...line, path: line.path.map(at) })),
    entrances: shape.entrances.map((entrance) => ({ ...entrance, at: at(entrance.at) })),
  };
}
