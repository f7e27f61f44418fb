import type { ReactElement } from 'react';
import css from './PrepRight.module.css';
import type { PassDraft } from './recipeEdits.ts';
import { Button } from '../parts/Button.tsx';
import { NumberField } from '../parts/NumberField.tsx';
import { Picker, type PickerOption } from '../parts/Picker.tsx';
import { abrasivesFor } from '../../takeoff/profile.ts';
import { isHandMethod, methods } from '../../takeoff/rates/methods.ts';
import { prepText } from '../../words/stageWords.ts';

interface PassFieldsProps {
  readonly index: number;
  readonly draft: PassDraft;
  readonly onChange: (more: Partial<PassDraft>) => void;
  readonly onRemove: (() => void) | null;
}

const NONE = 'none';
const MOST_TIMES = 20;

const edgeTools: readonly PickerOption<string>[] = [
  ...methods
    .filter((row) => isHandMethod(row) && row.group !== 'chase')
    .map((row) => ({ value: row.id, words: row.term })),
  { value: NONE, words: prepText.edgeNone },
];

function abrasiveOptions(method: string): readonly PickerOption<string>[] {
  return [
    { value: NONE, words: prepText.anyAbrasive },
    ...abrasivesFor(method).map((row) => ({ value: row.id, words: row.term })),
  ];
}

/** One pass: its abrasive, how often, and what follows it at the edge. */
export function PassFields({ index, draft, onChange, onRemove }: PassFieldsProps): ReactElement {
  const { edgeMethod } = draft;
  const chooseEdge = (id: string): void => {
    if (id === NONE) onChange({ edgeMethod: null, edgeAbrasive: null, edgeTimes: 0 });
    else onChange({ edgeMethod: id, edgeAbrasive: null, edgeTimes: Math.max(1, draft.edgeTimes) });
  };
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
          options={abrasiveOptions(draft.method)}
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
      <Picker label={prepText.edgeTool} value={edgeMethod ?? NONE} options={edgeTools} onPick={chooseEdge} />
      {edgeMethod !== null && (
        <div className={css.passBody}>
          <Picker
            label={prepText.edgeAbrasive}
            value={draft.edgeAbrasive ?? NONE}
            options={abrasiveOptions(edgeMethod)}
            onPick={(id) => onChange({ edgeAbrasive: id === NONE ? null : id })}
          />
          <NumberField
            label={prepText.edgeTimes}
            value={draft.edgeTimes}
            min={1}
            max={MOST_TIMES}
            decimals={0}
            onSet={(edgeTimes) => edgeTimes !== null && onChange({ edgeTimes })}
          />
        </div>
      )}
    </div>
  );
}
