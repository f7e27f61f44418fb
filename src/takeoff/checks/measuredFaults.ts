import type { RecordId } from '../../model/cell.ts';
import { typeOf } from '../../model/cell.ts';
import type { Fault } from '../line.ts';
import { fault, type Check } from './check.ts';

const SAID_OF: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  crossesItself: { slab: 'slabCrossesItself', zone: 'zoneCrossesItself' },
  lineOutsideSlab: { crack: 'crackOutsideSlab', joint: 'jointOutsideSlab' },
};

/** What the engine found, under the names of the records that people know. */
export const measuredFaults: Check = ({ measure, zones }) =>
  measure.faults.map(({ record, code, at }): Fault => {
    const id = record === 'rest' ? (zones[0]?.prep.record?.id ?? 'zone:rest') : (record as RecordId);
    return fault(id, SAID_OF[code]?.[typeOf(id)] ?? code, at);
  });
