import type { Cell, RecordId } from '../model/cell.ts';
import { recordOf } from '../model/doc.ts';
import type { Command } from './command.ts';
import { newRecordCells, refuseNewId } from './newItem.ts';

export type AddPhaseArgs = {
  readonly id: RecordId;
  readonly floor: RecordId;
  readonly name: string;
  /** The zone that it is made for goes into it. */
  readonly zone?: RecordId | null;
};

/** A night, a weekend or an aisle that is worked on a visit of its own: last of the floor's phases. */
export const addPhase: Command<AddPhaseArgs> = {
  name: 'addPhase',
  refuse(doc, { id, floor, name, zone = null }) {
    if (!recordOf(doc, 'floor', floor)) return 'unknownFloor';
    if (name.trim() === '') return 'nameMissing';
    if (zone !== null && recordOf(doc, 'zone', zone)?.floor !== floor) return 'unknownRecord';
    return refuseNewId(doc, id, 'phase');
  },
  write(doc, { id, floor, name, zone = null }) {
    const joined: Cell[] = zone === null ? [] : [[zone, 'phase', id]];
    return [...newRecordCells(doc, id, { floor, name: name.trim() }), ...joined];
  },
};
