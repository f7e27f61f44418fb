import type { ReactElement } from 'react';
import css from './PrepRight.module.css';
import { Choice } from '../parts/Choice.tsx';
import { run } from '../plan.ts';
import type { Json } from '../../model/cell.ts';
import type { Held } from '../../model/doc.ts';
import { prepText } from '../../words/stageWords.ts';

function optionsOf<T extends string>(
  words: Readonly<Record<T, string>>,
): { readonly value: T; readonly words: string }[] {
  return (Object.keys(words) as T[]).map((value) => ({ value, words: words[value] }));
}

/** What the work meets: indoors or out, wet or dry, how hard, and when. */
export function ZoneConditions({ zone }: { readonly zone: Held<'zone'> }): ReactElement {
  const set = (slot: string, value: Json): boolean => run('setField', { id: zone.id, slot, value });
  return (
    <>
      <div className={css.pair}>
        <Choice
          label={prepText.place}
          value={zone.place}
          options={optionsOf(prepText.places)}
          onChoose={(place) => set('place', place)}
        />
        <Choice
          label={prepText.wet}
          value={zone.wetAllowed ? 'yes' : 'no'}
          options={optionsOf(prepText.wets)}
          onChoose={(answer) => set('wetAllowed', answer === 'yes')}
        />
      </div>
      <Choice
        label={prepText.hardness}
        value={zone.hardness}
        options={optionsOf(prepText.hardnesses)}
        onChoose={(hardness) => set('hardness', hardness)}
      />
      <Choice
        label={prepText.time}
        columns={2}
        value={zone.time ?? 'normal'}
        options={optionsOf(prepText.times)}
        onChoose={(time) => set('time', time)}
      />
    </>
  );
}
