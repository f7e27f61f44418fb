import { useState, type ReactElement } from 'react';
import css from './Questions.module.css';
import { RecordResult } from './RecordResult.tsx';
import { answeredBy, setAnsweredBy } from './answeredBy.ts';
import { Button } from '../parts/Button.tsx';
import { Choice } from '../parts/Choice.tsx';
import { TextField } from '../parts/TextField.tsx';
import { run, useJob } from '../plan.ts';
import type { Json } from '../../model/cell.ts';
import {
  answerWords,
  questionSlots,
  questionsText,
  questionWords,
  resultText,
  type AnswerCode,
  type QuestionSlot,
} from '../../words/stageWords.ts';
import { today } from '../today.ts';

const options = (['yes', 'no', 'unknown'] as const).map((value) => ({ value, words: answerWords[value] }));

/** The four questions that stand before a price. Each answer keeps who gave it and when. */
export function Questions(): ReactElement | null {
  const job = useJob();
  const [by, setBy] = useState(answeredBy());
  const [locating, setLocating] = useState(false);
  if (!job) return null;

  function answer(question: QuestionSlot, code: AnswerCode): void {
    run('answerQuestion', { job: job?.id ?? '', question, answer: code, on: today(), ...(by === '' ? {} : { by }) });
  }
  const located = job.inSlabLocated;
  return (
    <div className={css.questions}>
      <div className={css.who}>
        <TextField
          label={questionsText.who}
          value={by}
          say={questionsText.whoHelp}
          onSet={(name) => {
            setBy(name);
            setAnsweredBy(name);
          }}
        />
      </div>
      {questionSlots.map((slot) => {
        const given = job[slot];
        return (
          <section key={slot} className={css.question} aria-label={questionWords[slot].ask}>
            <h3>{questionWords[slot].ask}</h3>
            <Choice
              label={questionWords[slot].ask}
              quiet
              value={given?.answer ?? null}
              options={options}
              onChoose={(code) => answer(slot, code)}
            />
            <p>{questionWords[slot].notes[given?.answer ?? 'open']}</p>
            {given?.on && <p className={css.kept}>{questionsText.answeredBy(given.by, given.on)}</p>}
            {slot === 'inSlab' && given && given.answer !== 'no' && (
              <div className={css.locate}>
                <span>
                  {questionsText.locate}:{' '}
                  {located?.result === 'clear'
                    ? `${resultText.located}, ${located.by}, ${located.on}`
                    : resultText.notLocated}
                </span>
                <Button size="desk" onClick={() => setLocating(true)}>
                  {resultText.record}
                </Button>
              </div>
            )}
          </section>
        );
      })}
      {locating && (
        <RecordResult
          what={questionsText.locate}
          words={{ clear: resultText.located, found: resultText.notLocated }}
          onClose={() => setLocating(false)}
          onSave={(clearance) =>
            run('recordClearance', { record: job.id, slot: 'inSlabLocated', clearance: clearance as Json })
          }
        />
      )}
    </div>
  );
}
