import type { ReactElement } from 'react';
import css from './TakeoffTable.module.css';
import { showInRow } from './showQuantity.ts';
import type { Which } from './wayToRead.ts';
import { whyKey } from './whyLine.ts';
import { cx } from '../look/cx.ts';
import { useJob, useUnits } from '../plan.ts';
import { askWhy, useSession } from '../session.ts';
import type { TableCell } from '../../takeoff/lineTable.ts';
import { takeoffText, whyText } from '../../words/whyWords.ts';

interface QuantityCellProps {
  readonly cell: TableCell | null;
  readonly name: string;
  readonly unit: string;
  readonly which: Which;
}

/** One figure of the table: a button that asks why. A held zone has the word instead of a figure. */
export function QuantityCell({ cell, name, unit, which }: QuantityCellProps): ReactElement | null {
  const units = useUnits();
  const currency = useJob()?.currency ?? 'USD';
  const key = cell ? whyKey(cell.lines) : null;
  const asked = useSession((now) => key !== null && now.why === key);
  if (!cell) return null;
  if (!cell.quantity || key === null) return <span className={css.figure}>{takeoffText.held}</span>;
  const figure = showInRow(cell.quantity[which], unit, units, currency);
  return (
    <button
      type="button"
      className={cx(css.figure, css.ask, asked && css.asked, cell.quantity.high === 0 && css.nothing)}
      aria-label={`${whyText.why(figure)}: ${name}${cell.held === null ? '' : `, ${takeoffText.held}`}`}
      aria-pressed={asked}
      onClick={() => askWhy(asked ? null : key)}
    >
      {figure}
    </button>
  );
}
