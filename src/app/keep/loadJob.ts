import type { RecordId } from '../../model/cell.ts';
import { applyCells, type Doc, type Fields } from '../../model/doc.ts';
import { openEnvelope, type EnvelopeFault, type Opened } from '../../model/envelope.ts';
import type { JobRow, Keep } from './database.ts';

export interface LoadedJob {
  readonly ok: true;
  readonly row: JobRow;
  readonly opened: Opened;
  readonly tick: number;
}
export type LoadFault =
  | 'notThere'
  /** Removed, and can be taken back. */
  | 'removed'
  /** The browser's database could not be read. */
  | 'readFailed'
  | EnvelopeFault;
export type LoadJob = LoadedJob | { readonly ok: false; readonly fault: LoadFault; readonly what: string };

/** The last snapshot with every later change replayed on it, as it was written; then migrated and checked. */
export async function loadJob(keep: Keep, id: string): Promise<LoadJob> {
  try {
    return await readJob(keep, id);
  } catch (error) {
    return { ok: false, fault: 'readFailed', what: error instanceof Error ? error.message : String(error) };
  }
}

async function readJob(keep: Keep, id: string): Promise<LoadJob> {
  const db = await keep.database();
  const tx = db.transaction(['jobs', 'snapshots', 'changes']);
  const row = await tx.objectStore('jobs').get(id);
  const snapshot = await tx.objectStore('snapshots').get(id);
  if (!row || !snapshot) return { ok: false, fault: 'notThere', what: id };
  if (row.goneOn !== null) return { ok: false, fault: 'removed', what: row.name };
  const later = await tx.objectStore('changes').getAll(IDBKeyRange.bound([id, snapshot.seq], [id, Infinity], true));

  const envelope = JSON.parse(snapshot.envelope) as { readonly records: { readonly [id: string]: Fields } };
  let records: Doc = new Map(Object.entries(envelope.records) as [RecordId, Fields][]);
  for (const { change } of later) records = applyCells(records, change.writes);

  const opened = openEnvelope({ ...envelope, records: Object.fromEntries(records) });
  if (!opened.ok) return opened;
  return { ok: true, row, opened, tick: Math.max(snapshot.tick, ...later.map(({ change }) => change.stamp.tick)) };
}
