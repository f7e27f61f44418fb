import type { ReactElement } from 'react';
import css from './PrepRight.module.css';
import type { PassDraft } from './recipeEdits.ts';
import { Button } from '../parts/Button.tsx';
import { NumberField } from '../parts/NumberField.tsx';
import { Picker } from '../parts/Picker.tsx';
import { abrasivesFor } from '../../takeoff/profile.ts';
import { prepText } from '../../words/stageWords.ts';

interface PassFieldsProps {
  readonly index: number;
  readonly draft: PassDraft;
  readonly onChange: (more: Partial<PassDraft>) => void;
  readonly onRemove: (() => void) | null;
}

const NONE = 'none';
const MOST_TIMES = 20;

export function PassFields({ index, draft, onChange, onRemove }: PassFieldsProps): ReactElement {
  const fitting = abrasivesFor(draft.method);
  return (
    <div className={css.pass} role="group" aria-label={prepText.pass(index + 1)}>
      <div className={css.passHead}>
        <span>{prepText.pass(index + 1)}</span>
        {onRemove && (
          <Button size="desk" aria-label={prepText.removePass(index + 1)} onClick={onRemove}>
            {prepText.remove}
          </Button>
        )}
      </div>
      <div className={css.passBody}>
        <Picker
          label={prepText.abrasive}
          value={draft.abrasive ?? NONE}
          options={[
            { value: NONE, words: prepText.anyAbrasive },
            ...fitting.map((row) => ({ value: row.id, words: row.term })),
          ]}
          onPick={(id) => onChange({ abrasive: id === NONE ? null : id })}
        />
        <NumberField
          label={prepText.timesOver}
          value={draft.times}
          min={1}
          max={MOST_TIMES}
          decimals={0}
          onSet={(times) => times !== null && onChange({ times })}
        />
      </div>
    </div>
  );
}
