import type { ReactElement } from 'react';
import css from './Estimate.module.css';
import { Button } from '../parts/Button.tsx';
import { Dialog } from '../parts/Dialog.tsx';
import { TextField } from '../parts/TextField.tsx';
import { useDoc } from '../plan.ts';
import { openPanel } from '../session.ts';
import { usePricing } from '../rates/usePricing.ts';
import { sentencesOf } from '../../exchange/estimateNow.ts';
import { estimateText } from '../../words/estimateWords.ts';

type Slot = 'assumptions' | 'exclusions';
const slots = ['assumptions', 'exclusions'] as const;

/** What the price rests on and leaves out, one sentence a line; the usual ones until somebody changes them. */
export function SentencesDialog(): ReactElement {
  const doc = useDoc((now) => now);
  const { pricing, setPricing } = usePricing();
  const sentences = sentencesOf(doc);
  const close = (): void => openPanel('issueEstimate');
  function set(slot: Slot, typed: string): void {
    const lines = typed
      .split('\n')
      .map((line) => line.trim())
      .filter((line) => line !== '');
    setPricing({ [slot]: lines });
  }
  return (
    <Dialog
      title={estimateText.words}
      open
      wide
      onClose={close}
      foot={
        <>
          {(pricing.assumptions ?? pricing.exclusions) && (
            <Button onClick={() => setPricing({}, ['assumptions', 'exclusions'])}>{estimateText.usualWords}</Button>
          )}
          <Button kind="main" onClick={close}>
            {estimateText.wordsDone}
          </Button>
        </>
      }
    >
      <p className={css.note}>{estimateText.wordsSay}</p>
      <div className={css.long}>
        {slots.map((slot) => (
          <TextField
            key={slot}
            label={estimateText[slot]}
            value={sentences[slot].join('\n')}
            lines
            onSet={(typed) => set(slot, typed)}
          />
        ))}
      </div>
    </Dialog>
  );
}
