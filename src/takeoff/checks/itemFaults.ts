import type { CommandCall, RecordId } from '../../model/cell.ts';
import { onFloor } from '../../model/doc.ts';
import { formRing } from '../../geometry/formRing.ts';
import { upstandRuns } from '../upstandLines.ts';
import { fault, type Check } from './check.ts';

/** An obstruction that takes nothing off the floor stands beside it. */
export const obstructionOutsideSlab: Check = ({ doc, floor, measure }) =>
  onFloor(doc, 'obstruction', floor).flatMap((item) =>
    item.under !== 'clearedBefore' && measure.deductedM2[item.id] === 0
      ? [fault(item.id, 'obstructionOutsideSlab', formRing(item.shape)[0] ?? null)]
      : [],
  );

/** An isolation joint moves: it is carried through and never filled, whatever was asked for. */
export const isolationFilled: Check = ({ doc, floor }) =>
  onFloor(doc, 'joint', floor).flatMap((joint) =>
    joint.kind === 'isolation' && joint.treat === 'filled'
      ? [{ ...fault(joint.id, 'isolationFilled', joint.path[0] ?? null), fix: carriedThrough(joint.id) }]
      : [],
  );

function carriedThrough(id: RecordId): CommandCall {
  return { name: 'setField', args: { id, slot: 'treat', value: 'carried' } };
}

/** A crack that steps, leaks or shows rust is an engineer's: it is measured, and nothing is planned for it. */
export const structuralCrack: Check = ({ doc, floor }) =>
  onFloor(doc, 'crack', floor).flatMap((crack) =>
    crack.behaviour === 'structural' ? [fault(crack.id, 'structuralCrack', crack.path[0] ?? null)] : [],
  );

/** The rate book has cove base only: other upstands that go away have to be priced by hand. */
export const upstandRemoveNoRate: Check = (site) =>
  site.zones.flatMap((zone) =>
    upstandRuns(site, zone)
      .filter(({ upstand }) => upstand.treat === 'remove' && upstand.kind !== 'coveBase')
      .map(({ record }) => fault(record, 'upstandRemoveNoRate')),
  );
