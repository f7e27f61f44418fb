import type { ReactElement } from 'react';
import { MoneyField, type PriceField } from './MoneyField.tsx';
import type { PricingEdits } from './usePricing.ts';
import { useJob } from '../plan.ts';
import { missingPrice } from '../../takeoff/rates/missingPrice.ts';

/** The field of one price, by its code; empty while nobody has set it. */
export function PriceOf({ code, edits }: { readonly code: string; readonly edits: PricingEdits }): ReactElement {
  const { book, pricing, setPrice } = edits;
  const currency = useJob()?.currency ?? '';
  const price = book.price(code);
  const row: PriceField = price
    ? { ...price, own: price.provenance === 'own' }
    : { ...missingPrice(code), amount: null, own: false };
  return (
    <MoneyField
      row={row}
      currency={currency}
      confirmed={pricing.confirmedOn !== undefined}
      onSet={(amount) => setPrice(row, amount)}
    />
  );
}
