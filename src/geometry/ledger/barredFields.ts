import type { FloorShape, MachineField, Region, TightPiece } from '../floorShape.ts';
import { type RegionIndex, regionIndex } from '../regionIndex.ts';
import { blockerOf } from '../tight.ts';
import { waysOf } from '../ways.ts';
import type { LedgerState } from './ledgerState.ts';
import { unreachedSpots } from './tightPieces.ts';

/*
 * Where machines follow each other, a machine may have no field in a zone that the next one works.
 *
 *      ....first....||===============      The first does not get through the passage (||), the second does. No hand
 *      ....machine..||....second.....      floor is left that could say so, so the first one's field says it.
 */

/** A machine with less of a zone than this share of it works none of it: a zone drawn to the middle of a wall holds a little of its doorway. */
const NONE_OF_IT = 0.01;

/** Fields of a zone, each with the passage that keeps its machine out of all of it, though there would be room for it. */
export function withBarriers(
  state: LedgerState,
  shape: FloorShape,
): (fields: readonly MachineField[], net: Region, netM2: number) => readonly MachineField[] {
  const follows = state.plan.sequences.some((sequence) => sequence.length > 1);
  const spots = follows ? unreachedSpots(state) : [];
  const ways = waysOf(shape);
  return (fields, net, netM2) => {
    if (fields.length < 2) return fields;
    let index: RegionIndex | null = null;
    return fields.map((field) => {
      const machine = state.plan.machines.find((each) => each.shape.id === field.machine);
      if (!machine || field.areaM2 >= netM2 * NONE_OF_IT) return field;
      const zone = (index ??= regionIndex(net));
      if (!spots.some(({ at, of }) => of === machine.number && zone.contains(at))) return field;
      const blockedBy: TightPiece['blockedBy'] = blockerOf(zone, regionIndex(field.region), machine.shape, ways, shape);
      return blockedBy ? { ...field, blockedBy } : field;
    });
  };
}
