import type { FloorShape, GeometryFault, MachineShape, Region } from './floorShape.ts';
import { bandsOf } from './bands.ts';
import { notedClips } from './clipNotes.ts';
import { type ChainParts, chainParts, stripWidths, workedStretches } from './faces.ts';
import type { NetFloor } from './netFloor.ts';
import { reachOf, standOff } from './reach.ts';
import { regionIndex } from './regionIndex.ts';
import { type TightFloor, isSliver, tightFloor } from './tight.ts';

/** One machine over the whole floor. field, strip and tight are disjoint and together the net floor; each is a boolean of its own, none a remainder of sums. */
export interface MachineWork {
  readonly field: Region;
  readonly strip: Region;
  readonly tight: readonly TightFloor[];
  readonly faces: readonly ChainParts[];
}

export function machineWork(machine: MachineShape, floor: NetFloor, shape: FloorShape, faults: GeometryFault[]): MachineWork {
  const clips = notedClips(faults);
  const reach = reachOf(machine, floor, shape, faults);
  const faces = chainParts(floor.chains, regionIndex(reach.raw), machine, standOff(machine));
  const bands = bandsOf(faces.flatMap(workedStretches), stripWidths(machine), 'area');
  const strip = clips.intersect(machine.id, floor.net, bands);
  const field = clips.subtract(machine.id, reach.raw, bands);
  const tight = clips.subtract(machine.id, floor.net, [...reach.raw, ...bands]);
  return {
    field: field.filter((polygon) => !isSliver(polygon)),
    strip: strip.filter((polygon) => !isSliver(polygon)),
    tight: tightFloor(tight, reach, machine, floor, shape),
    faces,
  };
}
