import { useEffect, useRef, type ReactElement, type RefObject } from 'react';
import css from './RateBook.module.css';
import { RateEditor } from './RateEditor.tsx';
import { inSentences, rateFigures } from './rateFigures.ts';
import { textInUnits } from '../../model/textInUnits.ts';
import { Button } from '../parts/Button.tsx';
import { unitSign } from '../parts/Figure.tsx';
import { Tag } from '../parts/Tag.tsx';
import { planStoreNow, run, useUnits } from '../plan.ts';
import { machineOfCode } from '../../takeoff/rates/machineRate.ts';
import type { Priced } from '../../takeoff/rates/rateBook.ts';
import { baseRow, OWN_FIGURE, rowsOfBook } from '../../takeoff/rates/rateChanges.ts';
import { isSameRow } from '../../takeoff/rates/rowEdition.ts';
import { rateBookText as text, rateText } from '../../words/rateWords.ts';
import { sourceSays } from '../../words/whyWords.ts';

interface RateLineProps {
  readonly rate: Priced;
  /** What it is used for, in words. */
  readonly use: string;
  /** The method that a machine without a rate of its own works by. */
  readonly method?: string | null;
  readonly changing: boolean;
  readonly onChange: (open: boolean) => void;
  readonly onReset: () => void;
  readonly keepRef: RefObject<(() => boolean) | null>;
}

/** One rate: what it is, its three figures, where they come from, what they go into; changed in its place. */
export function RateLine(props: RateLineProps): ReactElement {
  const { rate, use, method = null, changing, onChange, onReset, keepRef } = props;
  const units = useUnits();
  const line = useRef<HTMLLIElement>(null);
  const wasChanging = useRef(changing);
  // Whoever opens a rate goes on in its first field; whoever is done with it, where it was opened.
  useEffect(() => {
    if (wasChanging.current === changing) return;
    wasChanging.current = changing;
    focusIn(line.current, changing ? 'input' : CHANGE);
  }, [changing]);
  if (changing) {
    return (
      <li ref={line} className={css.row}>
        <RateEditor rate={rate} keepRef={keepRef} onDone={() => onChange(false)} />
      </li>
    );
  }
  function reset(): void {
    focusIn(line.current, CHANGE);
    onReset();
  }
  const base = baseRow(rate.code);
  const differs = rate.record !== null && (!base || !isSameRow(rate, base));
  const shown = rateFigures(rate, units);
  const book = base && differs ? rateFigures(base, units) : null;
  const name = textInUnits(rate.term, units);
  const note = textInUnits(base?.note ?? '', units);
  const ownSource = rate.provenance === 'own' && rate.source !== OWN_FIGURE ? `: ${rate.source}` : '';
  const says = sourceSays(rate.source, rate.provenance, rate.fromMemory);
  const from = method === null ? says + ownSource : text.ofMethod(method);
  return (
    <li ref={line} className={css.row}>
      <div className={css.words}>
        <b>{inSentences(name)}</b>
        {differs && <Tag>{rate.provenance === 'own' ? text.own : text.older}</Tag>}
        <small>{inSentences(from, book ? text.bookHas(book.low, book.likely, book.high) : note)}</small>
        <small>{use}</small>
      </div>
      <div className={css.amount}>
        <dl className={css.figures}>
          {(['low', 'likely', 'high'] as const).map((bound) => (
            <div key={bound}>
              <dt>{rateText[bound]}</dt>
              <dd>{shown[bound]}</dd>
            </div>
          ))}
        </dl>
        <span className={css.unit}>{unitSign(shown.unit)}</span>
      </div>
      <div className={css.acts}>
        {differs && (
          <Button size="desk" aria-label={text.resetOf(name)} onClick={reset}>
            {text.reset}
          </Button>
        )}
        <Button size="desk" aria-label={text.changeOf(name)} onClick={() => onChange(true)}>
          {machineOfCode(rate.code) !== null && rate.record === null ? text.ownRate : text.change}
        </Button>
      </div>
    </li>
  );
}

/** The last button of a row: it stays when the others go. */
const CHANGE = 'button:last-of-type';

function focusIn(line: HTMLElement | null, what: string): void {
  line?.querySelector<HTMLElement>(what)?.focus();
}

/** Puts rates back to the book as one step; how many, or null when it was refused. */
export function resetRates(codes: readonly string[]): number | null {
  const rows = rowsOfBook(planStoreNow().getState(), codes);
  return rows.length > 0 && run('setRateRows', { rows: [...rows] }) ? rows.length : null;
}
