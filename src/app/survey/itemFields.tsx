import type { ReactElement } from 'react';
import type { Settings } from '../session.ts';
import { MeasureField } from '../parts/MeasureField.tsx';
import { NumberField } from '../parts/NumberField.tsx';
import { Picker } from '../parts/Picker.tsx';
import { TextField } from '../parts/TextField.tsx';
import { fieldWords, findingWords, optionWords, readingWords } from '../../words/surveyWords.ts';
import { Answers } from './Answers.tsx';

/**
 * The fields of each kind of item, by slot. The sheet of a picked item and the entry bar of the tool that draws the
 * next one show the same fields: the sheet writes the plan, the bar writes what the next item starts with.
 */
export interface FieldsProps {
  readonly value: Settings;
  readonly onSet: (slots: Settings) => void;
  /** Labels before the boxes, choices as lists: the entry bar of the desk. */
  readonly inline?: boolean;
  /** What the next item starts with: only what is set before drawing. */
  readonly entry?: boolean;
}

type Fields = (props: FieldsProps) => ReactElement;

function mmOf(value: Settings[string]): number | null {
  return typeof value === 'number' ? value : null;
}

function answerOf<T extends string>(value: Settings[string], words: Readonly<Record<T, string>>): T | null {
  return typeof value === 'string' && value in words ? (value as T) : null;
}

const WallFields: Fields = ({ value, onSet, inline = false }) => (
  <MeasureField
    label={fieldWords.thickness}
    mm={mmOf(value['thicknessMm'])}
    minMm={1}
    maxMm={5000}
    inline={inline}
    onSet={(mm) => mm !== null && onSet({ thicknessMm: mm })}
  />
);

const OpeningFields: Fields = ({ value, onSet, inline = false }) => (
  <>
    <MeasureField
      label={inline ? fieldWords.width : fieldWords.clearWidth}
      mm={mmOf(value['widthMm'])}
      minMm={1}
      inline={inline}
      onSet={(mm) => mm !== null && onSet({ widthMm: mm })}
    />
    <MeasureField
      label={inline ? fieldWords.height : fieldWords.clearHeight}
      mm={mmOf(value['heightMm'])}
      minMm={1}
      inline={inline}
      onSet={(mm) => mm !== null && onSet({ heightMm: mm })}
    />
  </>
);

const CrackFields: Fields = ({ value, onSet, inline = false, entry = false }) => (
  <>
    <MeasureField
      label={fieldWords.crackWidth}
      kind="fine"
      optional
      mm={mmOf(value['widthMm'])}
      maxMm={100}
      inline={inline}
      onSet={(widthMm) => onSet({ widthMm })}
    />
    {!entry && (
      <MeasureField
        label={fieldWords.depth}
        kind="size"
        optional
        mm={mmOf(value['depthMm'])}
        maxMm={2000}
        onSet={(depthMm) => onSet({ depthMm })}
      />
    )}
    <Answers
      label={fieldWords.behaviour}
      words={optionWords.behaviour}
      columns={entry ? 4 : 2}
      value={answerOf(value['behaviour'], optionWords.behaviour)}
      onSet={(behaviour) => onSet({ behaviour })}
      inline={inline}
    />
  </>
);

const JointFields: Fields = ({ value, onSet, inline = false }) => (
  <>
    <Answers
      label={fieldWords.kind}
      words={optionWords.jointKind}
      value={answerOf(value['kind'], optionWords.jointKind)}
      onSet={(kind) => onSet({ kind })}
      inline={inline}
    />
    <Answers
      label={fieldWords.treat}
      words={optionWords.jointTreat}
      value={answerOf(value['treat'], optionWords.jointTreat)}
      onSet={(treat) => onSet({ treat })}
      inline={inline}
    />
  </>
);

const FindingFields: Fields = ({ value, onSet, inline = false }) => (
  <Picker
    label={fieldWords.kind}
    value={answerOf(value['kind'], findingWords)}
    options={Object.entries(findingWords).map(([key, words]) => ({ value: key, words }))}
    onPick={(kind) => onSet({ kind })}
    inline={inline}
  />
);

