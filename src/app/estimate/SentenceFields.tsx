import type { ReactElement } from 'react';
import css from './Estimate.module.css';
import { Button } from '../parts/Button.tsx';
import { TextField } from '../parts/TextField.tsx';
import { useDoc } from '../plan.ts';
import type { PricingEdits } from '../rates/usePricing.ts';
import { sentencesOf } from '../../exchange/estimateNow.ts';
import { estimateText } from '../../words/estimateWords.ts';

const slots = ['assumptions', 'exclusions'] as const;

/** What the price rests on and leaves out, one sentence a line; the usual ones until somebody changes them. */
export function SentenceFields({ edits }: { readonly edits: PricingEdits }): ReactElement {
  const { pricing, setPricing } = edits;
  const sentences = useDoc(sentencesOf);
  function set(slot: (typeof slots)[number], typed: string): void {
    const lines = typed.split('\n').map((line) => line.trim());
    setPricing({ [slot]: lines.filter((line) => line !== '') });
  }
  return (
    <div className={css.long}>
      <p className={css.note}>{estimateText.wordsSay}</p>
      {slots.map((slot) => (
        <TextField
          key={slot}
          label={estimateText[slot]}
          value={sentences[slot].join('\n')}
          lines
          onSet={(typed) => set(slot, typed)}
        />
      ))}
      {(pricing.assumptions ?? pricing.exclusions) && (
        <div>
          <Button size="desk" onClick={() => setPricing({}, ['assumptions', 'exclusions'])}>
            {estimateText.usualWords}
          </Button>
        </div>
      )}
    </div>
  );
}
