import type { Cell } from '../../model/cell.ts';
import { applyCells, recordsOf } from '../../model/doc.ts';
import { differenceOf } from '../../model/difference.ts';
import type { Head, Opened } from '../../model/envelope.ts';
import type { BrokenLink } from '../../model/integrity.ts';
import { planStore, type PlanStore, type Quarantine } from '../../model/store.ts';
import { writeCrewCopy } from '../../exchange/crewCopy.ts';
import { imagesNamed, writeJobFile, type Images } from '../../exchange/jobFile.ts';
import { autosave } from './autosave.ts';
import { fileNameFor, noteCopy } from './copies.ts';
import type { Keep } from './database.ts';
import { guardedStore, type ReadOnly } from './guardedStore.ts';
import { imageRow } from './images.ts';
import { jobPictures } from './jobPictures.ts';
import { loadJob, type LoadFault } from './loadJob.ts';
import { watchPageLife } from './pageLife.ts';
import type { SaveState } from './saveFault.ts';
import { takeWriteLock, type WriteLock } from './writeLock.ts';

/**
 * A job on the screen. Changes committed to `store` are in the database as soon as a transaction can be; a second tab
 * follows what the first one writes, refuses changes of its own, and may write when the first one is closed.
 *
 *   const answer = await openJob(keep, id);
 *   if (answer.ok) answer.job.store.commit(...)
 */
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
   * Closes the job when all of it is in the database or in a file, and answers true. Else it stays open and answers
   * false, so that the person can save a file first; `dropUnsaved` closes it all the same.
   */
  close(dropUnsaved?: boolean): Promise<boolean>;
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

/**
 * A job that the database did not take, or that has none (see `keepNothing`): its edits stay in memory until they are
 * saved as a file. Where there is a database, the job goes into it as soon as there is room. `fromFile` are the pictures
 * of the file it was read from, which holds all of it; null for a job that is nowhere else.
 */
export function jobInMemory(keep: Keep, id: string, opened: Opened, fromFile: Images | null = null): Promise<KeptJob> {
  return keptJob(keep, id, opened, 0, 0, { fromFile });
}

async function keptJob(
  keep: Keep,
  id: string,
  opened: Opened,
  tick: number,
  startSeq: number,
  unkept: { readonly fromFile: Images | null } | null = null,
): Promise<KeptJob> {
  const hasDatabase = keep.name !== '';
  const store = planStore({ doc: opened.doc, quarantine: opened.quarantine, device: keep.device, tick });
  const readOnlyListeners = new Set<(why: ReadOnly) => void>();
  const news = new BroadcastChannel(`${keep.name}/written`);
  let lock: WriteLock | null = null;
  let writing = false;
  let catchingUp = false;
  let closed = false;
  let seq = startSeq;
  let aside = opened.quarantine;
  let seqInFile = unkept?.fromFile ? 0 : -1;
  let catchingUpDone = Promise.resolve();

  const quarantine = (): Quarantine => new Map([...aside, ...store.quarantine()]);
  /** Number of the last change, those that wait among them. */
  const lastSeq = (): number => seq + saving.waiting().length;
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

  if (!hasDatabase) writing = true;
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
  if (unkept && !opened.readOnly) saving.takeSnapshot();
  for (const [hash, { bytes, extension }] of unkept?.fromFile ?? [])
    saving.addImage(imageRow(id, bytes, extension, hash));

  store.onChange((change) => {
    if (!catchingUp && !opened.readOnly) saving.add(change);
  });
  news.addEventListener('message', (event: MessageEvent<unknown>) => {
    if (event.data === id && !writing) void catchUp();
  });

  const pictures = jobPictures(hasDatabase ? keep : null, id, saving);
  const stopWatching = watchPageLife({ onHide: () => void saving.flush(), wouldLose });

  function wouldLose(): boolean {
    return saving.state().at === 'notSaved' && lastSeq() > seqInFile;
  }

  async function writtenFile(copy: 'whole' | 'crew'): Promise<WrittenFile> {
    const at = lastSeq();
    const doc = store.getState();
    const images = await pictures.all(imagesNamed(doc));
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
    store: guardedStore(store, readOnly),
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
    addImage: pictures.add,
    image: pictures.blob,
    writeFile: () => writtenFile('whole'),
    writeCrewFile: () => writtenFile('crew'),
    async copySaved(file) {
      seqInFile = Math.max(seqInFile, file.seq);
      if (!hasDatabase) return;
      // The file is there: that a full disk keeps the job list from knowing it is no loss.
      await noteCopy(keep, id, { fileName: file.fileName, seq: file.seq }).catch(() => undefined);
    },
    quarantine,
    async close(dropUnsaved = false) {
      await saving.flush();
      if (closed) return true;
      if (wouldLose() && !dropUnsaved) return false;
      closed = true;
      saving.stop();
      lock?.release();
      news.close();
      stopWatching();
      return true;
    },
  };
}
