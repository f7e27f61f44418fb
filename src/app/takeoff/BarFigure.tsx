import type { ReactElement } from 'react';
import css from './BarTable.module.css';
import type { BarsDrawn } from './drawBars.ts';
import type { DriverBar } from './driverBars.ts';
import { cx } from '../look/cx.ts';
import { askWhy, useSession } from '../session.ts';
import { driverWords } from '../../words/workWords.ts';
import { whyText } from '../../words/whyWords.ts';

interface BarFigureProps {
  readonly bar: DriverBar;
  readonly from: BarsDrawn['from'];
  readonly show: (value: number) => string;
  readonly unit: string;
}

/** The number of a bar and its low to high; pressed, it answers why. */
export function BarFigure({ bar, from, show, unit }: BarFigureProps): ReactElement {
  const open = useSession((now) => bar.why !== null && now.why === bar.why);
  const range = driverWords.from(show(bar.low), show(bar.high));
  const figure = from === 'zero' ? show(bar.likely) : range;
  const inUnit = unit === '' || from === 'likely' ? figure : `${figure} ${unit}`;
  const more = from === 'zero' && bar.low !== bar.high ? range : null;
  return (
    <button
      type="button"
      className={cx(css.figure, open && css.open)}
      aria-label={`${whyText.why(more === null ? inUnit : `${inUnit} ${more}`)}: ${bar.name}`}
      aria-pressed={open}
      onClick={() => askWhy(open ? null : bar.why)}
    >
      <b>
        {figure}
        {from === 'zero' && unit !== '' && <i> {unit}</i>}
      </b>
      {more !== null && ' '}
      {more !== null && <small>{more}</small>}
    </button>
  );
}
