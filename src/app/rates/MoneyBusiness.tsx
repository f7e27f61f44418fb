import type { ReactElement } from 'react';
import css from './Money.module.css';
import { PriceOf } from './PriceOf.tsx';
import type { PricingEdits } from './usePricing.ts';
import { Choice } from '../parts/Choice.tsx';
import { NumberField } from '../parts/NumberField.tsx';
import { showNumber } from '../../model/showNumber.ts';
import { moneyPage } from '../../words/moneyWords.ts';
import { moneyText } from '../../words/whyWords.ts';

const MOST_MARGIN = 99;
const overheadBys = (['percent', 'crewDay'] as const).map((value) => ({
  value,
  words: moneyPage.overheadBys[value],
}));
const certainties = (['measured', 'photo', 'unknown'] as const).map((value) => ({
  value,
  words: moneyText.certainties[value],
}));

/** Overhead, margin and how it reads as a markup, contingency by certainty, and the least charge. */
export function MoneyBusiness({ edits }: { readonly edits: PricingEdits }): ReactElement {
  const { pricing, setPricing } = edits;
  const { marginPct } = pricing;
  const markup = showNumber((100 * marginPct) / (100 - marginPct), 1);
  return (
    <>
      <NumberField
        label={moneyText.margin}
        unit="%"
        value={marginPct}
        min={0}
        max={MOST_MARGIN}
        say={`${moneyText.marginNote} ${moneyPage.markup(markup)}`}
        onSet={(value) => value !== null && setPricing({ marginPct: value })}
      />
      <PriceOf code="leastCharge" edits={edits} />
      <p>{moneyPage.leastNote}</p>
      <Choice
        className={css.wide}
        label={moneyPage.overheadBy}
        value={pricing.overheadBy ?? 'percent'}
        options={overheadBys}
        onChoose={(overheadBy) => setPricing({ overheadBy })}
      />
      {pricing.overheadBy === 'crewDay' ? (
        <PriceOf code="overheadDay" edits={edits} />
      ) : (
        <NumberField
          label={moneyText.overhead}
          unit="%"
          value={pricing.overheadPct}
          min={0}
          max={400}
          onSet={(overheadPct) => overheadPct !== null && setPricing({ overheadPct })}
        />
      )}
      <Choice
        className={css.wide}
        label={moneyText.certainty}
        value={pricing.certainty}
        options={certainties}
        onChoose={(certainty) => setPricing({ certainty })}
      />
      {certainties.map(({ value }) => (
        <NumberField
          key={value}
          label={`${moneyText.contingency} ${moneyText.contingencyOf[value]}`}
          unit="%"
          value={pricing.contingencyPct[value]}
          min={0}
          max={100}
          onSet={(percentage) =>
            percentage !== null && setPricing({ contingencyPct: { ...pricing.contingencyPct, [value]: percentage } })
          }
        />
      ))}
    </>
  );
}
