import type { Cell, RecordId } from '../../model/cell.ts';
import { applyCells, cellsFor, EMPTY_DOC } from '../../model/doc.ts';
import { HEAD, type Opened } from '../../model/envelope.ts';
import { keysAfter } from '../../model/order.ts';
import { checkRecord } from '../../model/records/all.ts';
import type { Job } from '../../model/records/job.ts';
import { asksForCopy } from './copies.ts';
import type { JobRow, Keep } from './database.ts';
import { imageRows } from './images.ts';
import { loadJob, type LoadFault } from './loadJob.ts';
import { dropJobs, putJob } from './moveJob.ts';
import { openJob } from './openJob.ts';
import { saveFaultOf, type SaveFault } from './saveFault.ts';

/** A removed job is kept so long, and can be taken back. */
export const KEPT_REMOVED_DAYS = 30;
const DAY_MS = 24 * 60 * 60 * 1000;

export interface ListedJob extends JobRow {
  /** Ten days of edits and no file: ask for one. */
  readonly asksForCopy: boolean;
}

async function rows(keep: Keep): Promise<ListedJob[]> {
  const db = await keep.database();
  const now = keep.now();
  const all = await db.getAll('jobs');
  return all
    .map((row) => ({ ...row, asksForCopy: asksForCopy(row, now) }))
    .toSorted((a, b) => b.changedOn - a.changedOn);
}

/** Jobs in this browser, the last changed first. */
export async function listJobs(keep: Keep): Promise<ListedJob[]> {
  return (await rows(keep)).filter((row) => row.goneOn === null);
}

/** Removed jobs that can still be taken back, the last removed first. */
export async function listRemoved(keep: Keep): Promise<ListedJob[]> {
  const gone = (await rows(keep)).filter((row) => row.goneOn !== null);
  return gone.toSorted((a, b) => (b.goneOn ?? 0) - (a.goneOn ?? 0));
}

export interface NewJob extends Pick<Job, 'name' | 'units'> {
  readonly currency?: string;
  readonly startedAs?: Job['startedAs'];
  readonly startedOn?: string;
  /** Its first floor: an id where what the job starts with speaks of it. */
  readonly floor?: `floor:${string}`;
  /** What the first floor is called. */
  readonly floorName: string;
  /** Whatever else a job starts with: fleet, rates, prices. */
  readonly more?: readonly Cell[];
}

/** The plan of a new job: the job and its first floor. */
export function startOfJob(keep: Keep, fields: NewJob): { readonly id: RecordId; readonly opened: Opened } {
  const {
    name,
    units,
    currency = 'USD',
    startedAs,
    startedOn,
    floorName,
    floor = keep.newId('floor'),
    more = [],
  } = fields;
  const id = keep.newId('job');
  const [order = ''] = keysAfter(null, 1);
  const job: Job = { name, units, currency, ...(startedAs ? { startedAs } : {}), ...(startedOn ? { startedOn } : {}) };
  const doc = applyCells(EMPTY_DOC, [...cellsFor(id, job), ...cellsFor(floor, { name: floorName, order }), ...more]);
  for (const [record, slots] of doc) {
    const fault = checkRecord(record, slots);
    if (fault) throw new Error(`${record}: ${fault}`);
  }
  return {
    id,
    opened: { ok: true, doc, quarantine: new Map(), head: HEAD, readOnly: false, migrated: [], broken: [] },
  };
}

/** The same plan with its job record under another id: the identity of a job, which no two may share. */
export function withJobId(opened: Opened, id: RecordId): Opened {
  const old = [...opened.doc.keys()].find((key) => key.startsWith('job:'));
  if (!old || old === id) return opened;
  const doc = new Map(opened.doc);
  const fields = doc.get(old);
  doc.delete(old);
  if (fields) doc.set(id, fields);
  for (const [record, slots] of doc) {
    const named = Object.entries(slots).filter(([, value]) => value === old);
    if (named.length > 0) doc.set(record, { ...slots, ...Object.fromEntries(named.map(([slot]) => [slot, id])) });
  }
  return { ...opened, doc };
}

export type JobFault = LoadFault | SaveFault | 'openElsewhere' | 'newerFile';
export type JobAnswer = { readonly ok: true; readonly id: RecordId } | { readonly ok: false; readonly fault: JobFault };

/** Makes a job. Answers its id once it is in the database. */
export async function newJob(keep: Keep, fields: NewJob): Promise<JobAnswer> {
  const { id, opened } = startOfJob(keep, fields);
  const { doc, quarantine, head } = opened;
  return written(id, putJob(keep, id, { doc, quarantine, head, tick: 0, images: [] }));
}

async function written(id: RecordId, writing: Promise<void>): Promise<JobAnswer> {
  try {
    await writing;
    return { ok: true, id };
  } catch (error) {
    return { ok: false, fault: saveFaultOf(error) };
  }
}

/** A second job with the same plan and images, under a new name. */
export async function duplicateJob(keep: Keep, id: string, name: string): Promise<JobAnswer> {
  const loaded = await loadJob(keep, id);
  if (!loaded.ok) return loaded;
  const copyId = keep.newId('job');
  const { doc, quarantine, head } = withJobId(loaded.opened, copyId);
  const renamed = applyCells(doc, [[copyId, 'name', name]]);
  const images = await imageRows(keep, id);
  return written(copyId, putJob(keep, copyId, { doc: renamed, quarantine, head, tick: loaded.tick, images }));
}

/** Renames a job that is not open. An open one is renamed in its own plan, with undo. */
export async function renameJob(keep: Keep, id: string, name: string): Promise<JobAnswer> {
  const answer = await openJob(keep, id);
  if (!answer.ok) return answer;
  const { job } = answer;
  try {
    const why = job.readOnly();
    if (why) return { ok: false, fault: why === 'otherTab' ? 'openElsewhere' : 'newerFile' };
    const record = [...job.store.getState().keys()].find((key) => key.startsWith('job:'));
    if (record) job.store.commit('renameJob', [[record, 'name', name]]);
    await job.flush();
    const state = job.saveState();
    return state.at === 'notSaved' ? { ok: false, fault: state.fault } : { ok: true, id: id as RecordId };
  } finally {
    await job.close(true);
  }
}

async function markGone(keep: Keep, id: string, goneOn: number | null): Promise<void> {
  const db = await keep.database();
  const tx = db.transaction('jobs', 'readwrite');
  const row = await tx.store.get(id);
  if (row) await tx.store.put({ ...row, goneOn });
  await tx.done;
}

/** Takes a job off the list. It is kept for thirty days. */
export function removeJob(keep: Keep, id: string): Promise<void> {
  return markGone(keep, id, keep.now());
}

export function takeBackJob(keep: Keep, id: string): Promise<void> {
  return markGone(keep, id, null);
}

/** Forgets jobs that were removed more than thirty days ago. Called once when the app starts. */
export async function forgetLongRemoved(keep: Keep): Promise<number> {
  const db = await keep.database();
  const limit = keep.now() - KEPT_REMOVED_DAYS * DAY_MS;
  const due = (await db.getAll('jobs')).filter((row) => row.goneOn !== null && row.goneOn < limit);
  await dropJobs(
    keep,
    due.map((row) => row.id),
  );
  return due.length;
}
