import type { ReactElement } from 'react';
import css from './Money.module.css';
import { PriceOf } from './PriceOf.tsx';
import type { PricingEdits } from './usePricing.ts';
import { Button } from '../parts/Button.tsx';
import { NumberField } from '../parts/NumberField.tsx';
import { moneyPage } from '../../words/moneyWords.ts';

const DAY = 'day/';

interface MoneyMachinesProps {
  readonly edits: PricingEdits;
  /** Codes of prices that the work needs and nobody has set. */
  readonly missing: readonly string[];
}

/** What tools cost by the day, and which of them come on hire. */
export function MoneyMachines({ edits, missing }: MoneyMachinesProps): ReactElement {
  const { book, pricing, setPricing } = edits;
  const hired = pricing.hired ?? [];
  const codes = [...book.prices.map(({ code }) => code), ...missing].filter(
    (code) => code.startsWith(DAY) && code !== 'day/generator',
  );
  function toggle(method: string): void {
    setPricing({ hired: hired.includes(method) ? hired.filter((one) => one !== method) : [...hired, method] });
  }
  return (
    <>
      <p>{moneyPage.hiredNote}</p>
      <NumberField
        label={moneyPage.leastDays}
        value={pricing.leastHireDays ?? 0}
        min={0}
        max={60}
        onSet={(leastHireDays) => leastHireDays !== null && setPricing({ leastHireDays })}
      />
      <PriceOf code="delivery" edits={edits} />
      <div className={css.wide} />
      {codes.map((code) => {
        const method = code.slice(DAY.length);
        const term = book.price(code)?.term ?? method;
        return (
          <div key={code} className={css.withSwitch}>
            <PriceOf code={code} edits={edits} />
            <Button
              size="desk"
              aria-pressed={hired.includes(method)}
              aria-label={`${moneyPage.hired}: ${term}`}
              className={css.switch}
              onClick={() => toggle(method)}
            >
              {moneyPage.hired}
            </Button>
          </div>
        );
      })}
    </>
  );
}
