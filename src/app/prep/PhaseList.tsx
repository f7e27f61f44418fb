import { useState, type ReactElement } from 'react';
import css from './PhaseList.module.css';
import { Button } from '../parts/Button.tsx';
import { Dialog } from '../parts/Dialog.tsx';
import { TextField } from '../parts/TextField.tsx';
import { run, useDoc } from '../plan.ts';
import type { RecordId } from '../../model/cell.ts';
import { onFloor, type Held } from '../../model/doc.ts';
import { phaseOf, phasesOf } from '../../takeoff/phases.ts';
import { phaseWords } from '../../words/prepWords.ts';

interface PhaseListProps {
  readonly floor: RecordId;
  readonly onClose: () => void;
}

/** The phases of a floor: their names and their order. */
export function PhaseList({ floor, onClose }: PhaseListProps): ReactElement {
  const phases = useDoc((doc) => phasesOf(doc, floor));
  const zones = useDoc((doc) => onFloor(doc, 'zone', floor));
  const countOf = useDoc(
    (doc) => (id: RecordId) => zones.filter((record) => phaseOf(doc, floor, { record }) === id).length,
  );

  /** Puts a phase at place `to` of the list. */
  function move(phase: Held<'phase'>, to: number): void {
    const others = phases.filter((each) => each.id !== phase.id);
    run('reorder', { id: phase.id, before: others[to]?.id ?? null });
  }
  return (
    <Dialog
      title={phaseWords.dialog}
      open
      onClose={onClose}
      foot={<Button onClick={onClose}>{phaseWords.close}</Button>}
    >
      <p>{phaseWords.dialogHelp}</p>
      <ol className={css.list}>
        {phases.map((phase, index) => (
          <li key={phase.id}>
            <PhaseName phase={phase} number={index + 1} />
            <span className={css.count}>{phaseWords.zones(countOf(phase.id))}</span>
            <span className={css.acts}>
              {index > 0 && (
                <Button
                  size="desk"
                  aria-label={phaseWords.moveEarlier(phase.name)}
                  onClick={() => move(phase, index - 1)}
                >
                  {phaseWords.earlier}
                </Button>
              )}
              {index < phases.length - 1 && (
                <Button
                  size="desk"
                  aria-label={phaseWords.moveLater(phase.name)}
                  onClick={() => move(phase, index + 1)}
                >
                  {phaseWords.later}
                </Button>
              )}
              <Button
                size="desk"
                aria-label={phaseWords.takeOut(phase.name)}
                onClick={() => run('removeRecords', { ids: [phase.id] })}
              >
                {phaseWords.remove}
              </Button>
            </span>
          </li>
        ))}
      </ol>
    </Dialog>
  );
}

function PhaseName({ phase, number }: { readonly phase: Held<'phase'>; readonly number: number }): ReactElement {
  const [fault, setFault] = useState<string | null>(null);
  function rename(name: string): void {
    setFault(name === '' ? phaseWords.nameMissing : null);
    if (name !== '') run('setField', { id: phase.id, slot: 'name', value: name });
  }
  return <TextField label={phaseWords.name(number)} value={phase.name} fault={fault} onSet={rename} />;
}
