import { useState, type ReactElement } from 'react';
import css from './PrepRight.module.css';
import { Button } from '../parts/Button.tsx';
import { Dialog } from '../parts/Dialog.tsx';
import { Picker } from '../parts/Picker.tsx';
import { TextField } from '../parts/TextField.tsx';
import { newId, run } from '../plan.ts';
import type { Json, RecordId } from '../../model/cell.ts';
import { defaultMachine } from '../../takeoff/fleet.ts';
import { isHandMethod, methods } from '../../takeoff/rates/methods.ts';
import { machineText, resultText } from '../../words/stageWords.ts';

interface AddMachineProps {
  readonly onAdded: (machine: RecordId, method: string) => void;
  readonly onClose: () => void;
}

/** A machine of the book, taken into the job under a name of its own. */
export function AddMachine({ onAdded, onClose }: AddMachineProps): ReactElement {
  const [method, setMethod] = useState<string | null>(null);
  const [name, setName] = useState('');
  const options = methods
    .filter((row) => row.cutWidthMm !== null && !isHandMethod(row))
    .map((row) => ({ value: row.id, words: row.term }));
  function add(): void {
    const machine = method ? defaultMachine(method) : null;
    if (!machine) return;
    const id = newId('machine');
    const fields = { ...machine, name: name.trim() || machine.name } as { readonly [slot: string]: Json };
    if (!run('addMachine', { id, fields })) return;
    onAdded(id, machine.method);
    onClose();
  }
  return (
    <Dialog
      title={machineText.add}
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
