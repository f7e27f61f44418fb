import { useEffect, useState, type ReactElement } from 'react';
import css from './JobsScreen.module.css';
import { Mark } from '../frame/Mark.tsx';
import { cx } from '../look/cx.ts';
import { useLayout } from '../look/useLayout.ts';
import { Button } from '../parts/Button.tsx';
import { Choice } from '../parts/Choice.tsx';
import { NoticeStrip } from '../parts/NoticeStrip.tsx';
import { Row } from '../parts/Row.tsx';
import { TextField } from '../parts/TextField.tsx';
import { jobText } from '../../words/jobWords.ts';
import { ui } from '../../words/uiWords.ts';
import { FileButton } from './FileButton.tsx';
import { JobRows } from './JobRows.tsx';
import { isInMemory, openJobById, theKeep } from './kept.ts';
import { oneAtATime } from './oneAtATime.ts';
import { openDemo, openJobFile, type SameJob } from './openFile.ts';
import { SameJobDialog } from './SameJobDialog.tsx';
import { startJob, type StartAs } from './startJob.ts';

function NewJob(): ReactElement {
  const [startAs, setStartAs] = useState<StartAs>('garage');
  const [name, setName] = useState('');
  const kinds = (Object.keys(jobText.startAs) as StartAs[]).map((value) => ({ value, words: jobText.startAs[value] }));
  return (
    <section className={css.new} aria-label={jobText.newJob}>
      <h2>{jobText.newJob}</h2>
      <Choice
        columns={useLayout() === 'phone' ? 3 : 5}
        label={jobText.startAsLabel}
        value={startAs}
        options={kinds}
        onChoose={setStartAs}
      />
      <TextField label={jobText.newJobName} value={name} onSet={setName} onType={setName} />
      <Button kind="main" wide onClick={() => void oneAtATime(() => startJob(startAs, name))}>
        {jobText.newJob}
      </Button>
    </section>
  );
}

function Examples(): ReactElement {
  return (
    <section className={cx(css.list, css.examples)} aria-label={jobText.examples}>
      <h2>{jobText.examples}</h2>
      <p className={css.note}>{jobText.examplesMore}</p>
      <ul>
        {Object.entries(jobText.demos).map(([file, { name, more }]) => (
          <li key={file}>
            <Row words={<b>{name}</b>} more={more} onPick={() => void oneAtATime(() => openDemo(file))} />
          </li>
        ))}
      </ul>
    </section>
  );
}

/** The address may name a job: loading the page again, or coming back after a crash, goes on where it stopped. */
function useJobInAddress(): void {
  useEffect(() => {
    const id = location.hash.slice(1);
    if (!id.startsWith('job:')) return;
    history.replaceState(null, '', location.pathname + location.search);
    void oneAtATime(() => openJobById(id));
  }, []);
}

/** First screen: own jobs, a new one, a file, and invented examples to look round in. */
export function JobsScreen(): ReactElement {
  const [same, setSame] = useState<SameJob | null>(null);
  const [inMemory, setInMemory] = useState(false);
  // One column: what was worked on comes before what is there to look round in.
  const onPhone = useLayout() === 'phone';
  useJobInAddress();
  useEffect(() => {
    void theKeep().then((keep) => setInMemory(isInMemory(keep)));
  }, []);
  async function open(file: File): Promise<void> {
    setSame(await openJobFile(file.name, new Uint8Array(await file.arrayBuffer())));
  }
  return (
    <div className={css.screen}>
      <header className={css.top}>
        <Mark width={34} />
        <h1>{ui.app}</h1>
        <FileButton label={jobText.openFile} accept=".slabtooth" onFile={(file) => void oneAtATime(() => open(file))} />
      </header>
      <NoticeStrip />
      <main className={css.main}>
        <div className={css.start}>
          <p className={css.lead}>{jobText.lead}</p>
          <NewJob />
          {!onPhone && <Examples />}
        </div>
        <section className={css.list} aria-label={jobText.yours}>
          {inMemory && <p className={css.warn}>{jobText.inMemory}</p>}
          <JobRows />
        </section>
        {onPhone && <Examples />}
      </main>
      {same && <SameJobDialog same={same} onClose={() => setSame(null)} />}
    </div>
  );
}
