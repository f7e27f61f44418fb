import { useState, type ReactElement } from 'react';
import css from './PrepRight.module.css';
import { Button } from '../parts/Button.tsx';
import { Dialog } from '../parts/Dialog.tsx';
import { Picker } from '../parts/Picker.tsx';
import { TextField } from '../parts/TextField.tsx';
import { newId, run } from '../plan.ts';
import type { Json, RecordId } from '../../model/cell.ts';
import { defaultMachine } from '../../takeoff/fleet.ts';
import type { MethodRow } from '../../takeoff/rates/methodRow.ts';
import { isHandMethod, methods } from '../../takeoff/rates/methods.ts';
import { machineText, prepText, resultText } from '../../words/stageWords.ts';

interface AddMachineProps {
  /** Kinds of machine that would do here; all of the book unless told. */
  readonly kinds?: readonly MethodRow[];
  /** The machine is on the list now: the dialog is to be closed, or another one opened in its place. */
  readonly onAdded: (machine: RecordId, method: string) => void;
  readonly onClose: () => void;
}

/** A machine of the book, taken into the job under a name of its own. */
export function AddMachine({ kinds = methods, onAdded, onClose }: AddMachineProps): ReactElement {
  const [name, setName] = useState('');
  const options = kinds
    .filter((row) => row.cutWidthMm !== null && row.group !== 'chase' && !isHandMethod(row))
    .map((row) => ({ value: row.id, words: row.term }));
  // Where only one kind would do, nobody has to say which.
  const only = options.length === 1 ? options[0]?.value : undefined;
  const [method, setMethod] = useState<string | null>(only ?? null);
  function add(): void {
    const machine = method ? defaultMachine(method) : null;
    if (!machine) return;
    const id = newId('machine');
    const fields = { ...machine, name: name.trim() || machine.name } as { readonly [slot: string]: Json };
    if (!run('addMachine', { id, fields })) return;
    onAdded(id, machine.method);
  }
  return (
    <Dialog
      title={prepText.addMachine}
      open
      onClose={onClose}
      foot={
        <>
          <Button onClick={onClose}>{resultText.cancel}</Button>
          <Button kind="main" onClick={add} blocked={method ? null : machineText.needsKind}>
            {machineText.add}
          </Button>
        </>
      }
    >
      <Picker
        label={machineText.pick}
        value={method}
        empty={machineText.needsKind}
        options={options}
        onPick={setMethod}
      />
      <TextField label={machineText.name} value={name} onSet={setName} onType={setName} />
      <p className={css.note}>{machineText.unsourced}</p>
    </Dialog>
  );
}
