import type { FloorShape, GeometryFault, MachineShape, Region, Ring } from './floorShape.ts';
import { type WidthByKind, bandsOf, wholeStretch } from './bands.ts';
import { boxOf, boxesMeet, grownBox } from './box.ts';
import { type NotedClips, notedClips } from './clipNotes.ts';
import { enteredPieces } from './entered.ts';
import { growBack } from './growBack.ts';
import { type Face, turnedFace } from './hardFace.ts';
import { type NetFloor, tooTight } from './netFloor.ts';
import { along, minus, quarterTurn, unit } from './point.ts';

/*
 * What one machine gets to.
 *
 *   X     net floor, with an apron where the floor runs on
 *   P     X without the bands in which the middle of the machine cannot stand: p from each face
 *   P*    pieces of P that an entrance leads to
 *   reach P* grown back: straight pieces to the clearance, round at inner corners
 *
 *   +--------------+
 *   | c ________   |
 *   |  (  ____  )  |      outer line  floor
 *   |  | | P* | |  |      round line  reach of the head
 *   |  (__----__)  |      inner line  where its middle can stand
 *   +--------------+
 *
 * The head is a disc of radius r kept c from each face (c by kind of face). A body wider than the head
 * stands off by half the passage it needs. Source: the model is ours; parallel bodies after Steiner.
 */
export interface Reach {
  /** All floor the head covers, before the edge strip is taken off. */
  readonly raw: Region;
  /** Where the machine could stand but cannot get to. */
  readonly cutOff: Region;
}

/** A gap of exactly the width needed counts as passed: the body is taken this much smaller, in mm. */
const BIAS_MM = 0.25;

export function reachOf(machine: MachineShape, floor: NetFloor, shape: FloorShape, faults: GeometryFault[]): Reach {
  const clips = notedClips(faults);
  const standMm = standOff(machine);
  const blocked = floor.ways.filter((way) => tooTight(way.passage, machine)).map((way) => [way.ring]);
  const bands = bandsOf(floor.chains.map(wholeStretch), standMm, 'inside');
  const room = roomToMove(machine, floor, standMm, clips);
  const pieces = clips.subtract(machine.id, room, [...bands, ...blocked]);
  const entered = enteredPieces(pieces, machine, floor, shape.entrances, Math.max(...Object.values(standMm)));
  const own = pieces.filter((_, i) => entered.has(i));
  const grown = growBack(
    own,
    floor.chains.flatMap((chain) => chain.faces),
    standMm,
    machine.clearanceMm,
    biasOf(machine),
  );
  const raw = clips.union(machine.id, [grown]);
  const cutOff = pieces.filter((_, i) => !entered.has(i));
  const onFloor = (region: Region): Region =>
    room === floor.net ? region : clips.intersect(machine.id, region, floor.net);
  return { raw: onFloor(raw), cutOff: onFloor(cutOff) };
}

/** How far the middle of the machine stays from each kind of face, in mm. */
export function standOff(machine: MachineShape): WidthByKind {
  const { headRadiusMm: head, clearanceMm: clear, passageMm } = machine;
  const off = (clearance: number): number => Math.max(head + clearance, passageMm / 2) - biasOf(machine);
  return { wall: off(clear.wall), obstruction: off(clear.obstruction), drop: off(clear.drop), stop: off(clear.stop) };
}

/** A head of no size needs no bias, and would shrink below its clearance with one. */
function biasOf(machine: MachineShape): number {
  return Math.min(BIAS_MM, machine.headRadiusMm);
}

function roomToMove(machine: MachineShape, floor: NetFloor, standMm: WidthByKind, clips: NotedClips): Region {
  if (floor.runEdges.length === 0 && floor.beside.length === 0) return floor.net;
  const depth = 2 * Math.max(machine.headRadiusMm + machine.clearanceMm.wall, machine.passageMm / 2) + 200;
  const beyond = (from: number, to: number): Region =>
    floor.runEdges.map(({ a, b }): Ring[] => {
      const outward = quarterTurn(unit(minus(a, b)));
      return [[along(a, outward, from), along(b, outward, from), along(b, outward, to), along(a, outward, to)]];
    });
  const aprons = beyond(0, depth);
  const outside = clips.subtract(machine.id, clips.union(machine.id, [aprons]), floor.net);
  // A seam of 1 mm on each side, so that no rounding leaves a slit between floor and apron.
  const apron = clips.union(machine.id, [outside, beyond(-1, 1)]);
  const free = clips.subtract(machine.id, apron, backBands(floor, apron, standMm));
  return clips.union(machine.id, [floor.net, floor.beside, free]);
}

/** Faces are hard from behind too, for what lies on an apron. */
function backBands(floor: NetFloor, aprons: Region, standMm: WidthByKind): Region {
  const reach = Math.max(...Object.values(standMm));
  const box = grownBox(boxOf(aprons.flat(2)), reach);
  const near = floor.chains.flatMap((chain) => chain.faces).filter((face) => boxesMeet(box, boxOf([face.a, face.b])));
  const bothSides = near.flatMap((face): Face[] => [face, turnedFace(face)]);
  return bandsOf(
    bothSides.map((face) => ({ faces: [face], closed: false, roundStart: true, roundEnd: true })),
    standMm,
    'inside',
  );
}
