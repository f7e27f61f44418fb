import { useState, type ReactElement } from 'react';
import css from './PrepRight.module.css';
import { PhaseList } from './PhaseList.tsx';
import { Button } from '../parts/Button.tsx';
import { Picker } from '../parts/Picker.tsx';
import { newId, run, useDoc } from '../plan.ts';
import type { Held } from '../../model/doc.ts';
import { phaseOf, phasesOf } from '../../takeoff/phases.ts';
import { phaseWords } from '../../words/prepWords.ts';

const NONE = 'none';

/** The visit on which a zone is worked: one of the floor's phases, or none. */
export function ZonePhase({ zone }: { readonly zone: Held<'zone'> }): ReactElement {
  const [listed, setListed] = useState(false);
  const phases = useDoc((doc) => phasesOf(doc, zone.floor));
  const mine = useDoc((doc) => phaseOf(doc, zone.floor, { record: zone }));

  function add(): void {
    run('addPhase', {
      id: newId('phase'),
      floor: zone.floor,
      name: phaseWords.usual(phases.length + 1),
      zone: zone.id,
    });
  }
  return (
    <section className={css.section}>
      <h3>{phaseWords.title}</h3>
      {phases.length > 0 && (
        <Picker<string>
          label={phaseWords.phase}
          value={mine ?? NONE}
          options={[
            { value: NONE, words: phaseWords.none },
            ...phases.map(({ id, name }) => ({ value: id as string, words: name })),
          ]}
          onPick={(id) => run('setField', { id: zone.id, slot: 'phase', value: id === NONE ? null : id })}
        />
      )}
      <div className={css.pair}>
        <Button onClick={add}>{phaseWords.add}</Button>
        {phases.length > 0 && <Button onClick={() => setListed(true)}>{phaseWords.change}</Button>}
      </div>
      {phases.length === 0 && <p className={css.note}>{phaseWords.help}</p>}
      {listed && <PhaseList floor={zone.floor} onClose={() => setListed(false)} />}
    </section>
  );
}
