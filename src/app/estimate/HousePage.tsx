import type { ReactElement } from 'react';
import css from './Estimate.module.css';
import { AmountTable } from './AmountTable.tsx';
import { amountOf, buildUpRows } from '../../exchange/estimateRows.ts';
import type { Estimate } from '../../model/records/estimate.ts';
import { estimateText } from '../../words/estimateWords.ts';

/** How the price is made, cost by cost, to the cent: for the house alone. */
export function HousePage({ estimate }: { readonly estimate: Estimate }): ReactElement {
  const currency = estimate.currency ?? '';
  const rows = buildUpRows(estimate).map((row) => ({
    key: row.key,
    words: row.title,
    amounts: [row.range.low, row.range.likely, row.range.high].map((value) => amountOf(row, value, currency)),
    isSum: row.isSum,
  }));
  return (
    <div className={css.page}>
      <p className={css.note}>{estimateText.houseOnly}</p>
      <AmountTable
        name={estimateText.house}
        first={`${estimateText.item}, ${currency}`}
        heads={[estimateText.low, estimateText.likely, estimateText.high]}
        rows={rows}
      />
      <p className={css.note}>{estimateText.made(estimate.engine ?? '', estimate.book ?? '')}</p>
    </div>
  );
}
