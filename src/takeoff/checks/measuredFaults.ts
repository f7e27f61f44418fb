import { REST } from '../../geometry/floorShape.ts';
import type { RecordId } from '../../model/cell.ts';
import { typeOf } from '../../model/cell.ts';
import type { Fault } from '../line.ts';
import { fault, type Check } from './check.ts';

const SAID_OF: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  crossesItself: { slab: 'slabCrossesItself', zone: 'zoneCrossesItself' },
  lineOutsideSlab: { crack: 'crackOutsideSlab', joint: 'jointOutsideSlab' },
};

/** What the engine found, under the names of the records that people know. */
export const measuredFaults: Check = ({ measure, zones, floor }) => {
  const rest = zones.find((zone) => zone.prep.zone === REST);
  return measure.faults.map(({ record, code, at }): Fault => {
    const id = record === REST ? (rest?.prep.record?.id ?? floor) : record;
    const named = id as RecordId;
    return fault(named, SAID_OF[code]?.[typeOf(named)] ?? code, at);
  });
};
