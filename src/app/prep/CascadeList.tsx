import { useState, type ReactElement } from 'react';
import css from './CascadeList.module.css';
import { AddMachine } from './AddMachine.tsx';
import { addFollowerArgs, cascadeArgs, type RecipeNow } from './cascadeEdits.ts';
import { followerChoices, followerMethods } from './machineChoices.ts';
import { MachineSheet } from './MachineSheet.tsx';
import { useZoneRecipe } from './useZoneRecipe.ts';
import { zoneKey } from './zoneNames.ts';
import { Button } from '../parts/Button.tsx';
import { Picker } from '../parts/Picker.tsx';
import { newId, planStoreNow, run, useDoc, useTakeoff, useUnits } from '../plan.ts';
import type { RecordId } from '../../model/cell.ts';
import { recordOf } from '../../model/doc.ts';
import { figureText, showArea, showNumber } from '../../model/showNumber.ts';
import { cascadeOf, type PlannedMachine } from '../../takeoff/prep.ts';
import { workedFields } from '../../takeoff/workedFields.ts';
import { prepText } from '../../words/stageWords.ts';
import { unitSign } from '../parts/Figure.tsx';

const ADD = 'add';
/** A share is shown to a tenth of a percent; what is less and not nothing must not read as nothing. */
const LEAST_SHARE = 0.1;

/** Machines that work what the first one leaves, biggest first, each with what it gets of the zone. */
export function CascadeList({ recipe }: { readonly recipe: RecipeNow }): ReactElement | null {
  const { zone } = recipe;
  const { prep } = useZoneRecipe(zone);
  const units = useUnits();
  const choices = useDoc((doc) => followerChoices(doc, prep, units));
  const [sheet, setSheet] = useState<PlannedMachine | 'add' | null>(null);
  const machines = cascadeOf(prep);
  const shares = useShares(recipe);
  if (!prep.machine) return null;

  const doc = () => planStoreNow().getState();
  const takeOut = (id: string): boolean => run('removeFollower', cascadeArgs(doc(), id as RecordId, recipe, newId));
  const move = (id: string, before: string | null): boolean =>
    run('moveFollower', { ...cascadeArgs(doc(), id as RecordId, recipe, newId), before });
  function add(choice: string): void {
    if (choice === ADD) setSheet('add');
    else run('addFollower', addFollowerArgs(doc(), choice, recipe, newId));
  }
  return (
    <div className={css.cascade}>
      {prep.followers.length > 0 && (
        <>
          <h4>{prepText.followers}</h4>
          <ol>
            {machines.map((machine, place) => (
              <li key={machine.id}>
                <div className={css.machine}>
                  <span>{machine.name}</span>
                  <span>{shares.get(machine.id) ?? ''}</span>
                </div>
                {place > 0 && (
                  <div className={css.doing}>
                    <Button size="desk" aria-label={prepText.sizesOf(machine.name)} onClick={() => setSheet(machine)}>
                      {prepText.machineSheet}
                    </Button>
                    {isAlike(machines[place - 1], machine, place - 1) && (
                      <Button
                        size="desk"
                        aria-label={prepText.moveEarlier(machine.name)}
                        onClick={() => move(machine.id, machines[place - 1]?.id ?? null)}
                      >
                        {prepText.earlier}
                      </Button>
                    )}
                    {isAlike(machine, machines[place + 1], place) && (
                      <Button
                        size="desk"
                        aria-label={prepText.moveLater(machine.name)}
                        onClick={() => move(machine.id, machines[place + 2]?.id ?? null)}
                      >
                        {prepText.later}
                      </Button>
                    )}
                    <Button size="desk" aria-label={prepText.takeOut(machine.name)} onClick={() => takeOut(machine.id)}>
                      {prepText.remove}
                    </Button>
                  </div>
                )}
              </li>
            ))}
          </ol>
          <p className={css.note}>{prepText.followersHelp}</p>
        </>
      )}
      <Picker
        label={prepText.addFollower}
        value={null}
        empty={choices.length === 0 ? prepText.noFollower : prepText.chooseFollower}
        options={[...choices, { value: ADD, words: prepText.addMachine }]}
        onPick={add}
      />
      {sheet !== null && sheet !== 'add' && <MachineSheet machine={sheet} onClose={() => setSheet(null)} />}
      {sheet === 'add' && (
        <AddMachine
          kinds={followerMethods(prep)}
          onClose={() => setSheet(null)}
          onAdded={(id) => {
            if (!run('addFollower', cascadeArgs(doc(), id, recipe, newId))) return setSheet(null);
            // It has the sizes of its class, which another one of that class has as well: now those of its plate.
            const added = recordOf(doc(), 'machine', id);
            setSheet(added ? { ...added, id } : null);
          }}
        />
      )}
    </div>
  );
}

/** Only machines of one width can change places; `place` is that of the first of the two, and the first machine of all stays. */
function isAlike(one: PlannedMachine | undefined, next: PlannedMachine | undefined, place: number): boolean {
  return place > 0 && one !== undefined && next !== undefined && one.cutWidthMm === next.cutWidthMm;
}

/** Area and share of the zone by machine, as words; nothing while it is not measured. */
function useShares({ zone }: RecipeNow): ReadonlyMap<string, string> {
  const { prep } = useZoneRecipe(zone);
  const { takeoff } = useTakeoff();
  const units = useUnits();
  const measure = takeoff?.measure.zones.find((each) => each.id === zoneKey(zone));
  if (!measure || measure.netM2 === 0) return new Map();
  return new Map(
    workedFields({ measure, prep, held: null }).map(({ machine, areaM2 }) => {
      const area = showArea(areaM2, units);
      const percent = (areaM2 / measure.netM2) * 100;
      const isTrace = areaM2 > 0 && percent < LEAST_SHARE;
      const share = `${showNumber(isTrace ? LEAST_SHARE : percent, 1)} %`;
      return [
        machine?.id ?? '',
        prepText.shareOf(
          figureText({ ...area, unit: unitSign(area.unit) }),
          isTrace ? prepText.lessThan(share) : share,
        ),
      ];
    }),
  );
}
