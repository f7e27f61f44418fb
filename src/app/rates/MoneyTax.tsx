import { useState, type ReactElement } from 'react';
import css from './Money.module.css';
import type { PricingEdits } from './usePricing.ts';
import { Choice } from '../parts/Choice.tsx';
import { NumberField } from '../parts/NumberField.tsx';
import { TextField } from '../parts/TextField.tsx';
import { useJob } from '../plan.ts';
import { moneyForField, parseMoney } from '../../model/money.ts';
import { moneyPage } from '../../words/moneyWords.ts';
import { moneyText } from '../../words/whyWords.ts';

const taxOns = (['none', 'materials', 'total'] as const).map((value) => ({ value, words: moneyPage.taxOns[value] }));

/** Tax, and what the customer's price ends on. */
export function MoneyTax({ edits }: { readonly edits: PricingEdits }): ReactElement {
  const { pricing, setPricing } = edits;
  const currency = useJob()?.currency ?? '';
  const [fault, setFault] = useState<string | null>(null);
  const taxOn = pricing.taxOn ?? (pricing.taxPct ? 'total' : 'none');
  function round(typed: string): void {
    const parsed = parseMoney(typed, currency);
    const isAmount = parsed.ok && parsed.minor > 0;
    setFault(isAmount ? null : moneyText.notMoney);
    if (isAmount) setPricing({ roundUpTo: parsed.minor });
  }
  return (
    <>
      <Choice
        className={css.wide}
        label={moneyPage.taxOn}
        value={taxOn}
        options={taxOns}
        onChoose={(next) => setPricing({ taxOn: next })}
      />
      {taxOn !== 'none' && (
        <>
          <NumberField
            label={moneyPage.tax}
            unit="%"
            value={pricing.taxPct ?? 0}
            min={0}
            max={100}
            decimals={3}
            onSet={(taxPct) => taxPct !== null && setPricing({ taxPct })}
          />
          <p>{moneyPage.taxNote}</p>
        </>
      )}
      <TextField
        label={moneyPage.roundUp}
        value={moneyForField(pricing.roundUpTo ?? 1, currency)}
        onSet={round}
        fault={fault}
        say={`${currency}. ${moneyPage.roundNote}`}
      />
    </>
  );
}
