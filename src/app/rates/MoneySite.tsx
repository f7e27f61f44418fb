import type { ReactElement } from 'react';
import css from './Money.module.css';
import { PriceOf } from './PriceOf.tsx';
import type { PricingEdits } from './usePricing.ts';
import { Choice } from '../parts/Choice.tsx';
import { moneyPage } from '../../words/moneyWords.ts';

const powers = (['site', 'generator'] as const).map((value) => ({ value, words: moneyPage.powers[value] }));

/** Power of our own, and material of tests and mock-up. */
export function MoneySite({ edits }: { readonly edits: PricingEdits }): ReactElement {
  const { pricing, setPricing } = edits;
  return (
    <>
      <Choice
        className={css.wide}
        label={moneyPage.power}
        value={pricing.power ?? 'site'}
        options={powers}
        onChoose={(power) => setPricing({ power })}
      />
      {pricing.power === 'generator' && (
        <>
          <PriceOf code="day/generator" edits={edits} />
          <PriceOf code="fuel" edits={edits} />
          <p>{moneyPage.powerNote}</p>
        </>
      )}
      <PriceOf code="test/rh" edits={edits} />
      <PriceOf code="test/pull" edits={edits} />
      <PriceOf code="mockUp" edits={edits} />
    </>
  );
}
