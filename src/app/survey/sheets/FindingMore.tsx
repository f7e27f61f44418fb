import type { ReactElement } from 'react';
import css from './Sheet.module.css';
import type { Held } from '../../../model/doc.ts';
import { Choice } from '../../parts/Choice.tsx';
import { MeasureField } from '../../parts/MeasureField.tsx';
import { NumberField } from '../../parts/NumberField.tsx';
import type { Settings } from '../../session.ts';
import { fieldWords, surveyText } from '../../../words/surveyWords.ts';
import { Answers } from '../Answers.tsx';
import { optionWords } from '../../../words/surveyWords.ts';

/** Coverings have a thickness, layers, a bond and an age; losses of the surface have a depth. */
const COVERINGS = new Set([
  'adhesive',
  'mastic_black',
  'paint',
  'tyre_lifted',
  'elastomer',
  'sealer',
  'levelling',
  'thinset',
  'ceramic',
  'gypsum',
  'tape',
  'cure',
  'wax',
]);
const DEPTHS = new Set(['pitting', 'hollow', 'oil_deep', 'acid_attack', 'laitance']);
/** Each span is kept as its middle, in years. */
const AGES = { young: 3, mid: 10, old: 20 } as const;

function ageAnswer(years: number | undefined): keyof typeof AGES | 'unknown' {
  if (years === undefined) return 'unknown';
  if (years < 5) return 'young';
  return years <= 15 ? 'mid' : 'old';
}

interface MoreProps {
  readonly finding: Held<'finding'>;
  readonly onSet: (slots: Settings) => void;
}

export function FindingMore({ finding, onSet }: MoreProps): ReactElement {
  const ages = [
    ...(Object.keys(AGES) as (keyof typeof AGES)[]).map((value) => ({ value, words: surveyText.age[value] })),
    { value: 'unknown' as const, words: surveyText.dontKnow },
  ];
  return (
    <>
      {COVERINGS.has(finding.kind) && (
        <>
          <MeasureField
            label={fieldWords.thickness}
            kind="fine"
            optional
            mm={finding.thicknessMm ?? null}
            onSet={(mm) => onSet({ thicknessMm: mm ?? undefined })}
          />
          <NumberField
            label={fieldWords.layers}
            value={finding.layers ?? null}
            optional
            min={1}
            max={20}
            decimals={0}
            onSet={(layers) => onSet({ layers: layers ?? undefined })}
          />
          <div className={css.wide}>
            <Answers
              label={fieldWords.bond}
              words={optionWords.bond}
              value={finding.bond ?? null}
              onSet={(bond) => onSet({ bond })}
            />
          </div>
          <div className={css.wide}>
            <Choice
              label={fieldWords.age}
              value={ageAnswer(finding.ageYears)}
              options={ages}
              columns={2}
              onChoose={(age) => onSet({ ageYears: age === 'unknown' ? undefined : AGES[age] })}
            />
          </div>
        </>
      )}
      {DEPTHS.has(finding.kind) && (
        <MeasureField
          label={fieldWords.depth}
          kind="fine"
          optional
          mm={finding.depthMm ?? null}
          onSet={(mm) => onSet({ depthMm: mm ?? undefined })}
        />
      )}
    </>
  );
}
