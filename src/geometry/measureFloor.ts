import {
  type FloorMeasure,
  type FloorShape,
  type GeometryFault,
  type MachineShape,
  REST,
  type Region,
  type TightPiece,
  type ZoneMeasure,
} from './floorShape.ts';
import { linesByZone } from './along.ts';
import { type NotedClips, notedClips } from './clipNotes.ts';
import { isOnFloor } from './entered.ts';
import { type MachineWork, machineWork } from './machineWork.ts';
import { type MeasureMemory, recalled } from './measureMemory.ts';
import { type NetFloor, netFloor } from './netFloor.ts';
import { type Partition, partitionOf, zonesAlong } from './partition.ts';
import { distance } from './point.ts';
import { corner, regionArea } from './ring.ts';
import { soundShape } from './soundShape.ts';
import { isSliver, pieceSpot } from './tight.ts';
import { welded } from './weld.ts';
import { type ZoneFaces, facesByZone } from './zoneFaces.ts';

/*
 * A floor to its numbers, in the order of reading:
 *
 *   soundShape   what can be measured, faults for the rest
 *   welded       no slits or skins where things were drawn against each other
 *   netFloor     slabs less solids, walls and what is out of scope; the hard faces around it
 *   machineWork  for each machine: reach -> strip, field, tight (over the whole floor)
 *   partition    each of them in each zone, later zones on top, and in the rest
 *
 * Areas in m2 and lengths in m. In each zone field + strip + tight = net to 1e-4 of net, each summed
 * from its own rings. With a memory, what did not change since the last call is not computed again.
 * Never throws: what cannot be measured is a fault that names its record.
 */
export function measureFloor(given: FloorShape, memory?: MeasureMemory): FloorMeasure {
  return recalled(
    memory?.wholes,
    () => JSON.stringify(given),
    () => measured(given, memory),
    [],
  );
}

function measured(given: FloorShape, memory: MeasureMemory | undefined): FloorMeasure {
  const { shape: sound, faults } = soundShape(given);
  const shape = welded(sound);
  const clips = notedClips(faults);
  const floorKey = memory ? JSON.stringify([shape.slabs, shape.walls, shape.solids, shape.outOfScope]) : '';
  const floor = recalled(
    memory?.floors,
    () => floorKey,
    (found) => netFloor(shape, found),
    faults,
  );
  const workOf = (machine: MachineShape): MachineWork => {
    const key = (): string => JSON.stringify([floorKey, shape.entrances, machine]);
    return recalled(memory?.works, key, (found) => machineWork(machine, floor, shape, found), faults);
  };
  const partition = partitionOf(shape.zones, clips);
  const sheets = [...shape.zones.map(({ id, machine }) => ({ id, machine })), { id: REST, machine: shape.restMachine }];
  const common = {
    net: partition.split(floor.net),
    lines: linesByZone(shape.lines, floor.index, partition),
    findings: findingsByZone(shape, floor, partition, clips),
    solids: solidsByZone(shape, partition),
  };

  const zones = new Map<string, ZoneMeasure>();
  for (const machineId of new Set(sheets.map((sheet) => sheet.machine))) {
    const machine = shape.machines.find((one) => one.id === machineId) ?? null;
    const own = new Set(sheets.filter((sheet) => sheet.machine === machineId).map((sheet) => sheet.id));
    const parts = machine
      ? machineParts(workOf(machine), partition, own)
      : handParts(floor, partition, own, common.net);
    for (const id of own) {
      zones.set(id, {
        id,
        machine: machineId,
        netM2: squareMetres(common.net.get(id)),
        net: common.net.get(id) ?? [],
        lengthM: common.lines.get(id) ?? {},
        findingM2: common.findings.get(id) ?? {},
        solids: common.solids.get(id) ?? [],
        ...partsOfZone(id, parts),
      });
    }
  }

  noteOutsiders(shape, floor, common, clips, faults);
  return {
    grossM2: squareMetres(floor.gross),
    deductedM2: floor.deductedM2,
    netM2: squareMetres(floor.net),
    perimeterM: floor.perimeterM,
    zones: sheets.flatMap((sheet) => zones.get(sheet.id) ?? []),
    faults: distinct(faults),
  };
}

interface Parts {
  readonly field: ReadonlyMap<string, Region>;
  readonly strip: ReadonlyMap<string, Region>;
  readonly tight: readonly TightPiece[];
  readonly faces: ReadonlyMap<string, ZoneFaces>;
}

function machineParts(work: MachineWork, partition: Partition, own: ReadonlySet<string>): Parts {
  return {
    field: partition.split(work.field, own),
    strip: partition.split(work.strip, own),
    tight: tightByZone(work, partition, own),
    faces: facesByZone(work.faces, partition, (zone) => own.has(zone), work.isEdged),
  };
}

/** A zone without a machine is hand area as a whole. */
function handParts(
  floor: NetFloor,
  partition: Partition,
  own: ReadonlySet<string>,
  net: ReadonlyMap<string, Region>,
): Parts {
  const chains = floor.chains.map((chain) => ({
    chain,
    parts: chain.faces.map((face) => ({ face, from: 0, to: 1, worked: false })),
  }));
  const tight = [...own].flatMap((zone) =>
    (net.get(zone) ?? []).map((polygon) => tightPiece('gap', polygon, zone, null)),
  );
  return {
    field: new Map(),
    strip: new Map(),
    tight,
    faces: facesByZone(
      chains,
      partition,
      (zone) => own.has(zone),
      () => false,
    ),
  };
}

