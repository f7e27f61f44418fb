import type { ReactElement } from 'react';
import { MeasureField } from '../parts/MeasureField.tsx';
import { NumberField } from '../parts/NumberField.tsx';
import { Picker } from '../parts/Picker.tsx';
import { TextField } from '../parts/TextField.tsx';
import { fieldWords, optionWords, readingWords } from '../../words/surveyWords.ts';
import { Answers } from './Answers.tsx';
import { answerOf, mmOf, type Fields } from './fieldProps.ts';
import sheet from './sheets/Sheet.module.css';

export const ObstructionFields: Fields = ({ value, onSet, inline = false, entry = false }) => {
  const form = answerOf(value['form'], optionWords.form);
  const size = (label: string, slot: string): ReactElement => (
    <MeasureField
      label={label}
      mm={mmOf(value[slot])}
      minMm={1}
      inline={inline}
      onSet={(mm) => mm !== null && onSet({ [slot]: mm })}
    />
  );
  return (
    <>
      <Answers
        label={fieldWords.kind}
        words={optionWords.obstructionKind}
        columns={4}
        value={answerOf(value['kind'], optionWords.obstructionKind)}
        onSet={(kind) => onSet({ kind })}
        inline={inline}
      />
      {entry && (
        <Answers
          label={fieldWords.form}
          words={optionWords.form}
          value={form}
          onSet={(next) => onSet({ form: next })}
          inline={inline}
        />
      )}
      {form === 'rectangle' && size(fieldWords.width, 'widthMm')}
      {form === 'rectangle' && size(fieldWords.depth, 'depthMm')}
      {form === 'circle' && size(fieldWords.diameter, 'diameterMm')}
      {form === 'rectangle' && !entry && (
        <NumberField
          label={fieldWords.turnOf}
          unit="°"
          value={mmOf(value['turnDeg'])}
          decimals={1}
          onSet={(turnDeg) => onSet({ turnDeg })}
        />
      )}
      {!entry && (
        <Answers
          label={fieldWords.under}
          words={optionWords.under}
          columns={2}
          value={answerOf(value['under'], optionWords.under)}
          onSet={(under) => onSet({ under })}
        />
      )}
    </>
  );
};

export const EntranceFields: Fields = ({ value, onSet, inline = false }) => (
  <>
    <MeasureField
      label={inline ? fieldWords.width : fieldWords.narrowest}
      optional
      mm={mmOf(value['widthMm'])}
      inline={inline}
      onSet={(widthMm) => onSet({ widthMm })}
    />
    <MeasureField
      label={inline ? fieldWords.height : fieldWords.lowest}
      optional
      mm={mmOf(value['heightMm'])}
      inline={inline}
      onSet={(heightMm) => onSet({ heightMm })}
    />
  </>
);

export const ReadingFields: Fields = ({ value, onSet, inline = false }) => (
  <>
    <Picker
      className={inline ? undefined : sheet.wide}
      label={fieldWords.kind}
      value={answerOf(value['kind'], readingWords as unknown as Readonly<Record<string, string>>)}
      options={Object.entries(readingWords).map(([key, { words, unit }]) => ({ value: key, words, more: unit }))}
      onPick={(kind) => onSet({ kind, unit: readingWords[kind]?.unit ?? '' })}
      inline={inline}
    />
    <NumberField
      label={fieldWords.value}
      value={mmOf(value['value'])}
      unit={typeof value['unit'] === 'string' ? value['unit'] : ''}
      optional
      inline={inline}
      onSet={(next) => onSet({ value: next })}
    />
  </>
);

export const NoteFields: Fields = ({ value, onSet, inline = false }) => (
  <TextField
    label={fieldWords.words}
    inline={inline}
    value={typeof value['text'] === 'string' ? value['text'] : ''}
    onSet={(text) => text !== '' && onSet({ text })}
  />
);

export const StepsFields: Fields = ({ value, onSet, inline = false, entry = false }) => (
  <>
    <NumberField
      label={fieldWords.count}
      value={mmOf(value['count'])}
      min={1}
      decimals={0}
      inline={inline}
      onSet={(count) => onSet({ count })}
    />
    <MeasureField
      label={fieldWords.rise}
      kind="size"
      mm={mmOf(value['riseMm'])}
      minMm={1}
      inline={inline}
      onSet={(mm) => mm !== null && onSet({ riseMm: mm })}
    />
    {!entry && (
      <MeasureField
        label={fieldWords.going}
        kind="size"
        mm={mmOf(value['goingMm'])}
        minMm={1}
        inline={inline}
        onSet={(mm) => mm !== null && onSet({ goingMm: mm })}
      />
    )}
  </>
);
