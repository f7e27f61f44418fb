import type { Change } from '../../model/cell.ts';
import { recordsOf, type Doc } from '../../model/doc.ts';
import { writeEnvelope, type Head } from '../../model/envelope.ts';
import type { Quarantine } from '../../model/store.ts';
import type { Database, JobRow, Keep, SnapshotRow } from './database.ts';
import { TakenOver } from './saveFault.ts';
import { keepsOut } from './writeLock.ts';

/** The whole of a job in memory, from which a snapshot or a row can be written at any time. */
export interface WholeJob {
  readonly doc: Doc;
  readonly quarantine: Quarantine;
  readonly head: Head;
  readonly tick: number;
}

/** Reopening replays at most so many changes. */
export const SNAPSHOT_EVERY = 300;

function about(whole: WholeJob): Pick<JobRow, 'name' | 'units' | 'invented' | 'copy'> {
  const job = recordsOf(whole.doc, 'job')[0];
  return {
    name: job?.name ?? '',
    units: job?.units ?? 'metric',
    invented: job?.invented === true,
    copy: whole.head.copy,
  };
}

export function newRow(id: string, whole: WholeJob, now: number): JobRow {
  return {
    id,
    ...about(whole),
    createdOn: now,
    changedOn: now,
    seq: 0,
    snapshotSeq: 0,
    lastCopy: null,
    editsSinceCopy: 0,
    firstEditSinceCopyOn: null,
    goneOn: null,
  };
}

export function snapshotOf(id: string, whole: WholeJob, seq: number): SnapshotRow {
  return { job: id, seq, tick: whole.tick, envelope: writeEnvelope(whole.doc, whole.quarantine, whole.head) };
}

export interface Writing {
  readonly id: string;
  readonly changes: readonly Change[];
  /** The job as it is after the changes. */
  readonly whole: WholeJob;
  /** Also write a snapshot, whatever the count. */
  readonly snapshot: boolean;
  /** Only while this lease is ours; null where the browser's own lock guards us. */
  readonly leaseHolder: string | null;
}

/**
 * Writes changes, the row and, when due, a snapshot in one transaction: all of it or none. Answers the number of the
 * last change once the transaction is complete, and not before.
 */
export async function writeChanges(keep: Keep, writing: Writing): Promise<number> {
  const { id, changes, whole, leaseHolder } = writing;
  const db: Database = await keep.database();
  const tx = db.transaction(['jobs', 'changes', 'snapshots', 'leases'], 'readwrite', { durability: 'strict' });
  // Looked at here so that a failed put is not reported twice.
  tx.done.catch(() => undefined);
  const now = keep.now();
  if (leaseHolder !== null && keepsOut(await tx.objectStore('leases').get(id), leaseHolder, now)) {
    tx.abort();
    throw new TakenOver();
  }
  const known = await tx.objectStore('jobs').get(id);
  // The row is gone when the browser was told to forget this site: then all of the job is written again.
  const row = known ?? newRow(id, whole, now);
  const seq = row.seq + changes.length;
  const snapshotDue = !known || writing.snapshot || seq - row.snapshotSeq >= SNAPSHOT_EVERY;
  const puts: Promise<unknown>[] = changes.map((change, index) =>
    tx.objectStore('changes').put({ job: id, seq: row.seq + index + 1, change }),
  );
  if (snapshotDue) puts.push(tx.objectStore('snapshots').put(snapshotOf(id, whole, seq)));
  const edited = changes.length > 0;
  puts.push(
    tx.objectStore('jobs').put({
      ...row,
      ...about(whole),
      seq,
      snapshotSeq: snapshotDue ? seq : row.snapshotSeq,
      changedOn: edited ? now : row.changedOn,
      editsSinceCopy: row.editsSinceCopy + changes.length,
      firstEditSinceCopyOn: row.firstEditSinceCopyOn ?? (edited ? now : null),
    }),
  );
  await Promise.all([...puts, tx.done]);
  return seq;
}
