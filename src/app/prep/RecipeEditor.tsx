import { useState, type ReactElement } from 'react';
import css from './PrepRight.module.css';
import { AddMachine } from './AddMachine.tsx';
import { MachineSheet } from './MachineSheet.tsx';
import { PassFields } from './PassFields.tsx';
import { draftsOf, edgeOf, recipeArgs, withEdge, type EdgeWork, type PassDraft } from './recipeEdits.ts';
import { passName } from './passName.ts';
import { machineChoices, machineOfChoice } from './machineChoices.ts';
import { useZoneRecipe } from './useZoneRecipe.ts';
import { Button } from '../parts/Button.tsx';
import { NumberField } from '../parts/NumberField.tsx';
import { Picker } from '../parts/Picker.tsx';
import { newId, planStoreNow, run, useDoc } from '../plan.ts';
import type { Held } from '../../model/doc.ts';
import { abrasivesFor } from '../../takeoff/profile.ts';
import { isHandMethod, methods } from '../../takeoff/rates/methods.ts';
import { prepText } from '../../words/stageWords.ts';

const NONE = 'none';
const ADD = 'add';

/** What the floor gets: a machine and its passes, and what follows at the edge. */
export function RecipeEditor({ zone }: { readonly zone: Held<'zone'> }): ReactElement {
  const { prep, machine } = useZoneRecipe(zone);
  const doc = useDoc((now) => now);
  const [sheet, setSheet] = useState<'edit' | 'add' | null>(null);
  const drafts = draftsOf(prep);
  const first = drafts[0];
  const edge = edgeOf(drafts);

  function write(next: readonly PassDraft[]): void {
    const name = next.map((draft) => passName(draft.method, draft.abrasive)).join(', then ');
    run('setRecipe', recipeArgs(planStoreNow().getState(), zone, next, name, newId));
  }
  const change = (index: number, more: Partial<PassDraft>): void =>
    write(drafts.map((draft, at) => (at === index ? { ...draft, ...more } : draft)));

  /** Every pass that ran on the old machine runs on the new one; abrasives that do not fit it go. */
  function chooseMachine(choice: string): void {
    if (choice === ADD) return setSheet('add');
    const { method, machine: id } = machineOfChoice(doc, choice);
    write(
      drafts.map((draft) => ({
        ...draft,
        method,
        machine: id,
        abrasive: abrasivesFor(method).some((row) => row.id === draft.abrasive) ? draft.abrasive : null,
      })),
    );
  }
  const changeEdge = (more: Partial<EdgeWork>): void => write(withEdge(drafts, { ...edge, ...more }));
  const edgeTools = methods.filter((row) => isHandMethod(row) && row.group !== 'chase');
  const edgeAbrasives = edge.edgeMethod ? abrasivesFor(edge.edgeMethod) : [];
  return (
    <section className={css.section}>
      <h3>{prepText.floorGets}</h3>
      {!prep.planned && <p className={css.note}>{prepText.standIn}</p>}
      <Picker
        label={prepText.machine}
        value={first ? machineChoiceOf(first) : null}
        options={[...machineChoices(doc), { value: ADD, words: prepText.addMachine }]}
        onPick={chooseMachine}
      />
      {machine && (
        <Button size="desk" onClick={() => setSheet('edit')}>
          {prepText.machineSheet}
        </Button>
      )}
      <div>
        {drafts.map((draft, index) => (
          <PassFields
            key={draft.record ?? `stand-in ${String(index)}`}
            index={index}
            draft={draft}
            onChange={(more) => change(index, more)}
            onRemove={
              drafts.length > 1
                ? () =>
                    write(
                      withEdge(
                        drafts.filter((_, at) => at !== index),
                        edge,
                      ),
                    )
                : null
            }
          />
        ))}
      </div>
      {first && (
        <Button size="desk" onClick={() => write(withEdge([...drafts, oneMore(drafts.at(-1) ?? first)], edge))}>
          {prepText.addPass}
        </Button>
      )}
      <h3>{prepText.edge}</h3>
      <Picker
        label={prepText.edgeTool}
        value={edge.edgeMethod ?? NONE}
        options={[
          ...edgeTools.map((row) => ({ value: row.id, words: row.term })),
          { value: NONE, words: prepText.edgeNone },
        ]}
        onPick={(id) => changeEdge(id === NONE ? { edgeMethod: null } : { edgeMethod: id, edgeAbrasive: null })}
      />
      {edge.edgeMethod && (
        <div className={css.passBody}>
          <Picker
            label={prepText.abrasive}
            value={edge.edgeAbrasive ?? NONE}
            options={[
              { value: NONE, words: prepText.anyAbrasive },
              ...edgeAbrasives.map((row) => ({ value: row.id, words: row.term })),
            ]}
            onPick={(id) => changeEdge({ edgeAbrasive: id === NONE ? null : id })}
          />
          <NumberField
            label={prepText.edgeTimes}
            value={edge.edgeTimes}
            min={1}
            max={9}
            decimals={0}
            onSet={(edgeTimes) => edgeTimes !== null && changeEdge({ edgeTimes })}
          />
        </div>
      )}
      {sheet === 'edit' && machine && <MachineSheet machine={machine} onClose={() => setSheet(null)} />}
      {sheet === 'add' && (
        <AddMachine
          onClose={() => setSheet(null)}
          onAdded={(id, method) => write(drafts.map((draft) => ({ ...draft, machine: id, method, abrasive: null })))}
        />
      )}
    </section>
  );
}

function machineChoiceOf(draft: PassDraft): string {
  return draft.machine ?? `method:${draft.method}`;
}

/** A new pass, once over, like the one before it. */
function oneMore(like: PassDraft): PassDraft {
  return { ...like, record: null, times: 1 };
}
