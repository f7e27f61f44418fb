import type { ReactElement } from 'react';
import css from './TakeoffTable.module.css';
import { WAYS_TO_READ, readAs, showWhich, useWayToRead } from './wayToRead.ts';
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
import { wayWords, sheetWords } from '../../words/workWords.ts';

const whiches = (['low', 'likely', 'high'] as const).map((value) => ({ value, words: takeoffText[value] }));
const ways = WAYS_TO_READ.map((value) => ({ value, words: wayWords[value] }));

/** The way the takeoff is read, which end of its ranges is shown, and the way out: to a spreadsheet, or as a file. */
export function TakeoffBar({ takeoff }: { readonly takeoff: Takeoff }): ReactElement {
  const { way, which } = useWayToRead();
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
    saveText(csvText(sheet()), `${job?.name ?? 'takeoff'}, ${wayWords[way].toLowerCase()}.csv`, 'text/csv');
  // What drives the price is money.
  const offered = ways.filter(({ value }) => hasMoney || value !== 'drivers');
  return (
    <div className={css.bar}>
      <Choice label={wayWords.label} quiet value={way} options={offered} onChoose={readAs} className={css.ways} />
      {way === 'zones' && (
        <Choice
          label={takeoffText.show}
          quiet
          value={which}
          options={whiches}
          onChoose={showWhich}
          className={css.whiches}
        />
      )}
      {way !== 'orders' && (
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
