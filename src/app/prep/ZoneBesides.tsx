import type { ReactElement } from 'react';
import css from './PrepRight.module.css';
import { AreaField } from './AreaField.tsx';
import { Choice } from '../parts/Choice.tsx';
import { run } from '../plan.ts';
import type { Json } from '../../model/cell.ts';
import type { Held } from '../../model/doc.ts';
import { testsOf } from '../../takeoff/besidesLines.ts';
import { besidesWords } from '../../words/prepWords.ts';

const TESTS = ['csp', 'pull', 'rh'] as const;

/** What is done before and after the floor itself: goods, masking, groove, mock-up, tests. Each has hours of its own. */
export function ZoneBesides({ zone }: { readonly zone: Held<'zone'> }): ReactElement {
  const set = (slot: string, value: Json): boolean => run('setField', { id: zone.id, slot, value });
  const clear = (slot: string): boolean => run('setField', { id: zone.id, slot, clear: true });
  const setArea = (slot: string, areaM2: number | null): boolean => (areaM2 === null ? clear(slot) : set(slot, areaM2));
  const tests = testsOf({ prep: { record: zone } });
  const cuts = zone.groove === true || tests.includes('pull') || tests.includes('rh');
  return (
    <section className={css.section}>
      <h3>{besidesWords.title}</h3>
      <Choice
        label={besidesWords.goods}
        value={zone.goodsBy ?? 'others'}
        options={[
          { value: 'others', words: besidesWords.goodsBy.others },
          { value: 'us', words: besidesWords.goodsBy.us },
        ]}
        onChoose={(by) => set('goodsBy', by)}
      />
      {zone.goodsBy === 'us' && (
        <AreaField
          label={besidesWords.goodsArea}
          areaM2={zone.goodsM2 ?? null}
          say={besidesWords.goodsSay}
          onSet={(areaM2) => setArea('goodsM2', areaM2)}
        />
      )}
      <div className={css.pair}>
        <YesNo label={besidesWords.mask} value={zone.maskWalls === true} onSet={(answer) => set('maskWalls', answer)} />
        <YesNo label={besidesWords.groove} value={zone.groove === true} onSet={(answer) => set('groove', answer)} />
        {TESTS.map((test) => (
          <YesNo
            key={test}
            label={besidesWords[test]}
            value={tests.includes(test)}
            onSet={(answer) =>
              set(
                'tests',
                TESTS.filter((each) => (each === test ? answer : tests.includes(each))),
              )
            }
          />
        ))}
      </div>
      <AreaField
        label={besidesWords.mockUp}
        areaM2={zone.mockUpM2 ?? null}
        say={besidesWords.mockUpSay}
        onSet={(areaM2) => setArea('mockUpM2', areaM2)}
      />
      {cuts && <p className={css.note}>{besidesWords.cuts}</p>}
    </section>
  );
}

interface YesNoProps {
  readonly label: string;
  readonly value: boolean;
  readonly onSet: (answer: boolean) => void;
}

function YesNo({ label, value, onSet }: YesNoProps): ReactElement {
  return (
    <Choice
      label={label}
      value={value ? 'yes' : 'no'}
      options={[
        { value: 'no', words: besidesWords.answers.no },
        { value: 'yes', words: besidesWords.answers.yes },
      ]}
      onChoose={(answer) => onSet(answer === 'yes')}
    />
  );
}
