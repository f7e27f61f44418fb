import { create } from 'zustand';
import { pageImages, type PageImages } from '../../canvas/layers/pageImages.ts';
import { asksForCopy } from '../keep/copies.ts';
import { keepNothing, openKeep, type Keep, type JobRow } from '../keep/database.ts';
import { forgetLongRemoved } from '../keep/jobList.ts';
import { openJob as openKeptJob, type KeptJob } from '../keep/openJob.ts';
import type { SaveState } from '../keep/saveFault.ts';
import { setReadOnly, showJob } from '../plan.ts';
import { goTo, openPanel, restSession, say, showFloor } from '../session.ts';
import { workerPort } from '../workerPort.ts';
import { recordsOf } from '../../model/doc.ts';
import { jobText, loadFault } from '../../words/jobWords.ts';
import { ui } from '../../words/uiWords.ts';

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
/** A job that is let go no longer speaks for the screen. */
let letGo: readonly (() => void)[] = [];

/** The browser's database; where it has none, jobs stay in memory and say so. */
export function theKeep(): Promise<Keep> {
  keep ??= openKeep().then(
    async (opened) => {
      // What cannot be forgotten today (a full disk) is forgotten another day.
      await forgetLongRemoved(opened).catch(() => undefined);
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
  letGo = [
    job.onReadOnly(setReadOnly),
    job.onSaveState((save) => {
      useKept.setState({ save });
      if (save.at === 'saved') void readRow(job.id);
    }),
  ];
  restSession();
  const port = workerPort(() => say(ui.takeoffStopped, { words: ui.reload, run: () => location.reload() }));
  showJob({ id: job.id, store: job.store, port, readOnly: job.readOnly() });
  // The crew's copy, which has no currency, opens where the crew works from.
  if (recordsOf(job.store.getState(), 'job')[0]?.currency === undefined) goTo('crew');
  showFloor(recordsOf(job.store.getState(), 'floor')[0]?.id ?? null);
  history.replaceState(null, '', `#${job.id}`);
  void readRow(job.id);
  void sayLackingPage(job);
}

/** A page is drawn when its picture has been read; one that is not there would stay a white sheet without a word. */
async function sayLackingPage(job: KeptJob): Promise<void> {
  const pages = recordsOf(job.store.getState(), 'page').filter((page) => page.hidden !== true);
  const there = await Promise.all(pages.map(({ image }) => job.image(image).catch(() => null)));
  const lacking = pages[there.indexOf(null)];
  if (lacking && useKept.getState().job === job) say(jobText.pageLacking(lacking.name));
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

/** Back to the list. While leaving would lose edits, the job stays on the screen and a dialog offers to save a file. */
export async function closeJob(dropUnsaved = false): Promise<void> {
  const { job, images } = useKept.getState();
  if (!job) return;
  if (!(await job.close(dropUnsaved))) {
    openPanel('leave');
    return;
  }
  // A second tap on the way out has done all of it already.
  if (useKept.getState().job !== job) return;
  for (const stop of letGo) stop();
  letGo = [];
  showJob(null);
  restSession();
  useKept.setState({ job: null, images: null, save: { at: 'saved' }, row: null, asks: false });
  history.replaceState(null, '', location.pathname + location.search);
  images?.close();
}

export async function noteSaved(): Promise<void> {
  const { job } = useKept.getState();
  if (job) await readRow(job.id);
}
