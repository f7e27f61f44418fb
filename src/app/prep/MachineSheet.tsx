import type { ReactElement } from 'react';
import css from './PrepRight.module.css';
import { Button } from '../parts/Button.tsx';
import { Dialog } from '../parts/Dialog.tsx';
import { MeasureField } from '../parts/MeasureField.tsx';
import { TextField } from '../parts/TextField.tsx';
import { newId, planStoreNow, run, useDoc, useUnits } from '../plan.ts';
import type { Json } from '../../model/cell.ts';
import { recordOf, recordsOf } from '../../model/doc.ts';
import { showLength } from '../../model/showLength.ts';
import { figureText } from '../../model/showNumber.ts';
import { passageMm } from '../../takeoff/planShape.ts';
import type { PlannedMachine } from '../../takeoff/prep.ts';
import { methodOf } from '../../takeoff/rates/methods.ts';
import { machineText } from '../../words/stageWords.ts';

const sizes = [
  'cutWidthMm',
  'bodyWidthMm',
  'bodyLengthMm',
  'heightMm',
  'smallestOpeningMm',
  'turningMm',
  'lapMm',
] as const;
const faces = ['wall', 'obstruction', 'drop', 'stop'] as const;

const sizeWords: Readonly<Record<(typeof sizes)[number], string>> = {
  cutWidthMm: machineText.cutWidth,
  bodyWidthMm: machineText.bodyWidth,
  bodyLengthMm: machineText.bodyLength,
  heightMm: machineText.height,
  smallestOpeningMm: machineText.smallestOpening,
  turningMm: machineText.turning,
  lapMm: machineText.lap,
};

/** One change to a machine; a stand-in from the book becomes a machine of the job with its first change. */
function setMachine(machine: PlannedMachine, fields: Readonly<Record<string, Json>>): void {
  const doc = planStoreNow().getState();
  const own =
    recordOf(doc, 'machine', machine.id) ?? recordsOf(doc, 'machine').find((each) => each.method === machine.method);
  if (own) {
    run('setFields', { ids: [own.id], fields });
    return;
  }
  const { id: _standIn, ...book } = machine;
  run('addMachine', { id: newId('machine'), fields: { ...(book as Readonly<Record<string, Json>>), ...fields } });
}

/** Sizes, clearances and lap of a machine: what its reach is computed from. */
export function MachineSheet({
  machine: asked,
  onClose,
}: {
  readonly machine: PlannedMachine;
  readonly onClose: () => void;
}): ReactElement {
  const units = useUnits();
  const machine = useDoc(
    (doc) =>
      recordOf(doc, 'machine', asked.id) ??
      recordsOf(doc, 'machine').find((each) => each.method === asked.method) ??
      asked,
  );
  const set = (fields: Readonly<Record<string, Json>>): void => setMachine(asked, fields);
  return (
    <Dialog
      title={machineText.title}
      open
      wide
      onClose={onClose}
      foot={<Button onClick={onClose}>{machineText.close}</Button>}
    >
      <TextField label={machineText.name} value={machine.name} onSet={(name) => name !== '' && set({ name })} />
      <p className={css.note}>
        {methodOf(machine.method)?.term ?? machine.method}.{' '}
        {machineText.needs(figureText(showLength(passageMm(machine), units)))}
      </p>
      <div className={css.fields}>
        {sizes.map((slot) => (
          <MeasureField
            key={slot}
            label={sizeWords[slot]}
            kind="size"
            mm={machine[slot]}
            minMm={slot === 'lapMm' || slot === 'turningMm' ? 0 : 1}
            maxMm={10_000}
            onSet={(mm) => mm !== null && set({ [slot]: mm })}
          />
        ))}
      </div>
      <h3 className={css.title}>{machineText.clearances}</h3>
      <div className={css.fields}>
        {faces.map((face) => (
          <MeasureField
            key={face}
            label={machineText.clearance[face]}
            kind="size"
            mm={machine.clearanceMm[face]}
            maxMm={5000}
            onSet={(mm) => mm !== null && set({ clearanceMm: { ...machine.clearanceMm, [face]: mm } })}
          />
        ))}
      </div>
      <p className={css.note}>{machineText.unsourced}</p>
    </Dialog>
  );
}
