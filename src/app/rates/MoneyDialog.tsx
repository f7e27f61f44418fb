import type { ReactElement } from 'react';
import css from './Rates.module.css';
import { MoneyField, type PriceField } from './MoneyField.tsx';
import { Button } from '../parts/Button.tsx';
import { Choice } from '../parts/Choice.tsx';
import { Dialog } from '../parts/Dialog.tsx';
import { NumberField } from '../parts/NumberField.tsx';
import { TextField } from '../parts/TextField.tsx';
import { run, useDoc, useJob, useTakeoff } from '../plan.ts';
import { openPanel, say } from '../session.ts';
import { today } from '../today.ts';
import type { Json } from '../../model/cell.ts';
import { PRICING_ID, priceRecordId } from '../../takeoff/rates/defaults.ts';
import { missingPrice } from '../../takeoff/rates/missingPrice.ts';
import { rateBook } from '../../takeoff/rates/rateBook.ts';
import type { Pricing } from '../../model/records/pricing.ts';
import { moneyText } from '../../words/whyWords.ts';

const CURRENCY = /^[A-Z]{3}$/;
const MOST_PCT = 99;
const certainties = (['measured', 'photo', 'unknown'] as const).map((value) => ({
  value,
  words: moneyText.certainties[value],
}));

/** Wages, day rates, prices, overhead and margin of this job. Nothing on it leaves with the crew. */
export function MoneyDialog(): ReactElement | null {
  const job = useJob();
  const money = useDoc(rateBook);
  const { takeoff } = useTakeoff();
  if (!job) return null;
  const { id: jobId, currency } = job;
  const { pricing } = money;
  const prices: readonly PriceField[] = [
    ...money.prices.map((row) => ({ ...row, own: row.provenance === 'own' })),
    ...(takeoff?.missingPrices ?? []).map((code) => ({ ...missingPrice(code), amount: null, own: false })),
  ];
  const kinds = {
    wages: prices.filter((row) => row.code === 'wage'),
    days: prices.filter((row) => row.code.startsWith('day/')),
    other: prices.filter((row) => row.code !== 'wage' && !row.code.startsWith('day/')),
  };

  /** A job that leaned on the samples so far gets a pricing record of its own with the first change. */
  function setPricing(fields: Readonly<Record<string, Json>>, clear: readonly string[] = []): void {
    const { id: _id, ...now } = { id: null, ...pricing } as Pricing & { readonly id: unknown };
    const base = money.pricingRecord ? {} : (now as unknown as Readonly<Record<string, Json>>);
    run('setRateRow', { id: money.pricingRecord ?? PRICING_ID, fields: { ...base, ...fields }, clear: [...clear] });
  }
  function setPrice(row: PriceField, amount: number): void {
    const fields = { code: row.code, term: row.term, unit: row.unit, amount, source: 'own figure', provenance: 'own' };
    run('setRateRow', { id: money.price(row.code)?.record ?? priceRecordId(row.code), fields });
  }
  function setCurrency(typed: string): void {
    const code = typed.toUpperCase();
    if (CURRENCY.test(code)) run('setField', { id: jobId, slot: 'currency', value: code });
    else say(moneyText.currencyFault);
  }
  const price = (row: PriceField): ReactElement => (
    <MoneyField
      key={row.code}
      row={row}
      currency={currency ?? ''}
      confirmed={pricing.confirmedOn !== undefined}
      onSet={(amount) => setPrice(row, amount)}
    />
  );
  const percent = (slot: 'burdenPct' | 'overheadPct' | 'marginPct', label: string, note?: string): ReactElement => (
    <NumberField
      label={label}
      unit="%"
      value={pricing[slot]}
      min={0}
      max={slot === 'marginPct' ? MOST_PCT : 400}
      say={note ?? null}
      onSet={(value) => value !== null && setPricing({ [slot]: value })}
    />
  );
  return (
    <Dialog
      title={moneyText.title}
      open
      wide
      onClose={() => openPanel(null)}
      foot={
        <>
          {pricing.confirmedOn ? (
            <Button onClick={() => setPricing({}, ['confirmedOn'])}>{moneyText.again}</Button>
          ) : (
            <Button kind="main" onClick={() => setPricing({ confirmedOn: today() })}>
              {moneyText.confirm}
            </Button>
          )}
          <Button onClick={() => openPanel(null)}>{moneyText.close}</Button>
        </>
      }
    >
      <p className={css.note}>{pricing.confirmedOn ? moneyText.confirmed(pricing.confirmedOn) : moneyText.intro}</p>
      <div className={css.money}>
        <h3>{moneyText.wages}</h3>
        {kinds.wages.map(price)}
        {percent('burdenPct', moneyText.burden)}
        <TextField label={moneyText.currency} value={currency ?? ''} onSet={setCurrency} />
        <h3>{moneyText.crew}</h3>
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
        <h3>{moneyText.days}</h3>
        {kinds.days.map(price)}
        <h3>{moneyText.prices}</h3>
        {kinds.other.map(price)}
        <h3>{moneyText.business}</h3>
        {percent('overheadPct', moneyText.overhead)}
        {percent('marginPct', moneyText.margin, moneyText.marginNote)}
        <h3>{moneyText.contingency}</h3>
        {certainties.map(({ value }) => (
          <NumberField
            key={value}
            label={moneyText.contingencyOf[value]}
            unit="%"
            value={pricing.contingencyPct[value]}
            min={0}
            max={100}
            onSet={(percentage) =>
              percentage !== null && setPricing({ contingencyPct: { ...pricing.contingencyPct, [value]: percentage } })
            }
          />
        ))}
      </div>
      <Choice
        label={moneyText.certainty}
        value={pricing.certainty}
        options={certainties}
        onChoose={(certainty) => setPricing({ certainty })}
      />
    </Dialog>
  );
}
