import { useEffect, useState, type ReactElement, type RefObject } from 'react';
import css from './Rates.module.css';
import { rateUnit } from '../../takeoff/rates/rateUnits.ts';
import { Button } from '../parts/Button.tsx';
import { NumberField } from '../parts/NumberField.tsx';
import { unitSign } from '../parts/Figure.tsx';
import { run, useUnits } from '../plan.ts';
import type { RecordId } from '../../model/cell.ts';
import { bookRow } from '../../takeoff/rates/book.ts';
import { rateRecordId } from '../../takeoff/rates/defaults.ts';
import type { Priced } from '../../takeoff/rates/rateBook.ts';
import { rateText, sourceSays } from '../../words/whyWords.ts';

type Bounds = Readonly<Record<'low' | 'likely' | 'high', number>>;
const bounds = ['low', 'likely', 'high'] as const;

interface RateEditorProps {
  readonly rate: Priced;
  readonly onDone: () => void;
  /** Filled with what keeps the figures that stand here; it says false while they cannot be kept. */
  readonly keepRef?: RefObject<(() => boolean) | null>;
}

/** Low, likely and high of one rate of this job, and the way back to the book's. */
export function RateEditor({ rate, onDone, keepRef }: RateEditorProps): ReactElement {
  const { unit, worth } = rateUnit(rate.unit, useUnits());
  const shown = (kept: number): number => kept / worth;
  const [draft, setDraft] = useState<Bounds>({
    low: shown(rate.low),
    likely: shown(rate.likely),
    high: shown(rate.high),
  });
  const [asked, setAsked] = useState(false);
  const rises = draft.low <= draft.likely && draft.likely <= draft.high;
  const positive = draft.low > 0;
  const fault = positive ? (rises ? null : rateText.order) : rateText.positive;
  const book = bookRow(rate.code);

  function keep(values: Bounds, source: string, provenance: string, fromMemory: boolean): boolean {
    const id: RecordId = rate.record ?? rateRecordId(rate.code);
    const fields = { code: rate.code, term: rate.term, unit: rate.unit, ...values, source, provenance, fromMemory };
    return run('setRateRow', { id, fields });
  }
  function save(): boolean {
    setAsked(true);
    if (bounds.every((bound) => draft[bound] === shown(rate[bound]))) return true;
    if (fault) return false;
    return keep(
      { low: draft.low * worth, likely: draft.likely * worth, high: draft.high * worth },
      'own figure',
      'own',
      false,
    );
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
            onSet={(value) => value !== null && setDraft((was) => ({ ...was, [bound]: value }))}
          />
        ))}
      </div>
      <p className={css.note}>
        {unitSign(unit)}, {sourceSays(rate.source, rate.provenance, rate.fromMemory)}
      </p>
      {asked && fault && (
        <p role="alert" className={css.fault}>
          {fault}
        </p>
      )}
      <div className={css.buttons}>
        <Button size="desk" onClick={() => save() && onDone()}>
          {rateText.save}
        </Button>
        {book && (
          <Button
            size="desk"
            onClick={() =>
              keep(
                { low: book.low, likely: book.likely, high: book.high },
                book.source,
                book.provenance,
                book.fromMemory,
              ) && onDone()
            }
          >
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
