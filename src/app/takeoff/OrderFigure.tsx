import type { ReactElement } from 'react';
import css from './OrderList.module.css';
import { orderFigure, orderRange } from './orderFigure.ts';
import { whyKey } from './whyLine.ts';
import { cx } from '../look/cx.ts';
import { useUnits } from '../plan.ts';
import { askWhy, useSession } from '../session.ts';
import type { Line, Range } from '../../takeoff/line.ts';
import { whyText } from '../../words/whyWords.ts';

interface OrderFigureProps {
  /** Lines that it adds up, for Why. */
  readonly lines: readonly Line[];
  readonly quantity: Range;
  readonly unit: string;
  /** What it is of, for screen readers. */
  readonly name: string;
  /** Said under the figure, before its range. */
  readonly notes?: readonly string[] | undefined;
}

/** One figure of the list: the likely and its unit, what there is to say of it, and its range. A button that asks why. */
export function OrderFigure({ lines, quantity, unit, name, notes }: OrderFigureProps): ReactElement | null {
  const units = useUnits();
  const key = whyKey(lines);
  const asked = useSession((now) => key !== null && now.why === key);
  if (key === null) return null;
  const shown = orderFigure(quantity.likely, unit, units);
  const range = orderRange(quantity, unit, units);
  const said = [...(notes ?? []), ...(range === null ? [] : [range])];
  return (
    <button
      type="button"
      className={cx(css.ask, asked && css.asked)}
      aria-label={`${whyText.why([shown.figure, shown.unit, ...said].join(' '))}: ${name}`}
      aria-pressed={asked}
      onClick={() => askWhy(asked ? null : key)}
    >
      <span>
        <b>{shown.figure}</b> <span className={css.unit}>{shown.unit}</span>
      </span>
      {said.map((note) => (
        <small key={note}> {note}</small>
      ))}
    </button>
  );
}
