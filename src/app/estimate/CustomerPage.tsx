import type { ReactElement } from 'react';
import css from './Estimate.module.css';
import { AmountTable } from './AmountTable.tsx';
import { SentenceList } from './SentenceList.tsx';
import { unitOnScreen } from '../takeoff/showQuantity.ts';
import { centsOf, extraRows, noticeSentences, toTheCent, totalRows } from '../../exchange/estimateRows.ts';
import type { Estimate } from '../../model/records/estimate.ts';
import { figureText, showArea } from '../../model/showNumber.ts';
import { estimateText } from '../../words/estimateWords.ts';

/** What the customer reads: price by zone, tax, unit rates, what it rests on and leaves out. No cost and no margin. */
export function CustomerPage({ estimate }: { readonly estimate: Estimate }): ReactElement {
  const currency = estimate.currency ?? '';
  const units = estimate.units ?? 'metric';
  const zones = (estimate.parts ?? []).map(({ name, areaM2, amountMinor }) => ({
    key: name,
    words: name,
    amounts: [unitOnScreen(figureText(showArea(areaM2, units))), centsOf(amountMinor, currency)],
  }));
  const totals = totalRows(estimate).map(({ key, title, range, isSum }) => ({
    key,
    words: title,
    amounts: ['', centsOf(range.likely, currency)],
    isSum,
  }));
  const extras = extraRows(estimate).map(({ key, title, per, range }) => ({
    key,
    words: title,
    amounts: [unitOnScreen(estimateText.per(per)), centsOf(range.likely, currency)],
  }));
  return (
    <div className={css.page}>
      <AmountTable
        name={estimateText.price}
        first={estimateText.zone}
        heads={[estimateText.area, currency]}
        rows={[...zones, ...totals]}
      />
      <p className={css.note}>
        {estimateText.range(
          toTheCent(estimate.lowMinor ?? estimate.totalMinor, currency),
          toTheCent(estimate.highMinor ?? estimate.totalMinor, currency),
        )}{' '}
        {noticeSentences(estimate).join(' ')}
      </p>
      {extras.length > 0 && (
        <section>
          <h3>{estimateText.extras}</h3>
          <p className={css.note}>{estimateText.extrasSay}</p>
          <AmountTable
            name={estimateText.extras}
            first={estimateText.item}
            heads={[estimateText.unit, currency]}
            rows={extras}
          />
        </section>
      )}
      <SentenceList title={estimateText.assumptions} sentences={estimate.assumptions ?? []} />
      <SentenceList title={estimateText.exclusions} sentences={estimate.exclusions ?? []} />
    </div>
  );
}
