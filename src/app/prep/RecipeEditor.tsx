import { useState, type ReactElement } from 'react';
import css from './PrepRight.module.css';
import { AddMachine } from './AddMachine.tsx';
import { CascadeList } from './CascadeList.tsx';
import { MachineSheet } from './MachineSheet.tsx';
import { PassFields } from './PassFields.tsx';
import { draftsOf, onMachine, recipeArgs, withOneMore, without, type PassDraft } from './recipeEdits.ts';
import { passName } from './passName.ts';
import { machineChoices, machineOfChoice } from './machineChoices.ts';
import { useZoneRecipe } from './useZoneRecipe.ts';
import { Button } from '../parts/Button.tsx';
import { Picker } from '../parts/Picker.tsx';
import { newId, planStoreNow, run, useDoc, useUnits } from '../plan.ts';
import type { Held } from '../../model/doc.ts';
import { prepText } from '../../words/stageWords.ts';

const ADD = 'add';
/** Where the recipe stands in the dock. */
export const RECIPE = 'recipe-of-the-zone';

/** What the floor gets: a machine and its passes, and what follows at the edge. */
export function RecipeEditor({ zone }: { readonly zone: Held<'zone'> }): ReactElement {
  const { prep, machine } = useZoneRecipe(zone);
  const doc = useDoc((now) => now);
  const units = useUnits();
  const [sheet, setSheet] = useState<'edit' | 'add' | null>(null);
  const drafts = draftsOf(prep);
  const first = drafts[0];

  function write(next: readonly PassDraft[]): void {
    run('setRecipe', recipeArgs(planStoreNow().getState(), zone, next, recipeName(next), newId));
  }
  const change = (index: number, more: Partial<PassDraft>): void =>
    write(drafts.map((draft, at) => (at === index ? { ...draft, ...more } : draft)));

  function chooseMachine(choice: string): void {
    if (choice === ADD) return setSheet('add');
    const { method, machine: id } = machineOfChoice(doc, choice);
    write(onMachine(drafts, method, id));
  }
  return (
    <section id={RECIPE} className={css.section}>
      <h3>{prepText.floorGets}</h3>
      {!prep.planned && <p className={css.note}>{prepText.standIn}</p>}
      <Picker
        label={prepText.machine}
        value={first ? machineChoiceOf(first) : null}
        options={[...machineChoices(doc, units), { value: ADD, words: prepText.addMachine }]}
        onPick={chooseMachine}
      />
      {machine && (
        <Button size="desk" onClick={() => setSheet('edit')}>
          {prepText.machineSheet}
        </Button>
      )}
      <CascadeList recipe={{ zone, drafts, name: recipeName(drafts) }} />
      <div>
        {drafts.map((draft, index) => (
          <PassFields
            key={draft.record ?? `stand-in ${String(index)}`}
            index={index}
            draft={draft}
            onChange={(more) => change(index, more)}
            onRemove={drafts.length > 1 ? () => write(without(drafts, index)) : null}
          />
        ))}
      </div>
      {first && (
        <Button size="desk" onClick={() => write(withOneMore(drafts))}>
          {prepText.addPass}
        </Button>
      )}
      {sheet === 'edit' && machine && <MachineSheet machine={machine} onClose={() => setSheet(null)} />}
      {sheet === 'add' && (
        <AddMachine
          onClose={() => setSheet(null)}
          onAdded={(id, method) => {
            write(onMachine(drafts, method, id));
            setSheet(null);
          }}
        />
      )}
    </section>
  );
}

function recipeName(drafts: readonly PassDraft[]): string {
  return drafts.map((draft) => passName(draft.method, draft.abrasive)).join(', then ');
}

function machineChoiceOf(draft: PassDraft): string {
  return draft.machine ?? `method:${draft.method}`;
}
