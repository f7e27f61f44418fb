import { useState, type ReactElement } from 'react';
import { TextField } from '../parts/TextField.tsx';
import { moneyForField, parseMoney } from '../../model/money.ts';
import type { PricedAmount } from '../../takeoff/rates/rateBook.ts';
import { moneyText } from '../../words/whyWords.ts';

/** A price; `amount` is null while nobody has set one. */
export type PriceField = Pick<PricedAmount, 'code' | 'term' | 'unit'> & {
  readonly amount: number | null;
  readonly own: boolean;
};

interface MoneyFieldProps {
  readonly row: PriceField;
  readonly currency: string;
  /** The whole list has been confirmed: what was never changed is theirs too. */
  readonly confirmed: boolean;
  readonly onSet: (minor: number) => void;
}

/** One amount of the price list; says whether it is still the invented one. */
export function MoneyField({ row, currency, confirmed, onSet }: MoneyFieldProps): ReactElement {
  const shown = row.amount === null ? '' : moneyForField(row.amount, currency);
  const [fault, setFault] = useState<string | null>(null);
  function read(typed: string): void {
    const parsed = parseMoney(typed, currency);
    setFault(parsed.ok ? null : moneyText.notMoney);
    if (parsed.ok) onSet(parsed.minor);
  }
  const whose =
    row.amount !== null && (row.own || confirmed)
      ? moneyText.own
      : row.amount === null
        ? moneyText.notSet
        : moneyText.setYours;
  return (
    <TextField label={row.term} value={shown} onSet={read} fault={fault} say={`${currency} ${row.unit}, ${whose}`} />
  );
}