function tightByZone(work: MachineWork, partition: Partition, own: ReadonlySet<string>): TightPiece[] {
  return work.tight.flatMap(({ kind, polygon, blockedBy, keptOff }) =>
    Array.from(partition.split([polygon], own)).flatMap(([zone, region]) =>
      region.filter((part) => !isSliver(part)).map((part) => ({ ...tightPiece(kind, part, zone, blockedBy), keptOff })),
    ),
  );
}

function tightPiece(
  kind: TightPiece['kind'],
  polygon: Region[number],
  zone: string,
  blockedBy: TightPiece['blockedBy'],
): TightPiece {
  const region = [polygon];
  return { kind, areaM2: squareMetres(region), region, at: pieceSpot(region), zone, blockedBy };
}

function partsOfZone(id: string, parts: Parts) {
  const field = parts.field.get(id) ?? [];
  const strip = parts.strip.get(id) ?? [];
  const tight = parts.tight.filter((piece) => piece.zone === id).toSorted((a, b) => b.areaM2 - a.areaM2);
  const faces = parts.faces.get(id);
  return {
    fieldM2: squareMetres(field),
    stripM2: squareMetres(strip),
    tightM2: sumOf(tight),
    cutOffM2: sumOf(tight.filter((piece) => piece.kind === 'cutOff')),
    faces: faces?.metres ?? { wall: 0, obstruction: 0, drop: 0, stop: 0, hidden: 0 },
    innerCorners: faces?.innerCorners ?? 0,
    outerCorners: faces?.outerCorners ?? 0,
    field,
    strip,
    tight,
    faceLines: faces?.lines ?? [],
  };
}

function sumOf(pieces: readonly TightPiece[]): number {
  return pieces.reduce((sum, piece) => sum + piece.areaM2, 0);
}

function squareMetres(region: Region | undefined): number {
  return region ? regionArea(region) / 1e6 : 0;
}

/** Area of each finding on the net floor, by zone id and then by finding id. */
function findingsByZone(
  shape: FloorShape,
  floor: NetFloor,
  partition: Partition,
  clips: NotedClips,
): ReadonlyMap<string, Record<string, number>> {
  const areas = new Map<string, Record<string, number>>();
  for (const { id, ring } of shape.findings) {
    for (const [zone, region] of partition.split(clips.intersect(id, floor.net, [[ring]]))) {
      if (region.length > 0) areas.set(zone, { ...areas.get(zone), [id]: squareMetres(region) });
    }
  }
  return areas;
}

/** Each solid goes to the zone that holds most of its outline. */
function solidsByZone(shape: FloorShape, partition: Partition): ReadonlyMap<string, readonly string[]> {
  const zones = new Map<string, string[]>();
  for (const { id, ring } of shape.solids) {
    const lengths = new Map<string, number>();
    for (const [i, a] of ring.entries()) {
      const b = corner(ring, i + 1);
      for (const { zone, from, to } of zonesAlong(partition, a, b))
        lengths.set(zone, (lengths.get(zone) ?? 0) + (to - from) * distance(a, b));
    }
    const [most] = [...lengths].toSorted((a, b) => b[1] - a[1]);
    if (most) zones.set(most[0], [...(zones.get(most[0]) ?? []), id]);
  }
  return zones;
}

interface Common {
  readonly net: ReadonlyMap<string, Region>;
  readonly lines: ReadonlyMap<string, Record<string, number>>;
  readonly findings: ReadonlyMap<string, Record<string, number>>;
}

/** Items that lie off the floor altogether. */
function noteOutsiders(
  shape: FloorShape,
  floor: NetFloor,
  common: Common,
  clips: NotedClips,
  faults: GeometryFault[],
): void {
  const isMissing = (areas: ReadonlyMap<string, Record<string, number>>, id: string): boolean =>
    [...areas.values()].every((zone) => (zone[id] ?? 0) === 0);
  for (const { id, ring } of shape.zones) {
    const isEmpty = squareMetres(common.net.get(id)) === 0;
    if (isEmpty && clips.intersect(id, floor.gross, [[ring]]).length === 0)
      faults.push({ record: id, code: 'zoneOutsideSlab', at: ring[0] ?? null });
  }
  for (const { id, ring } of shape.findings)
    if (isMissing(common.findings, id)) faults.push({ record: id, code: 'findingOutsideSlab', at: ring[0] ?? null });
  for (const { id, path } of shape.lines)
    if (isMissing(common.lines, id)) faults.push({ record: id, code: 'lineOutsideSlab', at: path[0] ?? null });
  for (const { id, at } of shape.entrances)
    if (!isOnFloor(at, floor.index)) faults.push({ record: id, code: 'entranceOutsideSlab', at });
}

function distinct(faults: readonly GeometryFault[]): GeometryFault[] {
  return [...new Map(faults.map((fault) => [`${fault.record} ${fault.code}`, fault])).values()];
}
