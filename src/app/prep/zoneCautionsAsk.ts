import { onFloor, recordsOf, type Doc } from '../../model/doc.ts';
import type { RecordId } from '../../model/cell.ts';
import type { CautionsAsk } from '../../takeoff/cautions.ts';
import { isChased } from '../../takeoff/crackClass.ts';
import type { Takeoff } from '../../takeoff/port.ts';
import type { ZonePrep } from '../../takeoff/prep.ts';

/** What a zone's cautions depend on, read off the plan and its takeoff. */
export function zoneCautionsAsk(doc: Doc, takeoff: Takeoff, prep: ZonePrep): CautionsAsk {
  const lengthM = takeoff.measure.zones.find((zone) => zone.id === prep.zone)?.lengthM ?? {};
  const inZone = ({ id }: { readonly id: RecordId }): boolean => (lengthM[id] ?? 0) > 0;
  const cracks = onFloor(doc, 'crack', takeoff.floor).filter(inZone);
  const joints = onFloor(doc, 'joint', takeoff.floor).filter(inZone);
  const holds = takeoff.holds.filter(
    (hold) => hold.zone === prep.zone || (hold.zone === null && hold.records.some((id) => (lengthM[id] ?? 0) > 0)),
  );
  const chases = cracks.some(isChased);
  return {
    prep,
    holds: [...new Set(holds.map((hold) => hold.kind))],
    chases,
    fills: chases || joints.some((joint) => joint.treat === 'filled'),
    gasAppliance: recordsOf(doc, 'job')[0]?.gasAppliance?.answer === 'yes',
  };
}
