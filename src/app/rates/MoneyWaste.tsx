import type { ReactElement } from 'react';
import { PriceOf } from './PriceOf.tsx';
import type { PricingEdits } from './usePricing.ts';
import { NumberField } from '../parts/NumberField.tsx';
import { moneyPage } from '../../words/moneyWords.ts';

/** What it costs to be rid of the waste. */
export function MoneyWaste({ edits }: { readonly edits: PricingEdits }): ReactElement {
  const { pricing, setPricing } = edits;
  return (
    <>
      <NumberField
        label={moneyPage.haulTrips}
        value={pricing.haulTrips ?? 0}
        min={0}
        max={200}
        decimals={0}
        onSet={(haulTrips) => haulTrips !== null && setPricing({ haulTrips })}
      />
      <PriceOf code="haul" edits={edits} />
      <PriceOf code="tipFee" edits={edits} />
      <PriceOf code="drumDisposal" edits={edits} />
      <NumberField
        label={moneyPage.wasteTests}
        value={pricing.wasteTests ?? 0}
        min={0}
        max={100}
        decimals={0}
        onSet={(wasteTests) => wasteTests !== null && setPricing({ wasteTests })}
      />
      <PriceOf code="wasteTest" edits={edits} />
      <p>{moneyPage.wasteNote}</p>
    </>
  );
}
