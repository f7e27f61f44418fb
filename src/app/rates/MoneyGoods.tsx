import { useState, type ReactElement } from 'react';
import css from './Money.module.css';
import { PriceOf } from './PriceOf.tsx';
import type { PricingEdits } from './usePricing.ts';
import { Button } from '../parts/Button.tsx';
import { ORDERED } from '../../takeoff/orders.ts';
import type { Takeoff } from '../../takeoff/port.ts';
import { moneyPage } from '../../words/moneyWords.ts';

interface MoneyGoodsProps {
  readonly edits: PricingEdits;
  readonly takeoff: Takeoff | null;
}

/** Prices of tooling and goods: those of this job first, all of them when asked for. */
export function MoneyGoods({ edits, takeoff }: MoneyGoodsProps): ReactElement {
  const [all, setAll] = useState(false);
  const priced = ORDERED.filter(({ priceCode }) => priceCode !== null);
  const used = new Set(takeoff?.lines.map(({ code }) => code));
  const shown = priced.filter(({ code, usedBy }) => all || [code, ...usedBy].some((one) => used.has(one)));
  const codes = [...new Set(shown.flatMap(({ priceCode }) => priceCode ?? []))];
  return (
    <>
      <p>{codes.length === 0 ? moneyPage.noneUsed : all ? null : moneyPage.usedHere}</p>
      {codes.map((code) => (
        <PriceOf key={code} code={code} edits={edits} />
      ))}
      <div className={css.wide}>
        <Button size="desk" aria-pressed={all} onClick={() => setAll(!all)}>
          {all ? moneyPage.onlyUsed : moneyPage.all}
        </Button>
      </div>
    </>
  );
}
