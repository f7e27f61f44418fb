import { useState, type ReactElement } from 'react';
import { TextField } from '../parts/TextField.tsx';
import { moneyForField, parseMoney } from '../../model/money.ts';
import type { PricedAmount } from '../../takeoff/rates/rateBook.ts';
import { moneyText } from '../../words/whyWords.ts';

interface MoneyFieldProps {
  readonly row: PricedAmount;
  readonly currency: string;
  readonly onSet: (minor: number) => void;
}

/** One amount of the price list; says whether it is still the invented one. */
export function MoneyField({ row, currency, onSet }: MoneyFieldProps): ReactElement {
  const shown = moneyForField(row.amount, currency);
  const [fault, setFault] = useState<string | null>(null);
  function read(typed: string): void {
    const parsed = parseMoney(typed, currency);
    setFault(parsed.ok ? null : moneyText.notMoney);
    if (parsed.ok) onSet(parsed.minor);
  }
  const whose = row.provenance === 'own' ? moneyText.own : moneyText.setYours;
  return (
    <TextField label={row.term} value={shown} onSet={read} fault={fault} say={`${currency} ${row.unit}, ${whose}`} />
  );
}
