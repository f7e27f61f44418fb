import type { FloorShape, GeometryFault, MachineShape, Region } from './floorShape.ts';
import { bandsOf, wholeStretch } from './bands.ts';
import { notedClips } from './clipNotes.ts';
import { besideFace } from './boundary.ts';
import { BEYOND_MM, type ChainParts, WIDEST_STRIP_MM, bandWidths, chainParts, stripWidths, workedStretches } from './faces.ts';
import type { Face, HardKind } from './hardFace.ts';
import type { NetFloor } from './netFloor.ts';
import { reachOf, standOff } from './reach.ts';
import { insideShares, regionIndex } from './regionIndex.ts';
import { type TightFloor, isSliver, tightFloor } from './tight.ts';

/** One machine over the whole floor. field, strip and tight are disjoint and together the net floor; each is a boolean of its own, none a remainder of sums. */
export interface MachineWork {
  readonly field: Region;
  readonly strip: Region;
  readonly tight: readonly TightFloor[];
  readonly faces: readonly ChainParts[];
  /** False for a kind of face whose band is too wide to be edge strip: hand area lies along it. */
  readonly isEdged: (kind: HardKind) => boolean;
}

export function machineWork(
  machine: MachineShape,
  floor: NetFloor,
  shape: FloorShape,
  faults: GeometryFault[],
): MachineWork {
  const clips = notedClips(faults);
  const reach = reachOf(machine, floor, shape, faults);
  const reached = regionIndex(reach.raw);
  const widths = bandWidths(machine);
  const seenOf = (face: Face): (readonly [number, number])[] => {
    const off = widths[face.kind] + BEYOND_MM;
    return [...insideShares(reached, besideFace(face, 0, off), besideFace(face, 1, off))];
  };
  const faces = chainParts(floor.chains, seenOf, widths, standOff(machine));
  const worked = bandsOf(faces.flatMap(workedStretches), stripWidths(machine), 'area');
  const all = isEdgedAllRound(faces, machine)
    ? worked
    : bandsOf(floor.chains.map(wholeStretch), bandWidths(machine), 'area');
  const strip = clips.intersect(machine.id, floor.net, worked);
  const field = clips.subtract(machine.id, reach.raw, all);
  const tight = clips.subtract(machine.id, floor.net, [...(all === worked ? reach.raw : field), ...worked]);
  return {
    field: field.filter((polygon) => !isSliver(polygon)),
    strip: strip.filter((polygon) => !isSliver(polygon)),
    tight: tightFloor(tight, reach, machine, floor, shape),
    faces,
    isEdged: (kind) => bandWidths(machine)[kind] <= WIDEST_STRIP_MM,
  };
}

/** True when every face has its strip, so that the bands taken off the field are the strip and no hand area. */
function isEdgedAllRound(faces: readonly ChainParts[], machine: MachineShape): boolean {
  return (
    Math.max(...Object.values(bandWidths(machine))) <= WIDEST_STRIP_MM &&
    faces.every(({ parts }) => parts.every((part) => part.worked))
  );
}
