import type { ReactElement } from 'react';
import css from './TakeoffTable.module.css';
import { READINGS, readAs, showWhich, useReading } from './reading.ts';
import { saveText } from './saveText.ts';
import { useShownSheet } from './useShownSheet.ts';
import { useHasMoney } from './useHasMoney.ts';
import { Button } from '../parts/Button.tsx';
import { Choice } from '../parts/Choice.tsx';
import { useJob } from '../plan.ts';
import { say } from '../session.ts';
import { csvText } from '../../exchange/csv.ts';
import type { Takeoff } from '../../takeoff/port.ts';
import { takeoffText } from '../../words/whyWords.ts';
import { readingWords, sheetWords } from '../../words/workWords.ts';

const whiches = (['low', 'likely', 'high'] as const).map((value) => ({ value, words: takeoffText[value] }));
const readings = READINGS.map((value) => ({ value, words: readingWords[value] }));

/** The way the takeoff is read, which end of its ranges is shown, and the way out: to a spreadsheet, or as a file. */
export function TakeoffBar({ takeoff }: { readonly takeoff: Takeoff }): ReactElement {
  const { reading, which } = useReading();
  const job = useJob();
  const hasMoney = useHasMoney();
  const sheet = useShownSheet(takeoff);
  async function copy(): Promise<void> {
    try {
      await navigator.clipboard.writeText(csvText(sheet(), '\t'));
      say(sheetWords.copied);
    } catch {
      say(sheetWords.notCopied);
    }
  }
  const save = (): Promise<void> =>
    saveText(csvText(sheet()), `${job?.name ?? 'takeoff'}, ${readingWords[reading].toLowerCase()}.csv`, 'text/csv');
  // What drives the price is money.
  const offered = readings.filter(({ value }) => hasMoney || value !== 'drivers');
  return (
    <div className={css.bar}>
      <Choice
        label={readingWords.label}
        quiet
        value={reading}
        options={offered}
        onChoose={readAs}
        className={css.readings}
      />
      {reading === 'zones' && (
        <Choice
          label={takeoffText.show}
          quiet
          value={which}
          options={whiches}
          onChoose={showWhich}
          className={css.whiches}
        />
      )}
      {reading !== 'orders' && (
        <div className={css.buttons}>
          <Button size="desk" onClick={() => void copy()}>
            {sheetWords.copy}
          </Button>
          <Button size="desk" onClick={() => void save()}>
            {sheetWords.save}
          </Button>
        </div>
      )}
    </div>
  );
}
