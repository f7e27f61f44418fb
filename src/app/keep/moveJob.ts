import type { Images } from '../../exchange/jobFile.ts';
import type { Database, ImageRow, JobRow, Keep } from './database.ts';
import { imageRow } from './images.ts';
import { newRow, snapshotOf, type WholeJob } from './jobRows.ts';

/** Whole jobs into and within the database, each in one transaction: done altogether or not at all. */
const STORES = ['jobs', 'snapshots', 'changes', 'images'] as const;

function startWrite(db: Database) {
  const tx = db.transaction(STORES, 'readwrite', { durability: 'strict' });
  return {
    jobs: tx.objectStore('jobs'),
    snapshots: tx.objectStore('snapshots'),
    changes: tx.objectStore('changes'),
    images: tx.objectStore('images'),
    done: tx.done,
  };
}
type Write = ReturnType<typeof startWrite>;

export interface WholeWithImages extends WholeJob {
  readonly images: readonly ImageRow[];
}

export function imageRowsFor(id: string, images: Images): ImageRow[] {
  return [...images].map(([hash, { bytes, extension }]) => imageRow(id, bytes, extension, hash));
}

function put(write: Write, row: JobRow, job: WholeWithImages): Promise<unknown>[] {
  return [
    write.jobs.add(row),
    write.snapshots.put(snapshotOf(row.id, job, row.seq)),
    ...job.images.map((image) => write.images.put({ ...image, job: row.id })),
  ];
}

function drop(write: Write, id: string): Promise<unknown>[] {
  const all = IDBKeyRange.bound([id], [id, []]);
  return [write.jobs.delete(id), write.snapshots.delete(id), write.changes.delete(all), write.images.delete(all)];
}

/** A new job under a free id; rejects, having written nothing, when it does not fit. */
export async function putJob(keep: Keep, id: string, job: WholeWithImages, more: Partial<JobRow> = {}): Promise<void> {
  const write = startWrite(await keep.database());
  await Promise.all([...put(write, { ...newRow(id, job, keep.now()), ...more }, job), write.done]);
}

/** Puts a job in the place of another, which goes with all it has among the removed, under a new id. */
export async function putInPlaceOf(
  keep: Keep,
  id: string,
  job: WholeWithImages,
  more: Partial<JobRow> = {},
): Promise<void> {
  const aside = keep.newId('job');
  const write = startWrite(await keep.database());
  write.done.catch(() => undefined);
  const all = IDBKeyRange.bound([id], [id, []]);
  const [row, snapshot, changes, images] = await Promise.all([
    write.jobs.get(id),
    write.snapshots.get(id),
    write.changes.getAll(all),
    write.images.getAll(all),
  ]);
  const work = drop(write, id);
  if (row) work.push(write.jobs.put({ ...row, id: aside, goneOn: keep.now() }));
  if (snapshot) work.push(write.snapshots.put({ ...snapshot, job: aside }));
  for (const change of changes) work.push(write.changes.put({ ...change, job: aside }));
  for (const image of images) work.push(write.images.put({ ...image, job: aside }));
  work.push(...put(write, { ...newRow(id, job, keep.now()), ...more }, job));
  await Promise.all([...work, write.done]);
}

export async function dropJobs(keep: Keep, ids: readonly string[]): Promise<void> {
  const write = startWrite(await keep.database());
  await Promise.all([...ids.flatMap((id) => drop(write, id)), write.done]);
}