const EdgeKindFields: Fields = ({ value, onSet, inline = false, entry = false }) => {
  const kind = answerOf(value['kind'], optionWords.edgeKind);
  return (
    <>
      <Answers
        label={fieldWords.kind}
        words={optionWords.edgeKind}
        value={kind}
        onSet={(next) =>
          onSet({ kind: next, beyond: next === 'open' ? 'run' : next === 'doorway' ? 'stop' : undefined })
        }
        inline={inline}
      />
      {(kind === 'open' || kind === 'doorway') && (
        <Answers
          label={fieldWords.beyond}
          words={optionWords.beyond}
          value={answerOf(value['beyond'], optionWords.beyond)}
          onSet={(beyond) => onSet({ beyond })}
          inline={inline}
        />
      )}
      {kind === 'doorway' && !entry && (
        <MeasureField
          label={fieldWords.clearHeight}
          optional
          mm={mmOf(value['heightMm'])}
          onSet={(heightMm) => onSet({ heightMm })}
        />
      )}
    </>
  );
};

const UpstandFields: Fields = ({ value, onSet, inline = false }) => (
  <>
    <Answers
      label={fieldWords.upstand}
      words={optionWords.upstandKind}
      columns={2}
      value={answerOf(value['kind'], optionWords.upstandKind)}
      onSet={(kind) => onSet({ kind })}
      inline={inline}
    />
    <MeasureField
      label={inline ? fieldWords.height : fieldWords.upstandHeight}
      kind="size"
      mm={mmOf(value['heightMm'])}
      minMm={1}
      maxMm={3000}
      inline={inline}
      onSet={(mm) => mm !== null && onSet({ heightMm: mm })}
    />
    <Answers
      label={inline ? fieldWords.treat : fieldWords.upstandTreat}
      words={optionWords.upstandTreat}
      value={answerOf(value['treat'], optionWords.upstandTreat)}
      onSet={(treat) => onSet({ treat })}
      inline={inline}
    />
  </>
);

const ObstructionFields: Fields = ({ value, onSet, inline = false, entry = false }) => {
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

const EntranceFields: Fields = ({ value, onSet, inline = false }) => (
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

const ReadingFields: Fields = ({ value, onSet, inline = false }) => (
  <>
    <Picker
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

const NoteFields: Fields = ({ value, onSet }) => (
  <TextField
    label={fieldWords.words}
    value={typeof value['text'] === 'string' ? value['text'] : ''}
    onSet={(text) => text !== '' && onSet({ text })}
  />
);

const StepsFields: Fields = ({ value, onSet, inline = false }) => (
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
    <MeasureField
      label={fieldWords.going}
      kind="size"
      mm={mmOf(value['goingMm'])}
      minMm={1}
      inline={inline}
      onSet={(mm) => mm !== null && onSet({ goingMm: mm })}
    />
  </>
);

const SlabFields: Fields = ({ value, onSet, entry = false }) =>
  entry ? (
    <></>
  ) : (
    <>
      <MeasureField
        label={fieldWords.slabThickness}
        kind="size"
        optional
        mm={mmOf(value['thicknessMm'])}
        minMm={1}
        onSet={(mm) => onSet({ thicknessMm: mm ?? undefined })}
      />
      <Answers
        label={fieldWords.builtUp}
        words={optionWords.builtUp}
        value={answerOf(value['builtUp'], optionWords.builtUp)}
        onSet={(builtUp) => onSet({ builtUp })}
      />
    </>
  );

/** By tool; the tool of an item is named like its record, but for edges and upstands. */
export const itemFields: Readonly<Record<string, Fields>> = {
  slab: SlabFields,
  wall: WallFields,
  opening: OpeningFields,
  crack: CrackFields,
  joint: JointFields,
  finding: FindingFields,
  edgeKind: EdgeKindFields,
  upstand: UpstandFields,
  obstruction: ObstructionFields,
  entrance: EntranceFields,
  reading: ReadingFields,
  note: NoteFields,
  steps: StepsFields,
};
