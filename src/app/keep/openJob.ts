import type { Cell } from '../../model/cell.ts';
import { applyCells, recordsOf } from '../../model/doc.ts';
import { differenceOf } from '../../model/difference.ts';
import type { Head, Opened } from '../../model/envelope.ts';
import type { BrokenLink } from '../../model/integrity.ts';
import { planStore, RefusedChange, type PlanStore, type Quarantine } from '../../model/store.ts';
import { writeCrewCopy } from '../../exchange/crewCopy.ts';
import { imagesNamed, writeJobFile, type ImageFile, type Images } from '../../exchange/jobFile.ts';
import { autosave } from './autosave.ts';
import { fileNameFor, noteCopy } from './copies.ts';
import type { ImageRow, Keep } from './database.ts';
import { imageExtension, imageFile, imageRow, imagesOf } from './images.ts';
import { loadJob, type LoadFault } from './loadJob.ts';
import type { SaveState } from './saveFault.ts';
import { takeWriteLock, type WriteLock } from './writeLock.ts';

/**
 * A job on the screen. Changes committed to `store` are in the database as soon as a transaction can be; a second tab
 * follows what the first one writes, refuses changes of its own, and may write when the first one is closed.
 *
 *   const answer = await openJob(keep, id);
 *   if (answer.ok) answer.job.store.commit(...)
 */
export type ReadOnly = 'otherTab' | 'newerFile' | null;

export interface KeptJob {
  readonly id: string;
  readonly store: PlanStore;
  readonly head: Head;
  readonly broken: readonly BrokenLink[];
  readonly migrated: readonly string[];
  readOnly(): ReadOnly;
  onReadOnly(on: (why: ReadOnly) => void): () => void;
  saveState(): SaveState;
  onSaveState(on: (state: SaveState) => void): () => void;
  /** Resolves when what was committed so far is in the database, or could not be put there. */
  flush(): Promise<void>;
  /** Keeps a picture and answers its hash, for the page or photo record; null when it is no PNG, JPEG or WebP. */
  addImage(bytes: Uint8Array): string | null;
  image(hash: string): Promise<Blob | null>;
  /** The whole job as a file. After it has been saved, say so with `copySaved`. Works with a full disk too. */
  writeFile(): Promise<WrittenFile>;
  /** For the crew: nothing of money in it. It is not a copy of the job, and does not count as one. */
  writeCrewFile(): Promise<WrittenFile>;
  copySaved(file: WrittenFile): Promise<void>;
  /** Quarantined records of the file and those that came later. */
  quarantine(): Quarantine;
  /**
   * Closes the job when all of it is in the database. Else it stays open and answers the state, so that the person can
   * save a file first; `dropUnsaved` closes it all the same.
   */
  close(dropUnsaved?: boolean): Promise<SaveState>;
}

export interface WrittenFile {
  readonly fileName: string;
  readonly bytes: Uint8Array;
  /** Number of the last change in it. */
  readonly seq: number;
  /** Hashes of pictures that the plan names and the file does not hold, because they could not be read. */
  readonly missingImages: readonly string[];
}

export type OpenJob =
  | { readonly ok: true; readonly job: KeptJob }
  | { readonly ok: false; readonly fault: LoadFault; readonly what: string };

export async function openJob(keep: Keep, id: string): Promise<OpenJob> {
  const loaded = await loadJob(keep, id);
  if (!loaded.ok) return loaded;
  const { opened, tick, row } = loaded;
  return { ok: true, job: await keptJob(keep, id, opened, tick, row.seq) };
}

/** A job that no database keeps (see `keepNothing`): its edits stay in memory until they are saved as a file. */
export function jobInMemory(keep: Keep, id: string, opened: Opened, images: Images = new Map()): Promise<KeptJob> {
  return keptJob(keep, id, opened, 0, 0, images, true);
}

