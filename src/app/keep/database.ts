/**
 * Where jobs live in this browser: IndexedDB, by way of idb.
 *
 *   jobs       one row a job: what the job list shows, and where its last copy is
 *   snapshots  the whole job as the text of a job.json, every few hundred changes
 *   changes    every change ever made, as the store froze it; reopening replays those after the snapshot
 *   images     page scans and photographs as Blobs, by job and SHA-256
 *   leases     who may write a job, where the browser has no locks of its own (plain http)
 *   device     the name of this browser in the stamps of changes
 *
 * Start with `openKeep()`. The rest of the folder: jobList (list, new, rename, duplicate, remove), openJob (the plan
 * on screen: autosave, read-only second tab, images, files), placeFile (a job file becomes a job), copies (when to ask).
 * Nothing here knows React.
 */
import { openDB, type DBSchema, type IDBPDatabase } from 'idb';
import type { Change } from '../../model/cell.ts';
import { idMaker, type NewId } from '../../model/id.ts';
import type { ImageExtension } from '../../exchange/jobFile.ts';

export interface LastCopy {
  /** Milliseconds since 1970. */
  readonly on: number;
  readonly fileName: string;
}

export interface JobRow {
  readonly id: string;
  readonly name: string;
  readonly units: 'metric' | 'imperial';
  readonly invented: boolean;
  /** A crew copy holds no money and never replaces the whole job. */
  readonly copy: 'whole' | 'crew';
  readonly createdOn: number;
  readonly changedOn: number;
  /** Number of the last change in the log. */
  readonly seq: number;
  readonly snapshotSeq: number;
  readonly lastCopy: LastCopy | null;
  readonly editsSinceCopy: number;
  /** When the first edit was made that no file holds; null when every edit is in a file. */
  readonly firstEditSinceCopyOn: number | null;
  /** Removed then; kept for thirty days. */
  readonly goneOn: number | null;
}

export interface SnapshotRow {
  readonly job: string;
  readonly seq: number;
  readonly tick: number;
  readonly envelope: string;
}

export interface ChangeRow {
  readonly job: string;
  readonly seq: number;
  readonly change: Change;
}

export interface ImageRow {
  readonly job: string;
  readonly hash: string;
  readonly extension: ImageExtension;
  readonly blob: Blob;
}

export interface LeaseRow {
  readonly job: string;
  readonly holder: string;
  readonly until: number;
}

interface KeepSchema extends DBSchema {
  jobs: { key: string; value: JobRow };
  snapshots: { key: string; value: SnapshotRow };
  changes: { key: [string, number]; value: ChangeRow };
  images: { key: [string, string]; value: ImageRow };
  leases: { key: string; value: LeaseRow };
  device: { key: string; value: string };
}
export type Database = IDBPDatabase<KeepSchema>;

export interface Keep {
  readonly name: string;
  /** The name of this browser in stamps. */
  readonly device: string;
  /** Opened again by itself after the browser has closed it; rejects where there is none. */
  database(): Promise<Database>;
  now(): number;
  readonly newId: NewId;
  /** null where the browser has none (plain http): leases in the database stand in. */
  readonly locks: LockManager | null;
  close(): Promise<void>;
}

export interface KeepSetup {
  readonly name?: string;
  readonly now?: () => number;
  readonly locks?: LockManager | null;
}

const VERSION = 1;

function open(name: string, onLost: () => void): Promise<Database> {
  return openDB<KeepSchema>(name, VERSION, {
    upgrade(db) {
      db.createObjectStore('jobs', { keyPath: 'id' });
      db.createObjectStore('snapshots', { keyPath: 'job' });
      db.createObjectStore('changes', { keyPath: ['job', 'seq'] });
      db.createObjectStore('images', { keyPath: ['job', 'hash'] });
      db.createObjectStore('leases', { keyPath: 'job' });
      db.createObjectStore('device');
    },
    // A newer app in another tab wants to change the database: let it; the next write opens it again.
    blocking: (_current, _blocked, event) => {
      (event.target as IDBDatabase).close();
      onLost();
    },
    terminated: onLost,
  });
}

/** Random letters for ids; works on plain http too. */
export const newId = idMaker((count) => crypto.getRandomValues(new Uint8Array(count)));

/** Opens the browser's database. Rejects where it has none or forbids it: `keepNothing()` then still lets people work. */
export async function openKeep(setup: KeepSetup = {}): Promise<Keep> {
  const { name = 'slabtooth', now = Date.now } = setup;
  // Typed as always there; missing on plain http.
  const locks = setup.locks === undefined ? ((navigator.locks as LockManager | undefined) ?? null) : setup.locks;
  let opened: Promise<Database> | null = null;
  const database = (): Promise<Database> => {
    if (!opened) {
      const opening = open(name, () => {
        if (opened === opening) opened = null;
      });
      opening.catch(() => {
        if (opened === opening) opened = null;
      });
      opened = opening;
    }
    return opened;
  };
  const db = await database();
  let device = await db.get('device', 'name');
  if (!device) {
    device = newId('device').slice('device:'.length);
    await db.put('device', device, 'name');
  }
  const close = async (): Promise<void> => {
    if (opened) (await opened).close();
    opened = null;
  };
  return { name, device, database, now, newId, locks, close };
}

/** A keep without a database: jobs stay in memory, and say so, and can be saved as a file. */
export function keepNothing(now: () => number = Date.now): Keep {
  const database = (): Promise<Database> => Promise.reject(new NoDatabase());
  return { name: '', device: 'memory', database, now, newId, locks: null, close: () => Promise.resolve() };
}

export class NoDatabase extends Error {
  constructor() {
    super('this browser has no database for jobs');
    this.name = 'NoDatabase';
  }
}
