import type { ReactElement } from 'react';
import css from './Money.module.css';
import { PriceOf } from './PriceOf.tsx';
import type { PricingEdits } from './usePricing.ts';
import { Button } from '../parts/Button.tsx';
import { NumberField } from '../parts/NumberField.tsx';
import { TextField } from '../parts/TextField.tsx';
import { run, useJob } from '../plan.ts';
import { say } from '../session.ts';
import { showNumber } from '../../model/showNumber.ts';
import { moneyPage } from '../../words/moneyWords.ts';
import { moneyText } from '../../words/whyWords.ts';

const CURRENCY = /^[A-Z]{3}$/;
const PARTS = ['payrollTax', 'unemployment', 'injury', 'health', 'holidays', 'smallTools'] as const;

/** Wage, what is paid on top of it, and the crew. */
export function MoneyWages({ edits }: { readonly edits: PricingEdits }): ReactElement {
  const { pricing, setPricing } = edits;
  const job = useJob();
  const parts = pricing.burdenParts;
  function setCurrency(typed: string): void {
    const code = typed.toUpperCase();
    if (job && CURRENCY.test(code)) run('setField', { id: job.id, slot: 'currency', value: code });
    else say(moneyText.currencyFault);
  }
  return (
    <>
      <PriceOf code="wage" edits={edits} />
      {!parts && (
        <NumberField
          label={moneyText.burden}
          unit="%"
          value={pricing.burdenPct}
          min={0}
          max={400}
          onSet={(burdenPct) => burdenPct !== null && setPricing({ burdenPct })}
        />
      )}
      <TextField label={moneyText.currency} value={job?.currency ?? ''} onSet={setCurrency} />
      {parts &&
        PARTS.map((part) => (
          <NumberField
            key={part}
            label={moneyPage.parts[part]}
            unit="%"
            value={parts[part] ?? 0}
            min={0}
            max={100}
            onSet={(value) => value !== null && setPricing({ burdenParts: { ...parts, [part]: value } })}
          />
        ))}
      {parts && (
        <p>
          {moneyPage.burdenSum(
            showNumber(
              PARTS.reduce((sum, part) => sum + (parts[part] ?? 0), 0),
              2,
            ),
          )}{' '}
          {moneyPage.payrollNote}
        </p>
      )}
      <div className={css.wide}>
        {parts ? (
          <Button size="desk" onClick={() => setPricing({}, ['burdenParts'])}>
            {moneyPage.inOne}
          </Button>
        ) : (
          <Button size="desk" onClick={() => setPricing({ burdenParts: { payrollTax: 7.65 } })}>
            {moneyPage.inParts}
          </Button>
        )}
      </div>
      <NumberField
        label={moneyText.crewSize}
        value={pricing.crew}
        min={1}
        max={40}
        decimals={0}
        onSet={(crew) => crew !== null && setPricing({ crew })}
      />
      <NumberField
        label={moneyText.hoursADay}
        unit="h"
        value={pricing.hoursADay}
        min={1}
        max={24}
        onSet={(hoursADay) => hoursADay !== null && setPricing({ hoursADay })}
      />
      <NumberField
        label={moneyText.minimum}
        value={pricing.minimumCrewDays}
        min={0}
        max={30}
        onSet={(minimumCrewDays) => minimumCrewDays !== null && setPricing({ minimumCrewDays })}
      />
      <NumberField
        label={moneyPage.billable}
        unit="%"
        value={pricing.billablePct ?? 100}
        min={10}
        max={100}
        onSet={(billablePct) => billablePct !== null && setPricing({ billablePct })}
      />
      <NumberField
        label={moneyPage.night}
        unit="%"
        value={pricing.nightPremiumPct ?? 0}
        min={0}
        max={200}
        say={moneyPage.nightNote}
        onSet={(nightPremiumPct) => nightPremiumPct !== null && setPricing({ nightPremiumPct })}
      />
    </>
  );
}
