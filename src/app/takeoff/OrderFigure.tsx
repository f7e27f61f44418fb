import type { ReactElement } from 'react';
import css from './OrderList.module.css';
import { showQuantity } from './showQuantity.ts';
import { whyKey } from './whyLine.ts';
import { cx } from '../look/cx.ts';
import { useUnits } from '../plan.ts';
import { askWhy, useSession } from '../session.ts';
import type { Line, Range } from '../../takeoff/line.ts';
import { countedUnit } from '../../words/orderWords.ts';
import { takeoffText, whyText } from '../../words/whyWords.ts';

interface OrderFigureProps {
  /** Lines that it adds up, for Why. */
  readonly lines: readonly Line[];
  readonly quantity: Range;
  readonly unit: string;
  /** What it is of, for screen readers. */
  readonly name: string;
}

/** One figure of the list: the likely, its unit, and its range under it. A button that asks why. */
export function OrderFigure({ lines, quantity, unit, name }: OrderFigureProps): ReactElement | null {
  const units = useUnits();
  const key = whyKey(lines);
  const asked = useSession((now) => key !== null && now.why === key);
  if (key === null) return null;
  const { low, likely, high } = quantity;
  // The list has no money: the currency is not asked for.
  const figure = (value: number) => showQuantity(value, unit, units, 'USD');
  const shown = figure(likely);
  const words = countedUnit(likely, shown.unit);
  const [from, to] = [figure(low), figure(high)];
  const range = takeoffText.from(
    from.unit === to.unit ? from.figure : `${from.figure} ${from.unit}`,
    to.unit === shown.unit ? to.figure : `${to.figure} ${to.unit}`,
  );
  return (
    <button
      type="button"
      className={cx(css.ask, asked && css.asked)}
      aria-label={`${whyText.why(`${shown.figure} ${words}`.trim())}: ${name}`}
      aria-pressed={asked}
      onClick={() => askWhy(asked ? null : key)}
    >
      <span>
        <b>{shown.figure}</b>
        <span className={css.unit}>{words}</span>
      </span>
      {low !== high && <small>{range}</small>}
    </button>
  );
}
