import { useState, type ReactElement } from 'react';
import css from './RateBook.module.css';
import { inSentences, rateFigures } from './rateFigures.ts';
import { Button } from '../parts/Button.tsx';
import { unitSign } from '../parts/Figure.tsx';
import { Tag } from '../parts/Tag.tsx';
import { planStoreNow, run, useDoc, useUnits } from '../plan.ts';
import { textInUnits } from '../../model/textInUnits.ts';
import { bookDifferences, type BookDifference } from '../../takeoff/rates/bookDifferences.ts';
import { rowsLeft, rowsOfBook } from '../../takeoff/rates/rateChanges.ts';
import type { RateFigures } from '../../takeoff/rates/rowEdition.ts';
import { rateBookText as text } from '../../words/rateWords.ts';
import { sourceSays } from '../../words/whyWords.ts';

const words = text.differences;

interface RateDifferencesProps {
  /** Something was done, in words. */
  readonly onDone: (said: string) => void;
}

/** What a newer book says otherwise than the job's copy: to take row by row or together, or to leave. */
export function RateDifferences({ onDone }: RateDifferencesProps): ReactElement | null {
  const differences = useDoc((doc) => bookDifferences(doc));
  const [open, setOpen] = useState(false);
  const changed = differences.filter(({ was }) => was !== null);
  const fresh = differences.filter(({ was }) => was === null);
  const others = changed.filter(({ own }) => !own);
  if (differences.length === 0) return null;

  function take(these: readonly BookDifference[]): void {
    const codes = these.map(({ code }) => code);
    const rows = rowsOfBook(planStoreNow().getState(), codes);
    if (run('setRateRows', { rows: [...rows] })) onDone(words.taken(rows.length));
  }
  function leave(these: readonly BookDifference[]): void {
    const codes = these.map(({ code }) => code);
    const rows = rowsLeft(planStoreNow().getState(), codes);
    if (run('setRateRows', { rows: [...rows] })) onDone(words.left(rows.length));
  }
  const title = changed.length > 0 ? words.title(changed.length) : words.fresh(fresh.length);
  return (
    <section className={css.banner} aria-label={title}>
      <b>{title}</b>
      {changed.length > 0 && (
        <>
          <p>{words.says}</p>
          <div className={css.acts}>
            <Button size="desk" aria-expanded={open} onClick={() => setOpen(!open)}>
              {open ? words.hide : words.see}
            </Button>
            {others.length > 0 && (
              <Button size="desk" onClick={() => take(others)}>
                {others.length < changed.length ? words.takeAllButOwn : words.takeAll}
              </Button>
            )}
            <Button size="desk" onClick={() => leave(changed)}>
              {words.leaveAll}
            </Button>
          </div>
        </>
      )}
      {open && changed.length > 0 && (
        <ul>
          {changed.map((difference) => (
            <Difference
              key={difference.code}
              difference={difference}
              onTake={() => take([difference])}
              onLeave={() => leave([difference])}
            />
          ))}
        </ul>
      )}
      {fresh.length > 0 && (
        <>
          <p>{changed.length > 0 ? words.freshToo(fresh.length) : words.freshSays}</p>
          <div className={css.acts}>
            <Button size="desk" onClick={() => take(fresh)}>
              {words.takeFresh}
            </Button>
          </div>
        </>
      )}
    </section>
  );
}

interface DifferenceProps {
  readonly difference: BookDifference;
  readonly onTake: () => void;
  readonly onLeave: () => void;
}

function Difference({ difference, onTake, onLeave }: DifferenceProps): ReactElement {
  const units = useUnits();
  const { was, now, own } = difference;
  const name = textInUnits(difference.term, units);
  const say = (row: RateFigures): string => {
    const { low, likely, high, unit } = rateFigures(row, units);
    return inSentences(
      `${low}, ${likely}, ${high} ${unitSign(unit)}`,
      sourceSays(row.source, row.provenance, row.fromMemory),
    );
  };
  return (
    <li className={css.difference}>
      <div className={css.words}>
        <b>{name}</b>
        {own && <Tag>{text.own}</Tag>}
        {was && <small>{`${words.was} ${say(was)}`}</small>}
        <small>{`${words.is} ${say(now)}`}</small>
      </div>
      <div className={css.acts}>
        <Button size="desk" aria-label={words.takeOf(name)} onClick={onTake}>
          {words.take}
        </Button>
        <Button size="desk" aria-label={words.leaveOf(name)} onClick={onLeave}>
          {words.leave}
        </Button>
      </div>
    </li>
  );
}
