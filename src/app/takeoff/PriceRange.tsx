import type { ReactElement } from 'react';
import css from './PriceRange.module.css';
import { moneyOnScreen } from './showQuantity.ts';
import { useSeveralFloors } from './useSeveralFloors.ts';
import { IssueEstimate } from '../estimate/IssueEstimate.tsx';
import { Button } from '../parts/Button.tsx';
import { useJob } from '../plan.ts';
import { HoldOf } from '../prep/ZoneHolds.tsx';
import { NotAnOffer } from '../questions/NotAnOffer.tsx';
import { Questions } from '../questions/Questions.tsx';
import { askWhy } from '../session.ts';
import { showHours } from '../../model/showNumber.ts';
import type { Takeoff } from '../../takeoff/port.ts';
import { questionsText } from '../../words/stageWords.ts';
import { priceText, takeoffText } from '../../words/whyWords.ts';

/** The range on the spot, on a phone: what it is, how sure it is, and the four questions that stand before it. */
export function PriceRange({ takeoff }: { readonly takeoff: Takeoff }): ReactElement {
  const currency = useJob()?.currency ?? 'USD';
  const severalFloors = useSeveralFloors();
  const price = takeoff.lines.find((line) => line.code === 'money.price');
  const hours = takeoff.lines.find((line) => line.code === 'hours.crew');
  // What keeps a whole zone from a price; a cut that may not be made keeps only its own line.
  const holds = takeoff.holds.filter((hold) => hold.kind !== 'inSlab');
  const money = (minor: number): string => moneyOnScreen(minor, currency);
  return (
    <section className={css.price} aria-label={priceText.title}>
      <h2 className="forReaders">{priceText.title}</h2>
      <NotAnOffer takeoff={takeoff} asks={false} />
      {price ? (
        <div className={css.range}>
          <p className={css.figure}>{takeoffText.from(money(price.quantity.low), money(price.quantity.high))}</p>
          <Bar low={price.quantity.low} likely={price.quantity.likely} high={price.quantity.high} />
          <p className={css.under}>
            <b>{priceText.likely(money(price.quantity.likely))}</b>
            {hours && (
              <span>
                {priceText.crew(
                  takeoffText.from(showHours(hours.quantity.low).figure, `${showHours(hours.quantity.high).figure} h`),
                )}
              </span>
            )}
          </p>
          {takeoff.notices.includes('samplePrices') && <p className={css.sample}>{questionsText.sample}</p>}
          {severalFloors && <p className={css.sample}>{takeoffText.onlyThisFloor}</p>}
          <div className={css.buttons}>
            <Button wide onClick={() => askWhy(price.key)}>
              {priceText.why}
            </Button>
            <IssueEstimate takeoff={takeoff} />
          </div>
        </div>
      ) : (
        <>
          <div className={css.range}>
            <b>{priceText.none}</b>
            <p>{holds.length > 0 ? priceText.noneHeld : priceText.noneHelp}</p>
          </div>
          {holds.map((hold) => (
            <HoldOf key={`${hold.kind} ${hold.zone ?? ''} ${hold.reason}`} hold={hold} />
          ))}
        </>
      )}
      <Questions />
    </section>
  );
}

/** Where the likely price stands between low and high. */
function Bar({
  low,
  likely,
  high,
}: {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}): ReactElement {
  const at = high > low ? ((likely - low) / (high - low)) * 100 : 50;
  return (
    <div className={css.bar} aria-hidden="true">
      <i style={{ left: `${String(at)}%` }} />
    </div>
  );
}
