import { onFloor, recordsOf, type Doc } from '../model/doc.ts';
import type { RecordId } from '../model/cell.ts';
import type { CautionsAsk } from './cautions.ts';
import { isChased } from './crackClass.ts';
import { TOUCH_M2 } from './holds.ts';
import type { Takeoff } from './port.ts';
import type { ZonePrep } from './prep.ts';

/** What a zone's cautions depend on, read off the plan and its takeoff; the same on screen and on paper. */
export function zoneCautionsAsk(doc: Doc, takeoff: Takeoff, prep: ZonePrep): CautionsAsk {
  const measure = takeoff.measure.zones.find((zone) => zone.id === prep.zone);
  const { lengthM = {}, findingM2 = {}, faceLines = [], solids = [] } = measure ?? {};
  const pits = onFloor(doc, 'obstruction', takeoff.floor).filter(
    ({ kind, id }) => kind === 'pit' && solids.includes(id),
  );
  const inZone = (id: RecordId): boolean => (lengthM[id] ?? 0) > 0 || (findingM2[id] ?? 0) > TOUCH_M2;
  const cracks = onFloor(doc, 'crack', takeoff.floor).filter(({ id }) => inZone(id));
  const joints = onFloor(doc, 'joint', takeoff.floor).filter(({ id }) => inZone(id));
  const findings = onFloor(doc, 'finding', takeoff.floor).filter(({ id }) => inZone(id));
  const holds = takeoff.holds.filter(
    (hold) => hold.zone === prep.zone || (hold.zone === null && hold.records.some(inZone)),
  );
  const chases = cracks.some(isChased);
  return {
    prep,
    holds: [...new Set(holds.map((hold) => hold.kind))],
    findings: [...new Set(findings.map(({ kind }) => kind))],
    chases,
    fills: chases || joints.some((joint) => joint.treat === 'filled'),
    drops: pits.length > 0 || faceLines.some(({ kind }) => kind === 'drop'),
    gasAppliance: recordsOf(doc, 'job')[0]?.gasAppliance?.answer === 'yes',
  };
}
