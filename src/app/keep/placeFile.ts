import type { RecordId } from '../../model/cell.ts';
import { recordsOf } from '../../model/doc.ts';
import type { Opened } from '../../model/envelope.ts';
import type { Images } from '../../exchange/jobFile.ts';
import type { JobRow, Keep } from './database.ts';
import { withJobId } from './jobList.ts';
import { imageRowsFor, putInPlaceOf, putJob, type WholeWithImages } from './moveJob.ts';
import { saveFaultOf, type SaveFault } from './saveFault.ts';
import { takeWriteLock } from './writeLock.ts';

/**
 * A job file becomes a job in this browser. Ask `sameJob` first: when the job is here already, let the person choose
 * between a second job and putting the file in its place. What is replaced is kept with the removed jobs.
 */
export interface OpenedFile {
  readonly opened: Opened;
  readonly images: Images;
  readonly fileName: string;
}
export type PlaceFault =
  /** The job that would be replaced is open in some tab. */
  | 'openElsewhere'
  /** A crew copy has no prices: it cannot stand in for the whole job. */
  | 'crewCopyForWhole'
  | SaveFault;
export type PlaceFile =
  | { readonly ok: true; readonly id: RecordId }
  | { readonly ok: false; readonly fault: PlaceFault };

function jobRecord(opened: Opened): RecordId | null {
  return recordsOf(opened.doc, 'job')[0]?.id ?? null;
}

/** The job of this browser that the file is a copy of, or null. */
export async function sameJob(keep: Keep, opened: Opened): Promise<JobRow | null> {
  const id = jobRecord(opened);
  if (!id) return null;
  const db = await keep.database();
  const row = await db.get('jobs', id);
  return row && row.goneOn === null ? row : null;
}

/** A file that lost its job record gets one, so that the rest can be seen. */
function withJob(keep: Keep, { opened, fileName }: OpenedFile): Opened {
  if (jobRecord(opened)) return opened;
  const name = fileName.replace(/\.slabtooth$/i, '');
  const job = { name: name === '' ? 'job' : name, units: 'metric', currency: 'USD' };
  return { ...opened, doc: new Map(opened.doc).set(keep.newId('job'), job) };
}

function wholeOf(keep: Keep, id: RecordId, opened: Opened, file: OpenedFile): [WholeWithImages, Partial<JobRow>] {
  const { doc, quarantine, head } = opened;
  const lastCopy = head.copy === 'whole' ? { on: keep.now(), fileName: file.fileName } : null;
  return [{ doc, quarantine, head, tick: 0, images: imageRowsFor(id, file.images) }, { lastCopy }];
}

async function written(id: RecordId, writing: Promise<void>): Promise<PlaceFile> {
  try {
    await writing;
    return { ok: true, id };
  } catch (error) {
    return { ok: false, fault: saveFaultOf(error) };
  }
}

/** As a job of its own; the file's own id when that is free, else a new one. */
export async function placeFile(keep: Keep, file: OpenedFile): Promise<PlaceFile> {
  const opened = withJob(keep, file);
  const own = jobRecord(opened);
  const db = await keep.database();
  const free = own !== null && (await db.getKey('jobs', own)) === undefined;
  const id = free ? own : keep.newId('job');
  return written(id, putJob(keep, id, ...wholeOf(keep, id, withJobId(opened, id), file)));
}

/** In the place of the job it is a copy of, which goes to the removed jobs. */
export async function replaceJob(keep: Keep, file: OpenedFile): Promise<PlaceFile> {
  const same = await sameJob(keep, file.opened);
  if (!same) return placeFile(keep, file);
  if (file.opened.head.copy === 'crew' && same.copy === 'whole') return { ok: false, fault: 'crewCopyForWhole' };
  const nothing = (): void => undefined;
  const lock = await takeWriteLock(keep, same.id, { onHeld: nothing, onLost: nothing });
  try {
    if (!lock.held()) return { ok: false, fault: 'openElsewhere' };
    const id = same.id as RecordId;
    return await written(id, putInPlaceOf(keep, id, ...wholeOf(keep, id, file.opened, file)));
  } finally {
    lock.release();
  }
}
