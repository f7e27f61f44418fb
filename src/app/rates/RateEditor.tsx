import { useEffect, useState, type ReactElement, type RefObject } from 'react';
import css from './RateEditor.module.css';
import { Button } from '../parts/Button.tsx';
import { NumberField } from '../parts/NumberField.tsx';
import { unitSign } from '../parts/Figure.tsx';
import { TextField } from '../parts/TextField.tsx';
import { planStoreNow, run, useUnits } from '../plan.ts';
import { machineOfCode } from '../../takeoff/rates/machineRate.ts';
import type { Priced } from '../../takeoff/rates/rateBook.ts';
import { baseRow, OWN_FIGURE, ownRate, rowsOfBook } from '../../takeoff/rates/rateChanges.ts';
import { isSameRow } from '../../takeoff/rates/rowEdition.ts';
import { rateUnit } from '../../takeoff/rates/rateUnits.ts';
import { rateBookText, rateText } from '../../words/rateWords.ts';
import { sourceSays } from '../../words/whyWords.ts';

type Bounds = Readonly<Record<'low' | 'likely' | 'high', number>>;
const bounds = ['low', 'likely', 'high'] as const;

interface RateEditorProps {
  readonly rate: Priced;
  readonly onDone: () => void;
  /** Filled with what keeps the figures that stand here; it says false while they cannot be kept. */
  readonly keepRef?: RefObject<(() => boolean) | null>;
}

/** Low, likely and high of one rate of this job with where they come from, and the way back to the book's. */
export function RateEditor({ rate, onDone, keepRef }: RateEditorProps): ReactElement {
  const { unit, worth } = rateUnit(rate.unit, useUnits());
  const shown = (kept: number): number => kept / worth;
  const [draft, setDraft] = useState<Bounds>({
    low: shown(rate.low),
    likely: shown(rate.likely),
    high: shown(rate.high),
  });
  const was = rate.provenance === 'own' && rate.source !== OWN_FIGURE ? rate.source : '';
  const [source, setSource] = useState(was);
  const [asked, setAsked] = useState(false);
  const rises = draft.low <= draft.likely && draft.likely <= draft.high;
  const base = baseRow(rate.code);
  // What may be nothing in the book (taken off by a wash) may be nothing here.
  const positive = draft.low > 0 || base?.low === 0;
  const differs =
    rate.record !== null && base !== null && (machineOfCode(rate.code) !== null || !isSameRow(rate, base));
  const fault = positive ? (rises ? null : rateText.order) : rateText.positive;

  function save(): boolean {
    setAsked(true);
    if (bounds.every((bound) => draft[bound] === shown(rate[bound])) && source.trim() === was) return true;
    if (fault) return false;
    // What nobody has touched stays as it is kept, to the last figure.
    const kept = (bound: keyof Bounds): number =>
      draft[bound] === shown(rate[bound]) ? rate[bound] : draft[bound] * worth;
    const change = ownRate(
      planStoreNow().getState(),
      rate.code,
      { low: kept('low'), likely: kept('likely'), high: kept('high') },
      source,
    );
    return change !== null && run('setRateRow', { ...change });
  }
  function goBack(): boolean {
    return run('setRateRows', { rows: [...rowsOfBook(planStoreNow().getState(), [rate.code])] });
  }
  useEffect(() => {
    if (!keepRef) return;
    keepRef.current = save;
    return () => {
      keepRef.current = null;
    };
  });
  return (
    <div className={css.editor} role="group" aria-label={rateText.rateOf(rate.term)}>
      <b>{rate.term}</b>
      <div className={css.three}>
        {bounds.map((bound) => (
          <NumberField
            key={bound}
            label={rateText[bound]}
            value={draft[bound]}
            decimals={3}
            min={0}
            onSet={(value) => value !== null && setDraft((now) => ({ ...now, [bound]: value }))}
          />
        ))}
      </div>
      <p className={css.note}>
        {unitSign(unit)}, {sourceSays(rate.source, rate.provenance, rate.fromMemory)}
      </p>
      <TextField
        label={rateBookText.sourceField}
        value={source}
        onSet={setSource}
        onType={setSource}
        say={rateBookText.sourceHelp}
      />
      {asked && fault && (
        <p role="alert" className={css.fault}>
          {fault}
        </p>
      )}
      <div className={css.buttons}>
        <Button size="desk" onClick={() => save() && onDone()}>
          {rateText.save}
        </Button>
        {differs && (
          <Button size="desk" onClick={() => goBack() && onDone()}>
            {rateText.back}
          </Button>
        )}
        <Button size="desk" onClick={onDone}>
          {rateText.cancel}
        </Button>
      </div>
    </div>
  );
}
