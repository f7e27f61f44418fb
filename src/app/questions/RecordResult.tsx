import { useState, type ReactElement } from 'react';
import { answeredBy } from './answeredBy.ts';
import { Button } from '../parts/Button.tsx';
import { Choice } from '../parts/Choice.tsx';
import { Dialog } from '../parts/Dialog.tsx';
import { TextField } from '../parts/TextField.tsx';
import { isDay, today } from '../today.ts';
import type { Clearance } from '../../model/records/base.ts';
import { resultText } from '../../words/stageWords.ts';

interface RecordResultProps {
  readonly what: string;
  /** How the two results are called here; laboratory results are clear or found. */
  readonly words?: { readonly clear: string; readonly found: string };
  /** Says true when the record took it. */
  readonly onSave: (clearance: Clearance) => boolean;
  readonly onClose: () => void;
}

/** A result, a date and a person's name: nothing less clears a hold. */
export function RecordResult({ what, words, onSave, onClose }: RecordResultProps): ReactElement {
  const [result, setResult] = useState<Clearance['result'] | null>(null);
  const [on, setOn] = useState(today());
  // Who answers questions has seldom run the laboratory: a result that clears a hold gets its name typed.
  const [by, setBy] = useState(words ? answeredBy() : '');
  const [reference, setReference] = useState('');
  const [asked, setAsked] = useState(false);
  const dayFault = isDay(on) ? null : resultText.needsDate;
  const nameFault = by.trim() === '' ? resultText.needsName : null;

  function save(): void {
    setAsked(true);
    if (!result || dayFault || nameFault) return;
    const kept: Clearance = {
      result,
      on,
      by: by.trim(),
      ...(reference.trim() === '' ? {} : { reference: reference.trim() }),
    };
    if (onSave(kept)) onClose();
  }
  const options = [
    { value: 'clear', words: words?.clear ?? resultText.clear },
    { value: 'found', words: words?.found ?? resultText.found },
  ] as const;
  const outcome = words
    ? null
    : result === 'found'
      ? resultText.foundKeeps
      : result === 'clear'
        ? resultText.clears
        : resultText.sampled;
  return (
    <Dialog
      title={resultText.title(what)}
      open
      onClose={onClose}
      foot={
        <>
          <Button onClick={onClose}>{resultText.cancel}</Button>
          <Button kind="main" onClick={save} blocked={asked && !result ? resultText.needsResult : null}>
            {resultText.save}
          </Button>
        </>
      }
    >
      <div>
        <Choice label={resultText.result} value={result} options={options} onChoose={setResult} />
        {outcome && <p>{outcome}</p>}
      </div>
      <TextField label={resultText.on} value={on} onSet={setOn} onType={setOn} fault={asked ? dayFault : null} />
      <TextField label={resultText.by} value={by} onSet={setBy} onType={setBy} fault={asked ? nameFault : null} />
      <TextField label={resultText.reference} value={reference} onSet={setReference} onType={setReference} />
    </Dialog>
  );
}
