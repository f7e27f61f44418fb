import type { ReactElement } from 'react';
import { Button } from '../parts/Button.tsx';
import { useOpen } from '../plan.ts';
import { openPanel } from '../session.ts';
import { useHasMoney } from '../takeoff/useHasMoney.ts';
import type { Takeoff } from '../../takeoff/port.ts';
import { estimateText } from '../../words/estimateWords.ts';

/** The way from the price to an estimate: quiet, and blocked with its reason while the price is no offer. */
export function IssueEstimate({ takeoff }: { readonly takeoff: Takeoff }): ReactElement | null {
  const hasMoney = useHasMoney();
  const readOnly = useOpen()?.readOnly ?? null;
  if (!hasMoney || readOnly !== null) return null;
  const blocked = takeoff.notAnOffer.length > 0 ? estimateText.notYet : null;
  return (
    <Button size="desk" blocked={blocked} onClick={() => openPanel('issueEstimate')}>
      {estimateText.issue}
    </Button>
  );
}
