import { useState, type ReactElement } from 'react';
import css from './RateBook.module.css';
import { FileButton } from '../jobs/FileButton.tsx';
import { Button } from '../parts/Button.tsx';
import { planStoreNow, run, unitsNow, useJob } from '../plan.ts';
import { saveText } from '../takeoff/saveText.ts';
import { ratesCsv } from '../../exchange/rateCsv.ts';
import { readRateCsv, type RateCsvFault } from '../../exchange/readRateCsv.ts';
import { ui } from '../../words/uiWords.ts';
import { rateBookText as text, rateCsvSentence } from '../../words/rateWords.ts';

interface RateFileProps {
  /** Something was done, in words. */
  readonly onDone: (said: string) => void;
}

interface BadFile {
  readonly name: string;
  readonly faults: readonly RateCsvFault[];
}

const MOST_SHOWN = 12;
/** A rate book has tens of thousands of bytes: something else that was opened need not be read. */
const MOST_BYTES = 8_000_000;

/** The rate book as a table: out with every column, and in again, all of it or nothing. */
export function RateFile({ onDone }: RateFileProps): ReactElement {
  const job = useJob();
  const [bad, setBad] = useState<BadFile | null>(null);

  function save(): void {
    void saveText(ratesCsv(planStoreNow().getState(), unitsNow()), `${job?.name ?? ''} rates.csv`.trim(), 'text/csv');
  }
  async function open(file: File): Promise<void> {
    setBad(null);
    const typed = file.size > MOST_BYTES ? null : await file.text().catch(() => null);
    if (typed === null) {
      onDone(text.notText(file.name));
      return;
    }
    const read = readRateCsv(planStoreNow().getState(), typed);
    if (!read.ok) setBad({ name: file.name, faults: read.faults });
    else if (read.changes.length === 0 || run('setRateRows', { rows: [...read.changes] }))
      onDone(text.fileRead(file.name, read.changes.length));
  }
  return (
    <>
      <div className={css.acts}>
        <Button size="desk" onClick={save}>
          {text.saveCsv}
        </Button>
        <FileButton label={text.openCsv} accept=".csv,text/csv" onFile={(file) => void open(file)} />
      </div>
      {bad && (
        <div role="alert" className={css.faults}>
          <b>{text.fileFaults(bad.name)}</b>
          <ul>
            {bad.faults.slice(0, MOST_SHOWN).map((fault) => (
              <li key={`${fault.line} ${fault.kind} ${fault.other ?? ''}`}>{rateCsvSentence(fault)}</li>
            ))}
          </ul>
          {bad.faults.length > MOST_SHOWN && <p>{text.moreFaults(bad.faults.length - MOST_SHOWN)}</p>}
          <Button size="desk" onClick={() => setBad(null)}>
            {ui.close}
          </Button>
        </div>
      )}
    </>
  );
}
