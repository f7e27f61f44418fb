import type { ReactElement } from 'react';
import css from './TakeoffTable.module.css';
import { useHasMoney } from './useHasMoney.ts';
import { saveText } from './saveText.ts';
import { Button } from '../parts/Button.tsx';
import { Choice } from '../parts/Choice.tsx';
import { planStoreNow, useJob } from '../plan.ts';
import { openPanel, say } from '../session.ts';
import { takeoffCsv } from '../../exchange/csv.ts';
import type { Range } from '../../takeoff/line.ts';
import type { Takeoff } from '../../takeoff/port.ts';
import { takeoffText } from '../../words/whyWords.ts';

export type Which = keyof Range;
const whiches = (['low', 'likely', 'high'] as const).map((value) => ({ value, words: takeoffText[value] }));

interface TakeoffBarProps {
  readonly which: Which;
  readonly onWhich: (which: Which) => void;
  readonly takeoff: Takeoff;
}

/** Which end of the range is shown, what it is priced with, and the way out as a table. */
export function TakeoffBar({ which, onWhich, takeoff }: TakeoffBarProps): ReactElement {
  const job = useJob();
  const hasMoney = useHasMoney();
  const csv = (): string => takeoffCsv(planStoreNow().getState(), takeoff, job?.currency ?? '');
  async function copy(): Promise<void> {
    try {
      await navigator.clipboard.writeText(csv());
      say(takeoffText.copied);
    } catch {
      say(takeoffText.notCopied);
    }
  }
  return (
    <div className={css.bar}>
      <Choice label={takeoffText.show} quiet value={which} options={whiches} onChoose={onWhich} />
      <div className={css.buttons}>
        {takeoff.notAnOffer.length === 0 && (
          <Button size="desk" onClick={() => openPanel('questions')}>
            {takeoffText.questions}
          </Button>
        )}
        {hasMoney && (
          <Button size="desk" onClick={() => openPanel('money')}>
            {takeoffText.money}
          </Button>
        )}
        {hasMoney && (
          <Button size="desk" onClick={() => openPanel('rates')}>
            {takeoffText.rateBook}
          </Button>
        )}
        {hasMoney && (
          <Button size="desk" onClick={() => void copy()}>
            {takeoffText.copyCsv}
          </Button>
        )}
        {hasMoney && (
          <Button size="desk" onClick={() => void saveText(csv(), `${job?.name ?? 'takeoff'}.csv`, 'text/csv')}>
            {takeoffText.saveCsv}
          </Button>
        )}
      </div>
    </div>
  );
}
