import type { ReactElement } from 'react';
import css from './TakeoffTable.module.css';
import { IssueEstimate } from '../estimate/IssueEstimate.tsx';
import { useLayout } from '../look/useLayout.ts';
import { Button } from '../parts/Button.tsx';
import { openPanel } from '../session.ts';
import type { Takeoff } from '../../takeoff/port.ts';
import { takeoffText } from '../../words/whyWords.ts';

/** Under the price: what it is worked out with, and what makes an offer of it. */
export function PriceActions({ takeoff }: { readonly takeoff: Takeoff }): ReactElement {
  // By thumb it stands with the price, at the top.
  const phone = useLayout() === 'phone';
  return (
    <div className={css.actions}>
      <Button size="desk" onClick={() => openPanel('rates')}>
        {takeoffText.rateBook}
      </Button>
      <Button size="desk" onClick={() => openPanel('money')}>
        {takeoffText.money}
      </Button>
      {takeoff.notAnOffer.length === 0 && (
        <Button size="desk" onClick={() => openPanel('questions')}>
          {takeoffText.questions}
        </Button>
      )}
      {!phone && (
        <div className={css.issue}>
          <IssueEstimate takeoff={takeoff} />
        </div>
      )}
    </div>
  );
}
