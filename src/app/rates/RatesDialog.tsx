import { useRef, useState, type ReactElement } from 'react';
import css from './RateBook.module.css';
import { RateDifferences } from './RateDifferences.tsx';
import { RateFile } from './RateFile.tsx';
import { resetRates } from './RateLine.tsx';
import { RatePages } from './RatePages.tsx';
import { tableOf, type RateTable } from './rateTables.ts';
import { RateTablesList, type Page } from './RateTablesList.tsx';
import { Button } from '../parts/Button.tsx';
import { Dialog } from '../parts/Dialog.tsx';
import { TextField } from '../parts/TextField.tsx';
import { undo, useDoc } from '../plan.ts';
import { openPanel } from '../session.ts';
import { useHasMoney } from '../takeoff/useHasMoney.ts';
import { book } from '../../takeoff/rates/book.ts';
import { changedCodes } from '../../takeoff/rates/rateChanges.ts';
import { bookEdition } from '../../takeoff/rates/rowEdition.ts';
import { rateBookText as text, rateText } from '../../words/rateWords.ts';
import { takeoffText } from '../../words/whyWords.ts';

const EDITION = bookEdition(book);

/** Every rate this job is priced with, table by table: to change, to take back, to hold against the book, to look up. */
export function RatesDialog(): ReactElement {
  const [page, setPage] = useState<Page>('grind');
  const [find, setFind] = useState('');
  const [said, setSaid] = useState<string | null>(null);
  const [changing, setChanging] = useState<string | null>(null);
  const status = useRef<HTMLDivElement>(null);
  const changed = useDoc(changedCodes);
  const hasMoney = useHasMoney();
  // A rate that is being changed is kept before anything else is opened, or stays with its fault in words.
  const keepRef = useRef<(() => boolean) | null>(null);
  const thenDo = (act: () => void): void => {
    if (!(keepRef.current?.() ?? true)) return;
    setChanging(null);
    // Undo takes back the last step: what was said of one before is over.
    setSaid(null);
    act();
  };
  const close = (): void => thenDo(() => openPanel(null));
  const wanted = find.trim().toLowerCase();
  const counts = new Map<RateTable, number>();
  for (const code of changed) {
    const table = tableOf({ code, unit: book.find((row) => row.code === code)?.unit ?? '' });
    counts.set(table, (counts.get(table) ?? 0) + 1);
  }
  /** What is found stands in the place of a table: a table that is asked for ends the search. */
  function show(next: Page): void {
    setFind('');
    setPage(next);
  }
  /** What was pressed may be gone by then: the hand finds itself beside the way back. */
  function sayHere(words: string): void {
    setSaid(words);
    status.current?.focus();
  }
  function reset(code: string): void {
    const done = resetRates([code]);
    if (done !== null) setSaid(text.wasReset(done));
  }
  function resetAll(): void {
    const done = resetRates(changed);
    if (done !== null) sayHere(text.wasReset(done));
  }
  return (
    <Dialog
      title={text.title}
      open
      full
      onClose={close}
      foot={
        <>
          <div role="status" ref={status} tabIndex={-1} className={css.status}>
            {said && (
              <>
                <span>{said}</span>
                <Button
                  size="desk"
                  onClick={() => {
                    undo();
                    setSaid(null);
                  }}
                >
                  {text.undo}
                </Button>
              </>
            )}
          </div>
          {hasMoney && <Button onClick={() => thenDo(() => openPanel('money'))}>{takeoffText.money}</Button>}
          <Button onClick={close}>{rateText.close}</Button>
        </>
      }
    >
      <div className={css.book}>
        <RateTablesList
          page={page}
          finding={wanted !== ''}
          onPage={(next) => thenDo(() => show(next))}
          changed={counts}
        />
        <div className={css.side}>
          <div className={css.head}>
            <TextField label={text.find} value={find} onSet={setFind} onType={setFind} />
            <RateFile onDone={sayHere} />
          </div>
          {wanted === '' && <RateDifferences onDone={sayHere} />}
          <RatePages
            page={page}
            wanted={wanted}
            changing={changing}
            onChange={(code) => thenDo(() => setChanging(code))}
            onDone={() => setChanging(null)}
            onReset={(code) => thenDo(() => reset(code))}
            keepRef={keepRef}
          />
          <div className={css.whole}>
            <p className={css.note}>
              {text.edition(EDITION)} {changed.length > 0 && text.changedRows(changed.length)}
            </p>
            {changed.length > 0 && (
              <Button size="desk" onClick={() => thenDo(resetAll)}>
                {text.resetAll}
              </Button>
            )}
          </div>
        </div>
      </div>
    </Dialog>
  );
}
