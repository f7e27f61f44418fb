import type { ReactElement } from 'react';
import css from './Estimate.module.css';
import { cx } from '../look/cx.ts';

export interface AmountTableRow {
  readonly key: string;
  readonly words: string;
  readonly amounts: readonly string[];
  readonly isSum?: boolean;
}

interface AmountTableProps {
  readonly name: string;
  readonly first: string;
  readonly heads: readonly string[];
  readonly rows: readonly AmountTableRow[];
}

/** Words at the left, amounts at the right, sums strong. Figures stand as they were frozen: nothing to press. */
export function AmountTable({ name, first, heads, rows }: AmountTableProps): ReactElement {
  return (
    // Wider than a phone it is scrolled, by keyboard too.
    // oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex
    <div className={css.scroll} role="region" aria-label={name} tabIndex={0}>
      <table className={css.table}>
        <thead>
          <tr>
            <th scope="col">{first}</th>
            {heads.map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.key} className={cx(row.isSum && css.sum)}>
              <th scope="row">{row.words}</th>
              {row.amounts.map((amount, i) => (
                <td key={heads[i] ?? i}>{amount}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
