import type { ReactElement } from 'react';
import css from './PrepRight.module.css';
import { zoneKey } from './zoneNames.ts';
import { Figure } from '../parts/Figure.tsx';
import { useDoc, useJob, useTakeoff } from '../plan.ts';
import { askWhy } from '../session.ts';
import { moneyOnScreen } from '../takeoff/showQuantity.ts';
import { useHasMoney } from '../takeoff/useHasMoney.ts';
import type { Held } from '../../model/doc.ts';
import { showHours } from '../../model/showNumber.ts';
import type { Line } from '../../takeoff/line.ts';
import { rateBook } from '../../takeoff/rates/rateBook.ts';
import { zoneHoursWords } from '../../words/prepWords.ts';
import { prepText, questionsText } from '../../words/stageWords.ts';
import { takeoffText } from '../../words/whyWords.ts';

/** Hours and price of one zone; each figure asks why. A held zone has neither. */
export function ZoneMoney({ zone }: { readonly zone: Held<'zone'> }): ReactElement | null {
  const { takeoff } = useTakeoff();
  const hasMoney = useHasMoney();
  const currency = useJob()?.currency ?? 'USD';
  const crew = useDoc((doc) => rateBook(doc).pricing.crew);
  if (!takeoff) return null;
  const lineOf = (code: string): Line | undefined =>
    takeoff.lines.find((line) => line.code === code && line.zone === zoneKey(zone));
  const hours = lineOf('hours.zone');
  const price = hasMoney ? lineOf('money.priceShare') : undefined;
  if (!hours) return null;
  const span = lineOf('hours.zoneSpan');
  return (
    <section aria-label={prepText.hoursAndPrice}>
      <HoursRow words={zoneHoursWords.work} line={hours} />
      {span && <HoursRow words={zoneHoursWords.crew(crew)} line={span} />}
      {price && (
        <button type="button" className={css.why} onClick={() => askWhy(price.key)}>
          <span>
            {prepText.price}
            {takeoff.notices.includes('samplePrices') && <small>{questionsText.sample}</small>}
          </span>
          <span>
            <Figure of={{ figure: moneyOnScreen(price.quantity.likely, currency), unit: '' }} size="title" />
            <small>
              {takeoffText.from(
                moneyOnScreen(price.quantity.low, currency),
                moneyOnScreen(price.quantity.high, currency),
              )}
            </small>
          </span>
        </button>
      )}
    </section>
  );
}

function HoursRow({ words, line }: { readonly words: string; readonly line: Line }): ReactElement {
  const { low, likely, high } = line.quantity;
  return (
    <button type="button" className={css.why} onClick={() => askWhy(line.key)}>
      <span>{words}</span>
      <span>
        <Figure of={showHours(likely)} size="title" />
        <small>{takeoffText.from(showHours(low).figure, `${showHours(high).figure} h`)}</small>
      </span>
    </button>
  );
}
