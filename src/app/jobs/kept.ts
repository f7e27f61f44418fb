import { create } from 'zustand';
import { pageImages, type PageImages } from '../../canvas/layers/pageImages.ts';
import { asksForCopy } from '../keep/copies.ts';
import { keepNothing, openKeep, type Keep, type JobRow } from '../keep/database.ts';
import { forgetLongRemoved } from '../keep/jobList.ts';
import { openJob as openKeptJob, type KeptJob } from '../keep/openJob.ts';
import type { SaveState } from '../keep/saveFault.ts';
import { setReadOnly, showJob } from '../plan.ts';
import { restSession, say, showFloor } from '../session.ts';
import { workerPort } from '../workerPort.ts';
import { recordsOf } from '../../model/doc.ts';
import { jobText, loadFault } from '../../words/jobWords.ts';

/** The job that is open, as this browser keeps it. */
interface Kept {
  readonly job: KeptJob | null;
  readonly images: PageImages | null;
  readonly save: SaveState;
  readonly row: JobRow | null;
  /** More than ten days of work that no file holds. */
  readonly asks: boolean;
}

export const useKept = create<Kept>()(() => ({
  job: null,
  images: null,
  save: { at: 'saved' },
  row: null,
  asks: false,
}));

let keep: Promise<Keep> | null = null;

/** The browser's database; where it has none, jobs stay in memory and say so. */
export function theKeep(): Promise<Keep> {
  keep ??= openKeep().then(
    async (opened) => {
      await forgetLongRemoved(opened);
      return opened;
    },
    () => keepNothing(),
  );
  return keep;
}

export function isInMemory(opened: Keep): boolean {
  return opened.name === '';
}

async function readRow(id: string): Promise<void> {
  const opened = await theKeep();
  if (isInMemory(opened)) return;
  const db = await opened.database();
  const row = (await db.get('jobs', id)) ?? null;
  if (useKept.getState().job?.id === id)
    useKept.setState({ row, asks: row !== null && asksForCopy(row, opened.now()) });
}

/** Puts a kept job on the screen. Its address goes into the page's, so that loading again comes back to it. */
export function showKept(job: KeptJob): void {
  const images = pageImages((hash) => job.image(hash));
  useKept.setState({ job, images, save: job.saveState(), row: null, asks: false });
  job.onReadOnly(setReadOnly);
  job.onSaveState((save) => {
    useKept.setState({ save });
    if (save.at === 'saved') void readRow(job.id);
  });
  restSession();
  showJob({ id: job.id, store: job.store, port: workerPort(), readOnly: job.readOnly() });
  showFloor(recordsOf(job.store.getState(), 'floor')[0]?.id ?? null);
  history.replaceState(null, '', `#${job.id}`);
  void readRow(job.id);
}

export async function openJobById(id: string): Promise<boolean> {
  const answer = await openKeptJob(await theKeep(), id);
  if (!answer.ok) {
    say(loadFault(answer.fault, answer.what));
    return false;
  }
  showKept(answer.job);
  return true;
}

/** Back to the list. What is still being written is waited for before the job is let go. */
export function closeJob(): void {
  const { job, images } = useKept.getState();
  showJob(null);
  restSession();
  useKept.setState({ job: null, images: null, save: { at: 'saved' }, row: null, asks: false });
  history.replaceState(null, '', location.pathname + location.search);
  images?.close();
  void job?.close().catch(() => say(jobText.closeFailed));
}

export async function noteSaved(): Promise<void> {
  const { job } = useKept.getState();
  if (job) await readRow(job.id);
}
