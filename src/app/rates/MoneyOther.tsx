import { useState, type ReactElement } from 'react';
import css from './Money.module.css';
import type { PricingEdits } from './usePricing.ts';
import { Button } from '../parts/Button.tsx';
import { TextField } from '../parts/TextField.tsx';
import { useJob } from '../plan.ts';
import { moneyForField, parseMoney } from '../../model/money.ts';
import type { Pricing } from '../../model/records/pricing.ts';
import { moneyPage } from '../../words/moneyWords.ts';
import { moneyText } from '../../words/whyWords.ts';

type Other = NonNullable<Pricing['otherCosts']>[number];

/** Lump sums that follow from no rate. */
export function MoneyOther({ edits }: { readonly edits: PricingEdits }): ReactElement {
  const { pricing, setPricing } = edits;
  const costs = pricing.otherCosts ?? [];
  const setAll = (otherCosts: readonly Other[]): void =>
    setPricing({ otherCosts: otherCosts.map(({ name, amountMinor }) => ({ name, amountMinor })) });
  return (
    <>
      <p>{moneyPage.otherNote}</p>
      {costs.map((cost, index) => (
        <OneCost
          // Nothing else tells two costs of one name apart.
          // oxlint-disable-next-line react/no-array-index-key
          key={index}
          cost={cost}
          onSet={(next) => setAll(costs.map((one, i) => (i === index ? next : one)))}
          onRemove={() => setAll(costs.filter((_, i) => i !== index))}
        />
      ))}
      <div className={css.wide}>
        <Button size="desk" onClick={() => setAll([...costs, { name: '', amountMinor: 0 }])}>
          {moneyPage.addOther}
        </Button>
      </div>
    </>
  );
}

interface OneCostProps {
  readonly cost: Other;
  readonly onSet: (next: Other) => void;
  readonly onRemove: () => void;
}

function OneCost({ cost, onSet, onRemove }: OneCostProps): ReactElement {
  const currency = useJob()?.currency ?? '';
  const [fault, setFault] = useState<string | null>(null);
  function read(typed: string): void {
    const parsed = parseMoney(typed, currency);
    const isAmount = parsed.ok && parsed.minor >= 0;
    setFault(isAmount ? null : moneyText.notMoney);
    if (isAmount) onSet({ ...cost, amountMinor: parsed.minor });
  }
  return (
    <div className={css.other}>
      <TextField label={moneyPage.otherName} value={cost.name} onSet={(name) => onSet({ ...cost, name })} />
      <TextField
        label={`${moneyPage.otherAmount}, ${currency}`}
        value={moneyForField(cost.amountMinor, currency)}
        onSet={read}
        fault={fault}
      />
      <Button aria-label={moneyPage.removeOther(cost.name === '' ? moneyPage.unnamed : cost.name)} onClick={onRemove}>
        {moneyPage.remove}
      </Button>
    </div>
  );
}
