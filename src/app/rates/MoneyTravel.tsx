import type { ReactElement } from 'react';
import css from './Money.module.css';
import { PriceOf } from './PriceOf.tsx';
import type { PricingEdits } from './usePricing.ts';
import { Choice } from '../parts/Choice.tsx';
import { NumberField } from '../parts/NumberField.tsx';
import { run } from '../plan.ts';
import { KM_PER_MILE } from '../../model/units.ts';
import { priceRecordId } from '../../takeoff/rates/defaults.ts';
import { isByMile } from '../../takeoff/travelLines.ts';
import { moneyPage } from '../../words/moneyWords.ts';

const stays = (['daily', 'lodging'] as const).map((value) => ({ value, words: moneyPage.stays[value] }));
const paidBys = (['km', 'mile'] as const).map((value) => ({ value, words: moneyPage.paidBys[value] }));

/** The way to the site, nights near it, and what each visit costs. */
export function MoneyTravel({ edits }: { readonly edits: PricingEdits }): ReactElement {
  const { book, pricing, setPricing } = edits;
  const distance = book.price('distance');
  const byMile = isByMile(distance?.unit ?? '');
  const kmPerUnit = byMile ? KM_PER_MILE : 1;
  function payBy(unit: 'km' | 'mile'): void {
    if (!distance) return;
    const { code, term, amount, source, provenance } = distance;
    const fields = { code, term, amount, source, provenance, unit: `per ${unit}` };
    run('setRateRow', { id: distance.record ?? priceRecordId('distance'), fields });
  }
  return (
    <>
      <Choice
        className={css.wide}
        label={moneyPage.stay}
        value={pricing.stay ?? 'daily'}
        options={stays}
        onChoose={(stay) => setPricing({ stay })}
      />
      <NumberField
        label={moneyPage.travelHours}
        unit="h"
        value={pricing.travelHours ?? 0}
        min={0}
        max={200}
        onSet={(travelHours) => travelHours !== null && setPricing({ travelHours })}
      />
      <NumberField
        label={moneyPage.distance}
        unit={byMile ? 'mi' : 'km'}
        value={(pricing.travelKm ?? 0) / kmPerUnit}
        min={0}
        max={20_000}
        decimals={1}
        onSet={(value) => value !== null && setPricing({ travelKm: value * kmPerUnit })}
      />
      <NumberField
        label={moneyPage.vehicles}
        value={pricing.vehicles ?? 1}
        min={0}
        max={40}
        decimals={0}
        onSet={(vehicles) => vehicles !== null && setPricing({ vehicles })}
      />
      <p>{moneyPage.travelNote}</p>
      <PriceOf code="distance" edits={edits} />
      <Choice label={moneyPage.paidBy} value={byMile ? 'mile' : 'km'} options={paidBys} onChoose={payBy} />
      {pricing.stay === 'lodging' && <PriceOf code="lodging" edits={edits} />}
      <div className={css.wide} />
      <PriceOf code="mobilisation" edits={edits} />
      <PriceOf code="remobilisation" edits={edits} />
      <NumberField
        label={moneyPage.returns}
        value={pricing.returnVisits ?? 0}
        min={0}
        max={60}
        decimals={0}
        say={moneyPage.returnsNote}
        onSet={(returnVisits) => returnVisits !== null && setPricing({ returnVisits })}
      />
    </>
  );
}
