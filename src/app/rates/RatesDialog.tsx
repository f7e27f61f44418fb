import { useRef, useState, type ReactElement } from 'react';
import css from './Rates.module.css';
import { RateEditor } from './RateEditor.tsx';
import { rateUnit } from '../../takeoff/rates/rateUnits.ts';
import { Button } from '../parts/Button.tsx';
import { Dialog } from '../parts/Dialog.tsx';
import { unitSign } from '../parts/Figure.tsx';
import { TextField } from '../parts/TextField.tsx';
import { useDoc, useUnits } from '../plan.ts';
import { openPanel } from '../session.ts';
import { showNumber } from '../../model/showNumber.ts';
import { book } from '../../takeoff/rates/book.ts';
import { rateBook, type Priced } from '../../takeoff/rates/rateBook.ts';
import { rateText, sourceSays, takeoffText } from '../../words/whyWords.ts';

const tables = ['methods', 'labour', 'factors', 'consumables'] as const;

/** Every rate this job is priced with, by table; each can be changed and taken back to the book's. */
export function RatesDialog(): ReactElement {
  const rates = useDoc((doc) => {
    const own = rateBook(doc);
    return book.map((row) => own.rate(row.code));
  });
  const [find, setFind] = useState('');
  const [changing, setChanging] = useState<string | null>(null);
  const wanted = find.trim().toLowerCase();
  const shown = rates.filter((rate) => wanted === '' || rate.term.toLowerCase().includes(wanted));
  // A rate that is being changed is kept before anything else is opened, or stays with its fault in words.
  const keepRef = useRef<(() => boolean) | null>(null);
  const thenOpen = (open: () => void): void => {
    if (keepRef.current?.() ?? true) open();
  };
  const close = (): void => thenOpen(() => openPanel(null));
  return (
    <Dialog
      title={rateText.title}
      open
      wide
      onClose={close}
      foot={
        <>
          <Button onClick={() => thenOpen(() => openPanel('money'))}>{takeoffText.money}</Button>
          <Button onClick={close}>{rateText.close}</Button>
        </>
      }
    >
      <p className={css.note}>{rateText.intro}</p>
      <TextField label={rateText.search} value={find} onSet={setFind} onType={setFind} />
      {shown.length === 0 && <p>{rateText.none}</p>}
      {tables.map((table) => {
        const rows = shown.filter((rate) => rate.code.startsWith(`${table}/`));
        if (rows.length === 0) return null;
        return (
          <section key={table} aria-label={rateText.tables[table]}>
            <h3 className={css.table}>{rateText.tables[table]}</h3>
            <ul>
              {rows.map((rate) => (
                <li key={rate.code} className={css.rate}>
                  {changing === rate.code ? (
                    <RateEditor rate={rate} keepRef={keepRef} onDone={() => setChanging(null)} />
                  ) : (
                    <RateLine rate={rate} onChange={() => thenOpen(() => setChanging(rate.code))} />
                  )}
                </li>
              ))}
            </ul>
          </section>
        );
      })}
    </Dialog>
  );
}

function RateLine({ rate, onChange }: { readonly rate: Priced; readonly onChange: () => void }): ReactElement {
  const { unit, worth } = rateUnit(rate.unit, useUnits());
  const text = (kept: number): string => showNumber(kept / worth, 3).replace(/\.?0+$/, '');
  return (
    <div className={css.line}>
      <span className={css.words}>
        {rate.term}
        <small>{sourceSays(rate.source, rate.provenance, rate.fromMemory)}</small>
      </span>
      <span className={css.values}>
        {text(rate.low)} <b>{text(rate.likely)}</b> {text(rate.high)} <small>{unitSign(unit)}</small>
      </span>
      <Button size="desk" aria-label={`${rateText.edit}: ${rate.term}`} onClick={onChange}>
        {rateText.edit}
      </Button>
    </div>
  );
}
