import { useMemo, type ReactElement } from 'react';
import css from './Estimate.module.css';
import { AmountTable } from './AmountTable.tsx';
import { useDoc } from '../plan.ts';
import { centsOf, moneyTitle } from '../../exchange/estimateRows.ts';
import { estimateNow } from '../../exchange/estimateNow.ts';
import type { Estimate } from '../../model/records/estimate.ts';
import { showNumber } from '../../model/showNumber.ts';
import { differencesNow, frozenLines, frozenRates, type Difference } from '../../takeoff/issuedEstimate.ts';
import { estimateText } from '../../words/estimateWords.ts';

/** What the same estimate would say today: plan, rates and prices may have changed since. */
export function NowPage({ estimate }: { readonly estimate: Estimate }): ReactElement {
  const doc = useDoc((now) => now);
  const { frozen } = useMemo(() => estimateNow(doc), [doc]);
  const differences = useMemo(() => differencesNow(estimate, frozen), [estimate, frozen]);
  const currency = estimate.currency ?? '';
  const known = [estimate, ...(frozen ? [frozen] : [])];
  const titles = new Map([
    ...known.flatMap(frozenRates).map(({ code, term }) => [code, term] as const),
    ...known
      .flatMap(frozenLines)
      .map(({ key, code, working }) => [key, moneyTitle(key, code, working.terms[0]?.name ?? '')] as const),
  ]);
  const rowOf = ({ what, unit, before, after }: Difference) => {
    const show = (value: number | null): string => {
      if (value === null) return estimateText.gone;
      return unit === 'minor' ? centsOf(value, currency) : `${showNumber(value, 2)} ${unit}`;
    };
    return { key: what, words: titles.get(what) ?? what, amounts: [show(before), show(after)] };
  };
  const rows = [...differences.money, ...differences.rates].map(rowOf);
  return (
    <div className={css.page}>
      {rows.length === 0 ? (
        <p className={css.note}>{estimateText.same}</p>
      ) : (
        <AmountTable
          name={estimateText.now}
          first={`${estimateText.item}, ${currency}`}
          heads={[estimateText.was, estimateText.is]}
          rows={rows}
        />
      )}
    </div>
  );
}
