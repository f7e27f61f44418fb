import type { ReactElement } from 'react';
import { Button } from '../parts/Button.tsx';
import { Dialog } from '../parts/Dialog.tsx';
import { EmptyState } from '../parts/EmptyState.tsx';
import { Row } from '../parts/Row.tsx';
import { useDoc } from '../plan.ts';
import { openPanel } from '../session.ts';
import { toTheCent } from '../../exchange/estimateRows.ts';
import { recordsOf } from '../../model/doc.ts';
import { estimateText } from '../../words/estimateWords.ts';

/** Every estimate that was issued for this job, newest first. */
export function EstimateList(): ReactElement {
  const estimates = useDoc((doc) => recordsOf(doc, 'estimate')).toReversed();
  const close = (): void => openPanel(null);
  return (
    <Dialog title={estimateText.list} open onClose={close} foot={<Button onClick={close}>{estimateText.close}</Button>}>
      {estimates.length === 0 ? (
        <EmptyState title={estimateText.none} sentence={estimateText.noneHelp} />
      ) : (
        <ul>
          {estimates.map((estimate) => (
            <li key={estimate.id}>
              <Row
                words={estimate.number}
                more={estimateText.onDay(estimate.issuedOn.slice(0, 10))}
                right={<b>{toTheCent(estimate.totalMinor, estimate.currency ?? '')}</b>}
                onPick={() => openPanel(estimate.id)}
              />
            </li>
          ))}
        </ul>
      )}
    </Dialog>
  );
}
