import type { ReactElement, ReactNode } from 'react';
import css from './WorkTable.module.css';
import { showInRow, unitShown } from './showQuantity.ts';
import { whyKey } from './whyLine.ts';
import { cx } from '../look/cx.ts';
import { useJob, useUnits } from '../plan.ts';
import { askWhy, useSession } from '../session.ts';
import type { Line, Range } from '../../takeoff/line.ts';
import type { TableCell } from '../../takeoff/lineTable.ts';
import { takeoffText, whyText } from '../../words/whyWords.ts';

interface WorkLineProps {
  /** What it is called, for whoever hears the figures. */
  readonly name: string;
  /** What stands there instead of the bare name. */
  readonly head?: ReactNode;
  readonly kind?: 'row' | 'heading' | 'foot';
  readonly quantity: { readonly quantity: Range; readonly unit: string } | null;
  readonly quantityLines: readonly Line[];
  readonly hours: TableCell;
  /** h, or minor units of money. */
  readonly unit?: string;
  /** Said where there are no hours. */
  readonly instead?: string;
  readonly narrow: boolean;
}

/** One row of the list: its quantity and its hours, each a figure that answers why. */
export function WorkLine(props: WorkLineProps): ReactElement {
  const { name, head = name, kind = 'row', quantity, quantityLines, hours, unit = 'h', instead, narrow } = props;
  const units = useUnits();
  const currency = useJob()?.currency ?? 'USD';
  const quantityKey = whyKey(quantityLines);
  const hoursKey = whyKey(hours.lines);
  const asked = useSession(({ why }) => why !== null && (why === quantityKey || why === hoursKey));
  const show = (value: number): string => showInRow(value, unit, units, currency);
  const { low, likely, high } = hours.quantity ?? NONE;
  const said = unitShown(unit, units);
  return (
    <tr className={cx(css[kind], asked && css.asked)}>
      <th scope="row">{head}</th>
      <td className={css.quantity}>
        {quantity && (
          <Asks
            name={name}
            figure={showInRow(quantity.quantity.likely, quantity.unit, units, currency)}
            unit={unitShown(quantity.unit, units)}
            why={quantityKey ?? hoursKey}
            withUnit
          />
        )}
      </td>
      {instead !== undefined && (
        <td className={css.instead} colSpan={narrow ? 1 : 3}>
          {instead}
        </td>
      )}
      {instead === undefined && (
        <>
          {!narrow && <td className={css.end}>{show(low)}</td>}
          <td className={css.likely}>
            <Asks name={name} figure={show(likely)} unit={said} why={hoursKey} />
            {narrow && low !== high && <small>{takeoffText.from(show(low), show(high))}</small>}
          </td>
          {!narrow && <td className={css.end}>{show(high)}</td>}
        </>
      )}
    </tr>
  );
}

const NONE = { low: 0, likely: 0, high: 0 };

interface AsksProps {
  readonly name: string;
  readonly figure: string;
  readonly unit: string;
  readonly why: string | null;
  /** The unit stands behind the figure, in a column of its own; hours have theirs in the heading. */
  readonly withUnit?: boolean;
}

function Asks({ name, figure, unit, why, withUnit = false }: AsksProps): ReactElement {
  const open = useSession((now) => why !== null && now.why === why);
  const spoken = unit === '' ? figure : `${figure} ${unit}`;
  return (
    <button
      type="button"
      className={cx(css.ask, open && css.open)}
      aria-label={`${whyText.why(spoken)}: ${name}`}
      aria-pressed={open}
      onClick={() => askWhy(open ? null : why)}
    >
      <span className={css.figure}>{figure}</span>
      {withUnit && ' '}
      {withUnit && <span className={css.unit}>{unit}</span>}
    </button>
  );
}
