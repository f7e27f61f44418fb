/**
 * What a page of the keeper's tests can do: the real modules of src/app/keep behind a few calls that Playwright can
 * make. Built into one script and served to a blank page.
 */
import { recordsOf } from '../../src/model/doc.ts';
import { readJobFile } from '../../src/exchange/jobFile.ts';
import { keepNothing, openKeep, type Keep } from '../../src/app/keep/database.ts';
import { listJobs, newJob } from '../../src/app/keep/jobList.ts';
import { openJob, type KeptJob } from '../../src/app/keep/openJob.ts';
import type { SaveState } from '../../src/app/keep/saveFault.ts';

let keep: Keep = keepNothing();
let job: KeptJob | null = null;

function opened(): KeptJob {
  if (!job) throw new Error('no job is open');
  return job;
}

const keepPage = {
  hasLocks: () => 'locks' in navigator,
  async start(): Promise<void> {
    keep = await openKeep();
  },
  async newJob(name: string): Promise<string> {
    const answer = await newJob(keep, { name, units: 'metric', floorName: 'Ground floor' });
    if (!answer.ok) throw new Error(answer.fault);
    return answer.id;
  },
  async open(id: string): Promise<string | null> {
    const answer = await openJob(keep, id);
    if (!answer.ok) throw new Error(answer.fault);
    job = answer.job;
    return job.readOnly();
  },
  /** One drag done: one change. The floor's level stands for what is moved. */
  drag(level: number): void {
    const [floor] = recordsOf(opened().store.getState(), 'floor');
    if (floor) opened().store.commit('moveRecords', [[floor.id, 'level', level]]);
  },
  /** The same with a long text beside it, which needs room. */
  dragLarge(level: number, letters: number): void {
    const [floor] = recordsOf(opened().store.getState(), 'floor');
    const name = Array.from({ length: letters / 8 }, () => Math.random().toString(36).slice(2, 10)).join('');
    if (floor)
      opened().store.commit('moveRecords', [
        [floor.id, 'level', level],
        [floor.id, 'name', name],
      ]);
  },
  level: () => recordsOf(opened().store.getState(), 'floor')[0]?.level ?? null,
  readOnly: () => opened().readOnly(),
  saveState: (): SaveState => opened().saveState(),
  flush: () => opened().flush(),
  addImage(bytes: number): string | null {
    const picture = new Uint8Array(bytes);
    picture.set([0x89, 0x50, 0x4e, 0x47]);
    // Pieces no two alike: stores pack what repeats.
    for (let at = 4; at < bytes; at += 65_536) crypto.getRandomValues(picture.subarray(at, at + 65_536));
    return opened().addImage(picture);
  },
  async imageSize(hash: string): Promise<number | null> {
    return (await opened().image(hash))?.size ?? null;
  },
  /** Milliseconds from the commit to 'saved'. */
  async timeToSaved(level: number): Promise<number> {
    const before = performance.now();
    keepPage.drag(level);
    await opened().flush();
    if (opened().saveState().at !== 'saved') throw new Error(opened().saveState().at);
    return performance.now() - before;
  },
  /** The level in the job file, as a reader of the file sees it. */
  async levelInFile(): Promise<number | null> {
    const answer = readJobFile((await opened().writeFile()).bytes);
    if (!answer.ok) throw new Error(answer.fault);
    return recordsOf(answer.opened.doc, 'floor')[0]?.level ?? null;
  },
  close: (): Promise<boolean> => opened().close(),
  list: async (): Promise<string[]> => (await listJobs(keep)).map((row) => row.name),
};
export type KeepPage = typeof keepPage;

declare global {
  interface Window {
    keepPage: KeepPage;
  }
}
window.keepPage = keepPage;