async function keptJob(
  keep: Keep,
  id: string,
  opened: Opened,
  tick: number,
  startSeq: number,
  startImages: Images = new Map(),
  inMemory = false,
): Promise<KeptJob> {
  const store = planStore({ doc: opened.doc, quarantine: opened.quarantine, device: keep.device, tick });
  const readOnlyListeners = new Set<(why: ReadOnly) => void>();
  const news = new BroadcastChannel(`${keep.name}/written`);
  let lock: WriteLock | null = null;
  let writing = false;
  let catchingUp = false;
  let closed = false;
  let seq = startSeq;
  let aside = opened.quarantine;
  let catchingUpDone = Promise.resolve();

  const quarantine = (): Quarantine => new Map([...aside, ...store.quarantine()]);
  const readOnly = (): ReadOnly => {
    if (opened.readOnly) return 'newerFile';
    return writing ? null : 'otherTab';
  };
  const tellReadOnly = (): void => {
    for (const on of readOnlyListeners) on(readOnly());
  };

  const saving = autosave({
    keep,
    id,
    whole: () => ({ doc: store.getState(), quarantine: quarantine(), head: opened.head, tick: store.tick() }),
    mayWrite: () => writing && !opened.readOnly,
    leaseHolder: () => lock?.leaseHolder ?? null,
    onWritten(written) {
      seq = written;
      if (!closed) news.postMessage(id);
    },
  });

  /** Brings the plan on screen to what the database holds, keeping what this tab has not yet been able to write. */
  function catchUp(): Promise<void> {
    catchingUpDone = catchingUpDone.then(readNews);
    return catchingUpDone;
  }

  async function readNews(): Promise<void> {
    const loaded = await loadJob(keep, id);
    if (!loaded.ok || closed || loaded.row.seq === seq) return;
    const waiting: Cell[] = saving.waiting().flatMap((change) => change.writes);
    const cells = differenceOf(store.getState(), applyCells(loaded.opened.doc, waiting));
    seq = loaded.row.seq;
    aside = loaded.opened.quarantine;
    if (cells.length === 0) return;
    catchingUp = true;
    store.commit('load', cells, 'load');
    catchingUp = false;
  }

  async function startWriting(): Promise<void> {
    await catchUp();
    if (closed) return;
    writing = true;
    if (opened.migrated.length > 0) saving.takeSnapshot();
    tellReadOnly();
    void saving.flush();
  }

  if (inMemory) writing = true;
  else if (!opened.readOnly) {
    lock = await takeWriteLock(keep, id, {
      onHeld: () => void startWriting(),
      onLost() {
        writing = false;
        tellReadOnly();
      },
    });
    if (lock.held()) await startWriting();
  }
  for (const [hash, { bytes, extension }] of startImages) saving.addImage(imageRow(id, bytes, extension, hash));

  store.onChange((change) => {
    if (!catchingUp && !opened.readOnly) saving.add(change);
  });
  news.addEventListener('message', (event: MessageEvent<unknown>) => {
    if (event.data === id && !writing) void catchUp();
  });

  const onHide = (): void => void saving.flush();
  /** The browser asks "leave?" only while something would be lost. */
  const onLeave = (event: BeforeUnloadEvent): void => {
    if (saving.state().at === 'notSaved') event.preventDefault();
  };
  document.addEventListener('visibilitychange', onHide);
  window.addEventListener('pagehide', onHide);
  window.addEventListener('beforeunload', onLeave);

  /** Images of this job: those still waiting to be written, then those in the database. */
  async function allImages(): Promise<Map<string, ImageFile>> {
    // A file without a picture that cannot be read is better than no file.
    const stored = inMemory ? new Map() : await imagesOf(keep, id).catch(() => new Map());
    const kept = new Map<string, ImageFile>(stored);
    const waiting = [...imagesNamed(store.getState())].flatMap((hash) => saving.image(hash) ?? []);
    const files = await Promise.all(waiting.map(async (row) => [row.hash, await imageFile(row)] as const));
    for (const [hash, file] of files) kept.set(hash, file);
    return kept;
  }

  async function storedImage(hash: string): Promise<ImageRow | null> {
    if (inMemory) return null;
    const db = await keep.database();
    return (await db.get('images', [id, hash])) ?? null;
  }

  async function writtenFile(copy: 'whole' | 'crew'): Promise<WrittenFile> {
    const at = seq + saving.waiting().length;
    const doc = store.getState();
    const images = await allImages();
    const write = copy === 'whole' ? writeJobFile : writeCrewCopy;
    return {
      fileName: fileNameFor(recordsOf(doc, 'job')[0]?.name ?? '', copy),
      bytes: write(doc, quarantine(), images, opened.head),
      seq: at,
      missingImages: [...imagesNamed(doc)].filter((hash) => !images.has(hash)),
    };
  }

  return {
    id,
    store: guarded(store, readOnly),
    head: opened.head,
    broken: opened.broken,
    migrated: opened.migrated,
    readOnly,
    onReadOnly(on) {
      readOnlyListeners.add(on);
      return () => readOnlyListeners.delete(on);
    },
    saveState: saving.state,
    onSaveState: saving.onState,
    flush: saving.flush,
    addImage(bytes) {
      const extension = imageExtension(bytes);
      if (!extension) return null;
      const row = imageRow(id, bytes, extension);
      saving.addImage(row);
      return row.hash;
    },
    async image(hash) {
      return (saving.image(hash) ?? (await storedImage(hash)))?.blob ?? null;
    },
    writeFile: () => writtenFile('whole'),
    writeCrewFile: () => writtenFile('crew'),
    async copySaved(file) {
      if (!inMemory) await noteCopy(keep, id, { fileName: file.fileName, seq: file.seq });
    },
    quarantine,
    async close(dropUnsaved = false) {
      await saving.flush();
      const state = saving.state();
      if (closed || (state.at === 'notSaved' && !dropUnsaved)) return state;
      closed = true;
      saving.stop();
      lock?.release();
      news.close();
      document.removeEventListener('visibilitychange', onHide);
      window.removeEventListener('pagehide', onHide);
      window.removeEventListener('beforeunload', onLeave);
      return state;
    },
  };
}

/** The same store, deaf to this tab's own changes while it may only read. */
function guarded(store: PlanStore, readOnly: () => ReadOnly): PlanStore {
  return {
    ...store,
    commit(label, cells, origin = 'local') {
      const why = readOnly();
      if (why && origin === 'local') throw new RefusedChange(cells[0]?.[0] ?? 'job:', why);
      return store.commit(label, cells, origin);
    },
    undo: () => (readOnly() ? null : store.undo()),
    redo: () => (readOnly() ? null : store.redo()),
  };
}
