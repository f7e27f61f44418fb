import { MeasureField } from '../parts/MeasureField.tsx';
import { Picker } from '../parts/Picker.tsx';
import { useUnits } from '../plan.ts';
import { fieldWords, findingWords, optionWords } from '../../words/surveyWords.ts';
import { Answers } from './Answers.tsx';
import { answerOf, mmOf, type Fields } from './fieldProps.ts';
import sheet from './sheets/Sheet.module.css';
import { ObstructionFields, EntranceFields, ReadingFields, NoteFields, StepsFields } from './spotFields.tsx';

const WallFields: Fields = ({ value, onSet, inline = false }) => (
  <MeasureField
    label={fieldWords.thickness}
    kind={useUnits() === 'imperial' ? 'size' : 'length'}
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

const JointFields: Fields = ({ value, onSet, inline = false, entry = false }) => (
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
    {!entry && (
      <>
        <Answers
          label={fieldWords.oldFiller}
          words={optionWords.yesNo}
          value={value['oldFiller'] === true ? 'yes' : 'no'}
          onSet={(answer) => onSet({ oldFiller: answer === 'yes' })}
        />
        <Answers
          label={fieldWords.steelAngle}
          words={optionWords.yesNo}
          value={value['steelAngle'] === true ? 'yes' : 'no'}
          onSet={(answer) => onSet({ steelAngle: answer === 'yes' })}
        />
      </>
    )}
  </>
);

const FindingFields: Fields = ({ value, onSet, inline = false }) => (
  <Picker
    className={inline ? undefined : sheet.wide}
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
