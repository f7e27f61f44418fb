import type { Change } from '../../model/cell.ts';
import type { ImageRow, Keep } from './database.ts';
import { writeChanges, type WholeJob } from './jobRows.ts';
import { saveFaultOf, TakenOver, type SaveState } from './saveFault.ts';

/**
 * Takes changes into the database as they are made. A write starts at once; what comes while it runs goes with the
 * next one, so nothing waits on a timer and a killed tab risks only the transaction that is under way. 'saved' is said
 * when that is complete. What cannot be written stays here and is tried again.
 */
export interface Autosave {
  add(change: Change): void;
  addImage(image: ImageRow): void;
  image(hash: string): ImageRow | null;
  /** Writes the whole job anew with the next write. */
  takeSnapshot(): void;
  /** Resolves when all that is waiting has been written, or has failed once. */
  flush(): Promise<void>;
  state(): SaveState;
  onState(on: (state: SaveState) => void): () => void;
  waiting(): readonly Change[];
  stop(): void;
}

export interface AutosaveSetup {
  readonly keep: Keep;
  readonly id: string;
  readonly whole: () => WholeJob;
  readonly mayWrite: () => boolean;
  readonly leaseHolder: () => string | null;
  readonly onWritten: (seq: number) => void;
}

const FIRST_RETRY_MS = 1000;
const LAST_RETRY_MS = 30_000;

export function autosave(setup: AutosaveSetup): Autosave {
  const { keep, id } = setup;
  const listeners = new Set<(state: SaveState) => void>();
  const images = new Map<string, ImageRow>();
  let changes: Change[] = [];
  let snapshot = false;
  let state: SaveState = { at: 'saved' };
  let running: Promise<void> | null = null;
  let retryMs = FIRST_RETRY_MS;
  let timer: ReturnType<typeof setTimeout> | null = null;
  let stopped = false;

  const isIdle = (): boolean => changes.length === 0 && images.size === 0 && !snapshot;

  function become(next: SaveState): void {
    state = next;
    for (const on of listeners) on(next);
  }

  /** Images first: a page in the plan without its scan would be a loss, a scan without its page is only room. */
  async function writeImage(image: ImageRow): Promise<void> {
    const db = await keep.database();
    const tx = db.transaction('images', 'readwrite', { durability: 'strict' });
    await Promise.all([tx.store.put(image), tx.done]);
    images.delete(image.hash);
  }

  async function writeWaiting(): Promise<void> {
    const written = await Promise.allSettled([...images.values()].map(writeImage));
    const batch = [...changes];
    const withSnapshot = snapshot;
    if (batch.length > 0 || withSnapshot) {
      const seq = await writeChanges(keep, {
        id,
        changes: batch,
        whole: setup.whole(),
        snapshot: withSnapshot,
        leaseHolder: setup.leaseHolder(),
      });
      changes = changes.slice(batch.length);
      snapshot = snapshot && !withSnapshot;
      setup.onWritten(seq);
    }
    const failed = written.find((answer) => answer.status === 'rejected');
    if (failed) throw failed.reason;
  }

  async function run(): Promise<void> {
    // Changes of the same moment go in one transaction.
    await Promise.resolve();
    try {
      await writeWaiting();
      retryMs = FIRST_RETRY_MS;
      become({ at: isIdle() ? 'saved' : 'saving' });
    } catch (error) {
      becomeNotSaved(error);
      retryLater();
    }
  }

  function becomeNotSaved(error: unknown): void {
    const what = error instanceof Error ? error.message : String(error);
    become({ at: 'notSaved', fault: saveFaultOf(error), what, waiting: changes.length + images.size });
  }

  function retryLater(): void {
    if (stopped || timer) return;
    timer = setTimeout(() => {
      timer = null;
      void flush();
    }, retryMs);
    retryMs = Math.min(retryMs * 2, LAST_RETRY_MS);
  }

  function flush(): Promise<void> {
    if (isIdle()) return running ?? Promise.resolve();
    if (!setup.mayWrite()) {
      // Pictures of a job that may only be read wait for nobody.
      if (changes.length > 0) becomeNotSaved(new TakenOver());
      return Promise.resolve();
    }
    running ??= run().finally(() => {
      running = null;
    });
    // What came while it ran goes next; what failed waits for its turn.
    return running.then(() => (isIdle() || state.at === 'notSaved' || stopped ? undefined : flush()));
  }

  function wake(): void {
    // A failure stays said until a write has gone through.
    if (state.at === 'saved') become({ at: 'saving' });
    void flush();
  }

  return {
    add(change) {
      changes.push(change);
      wake();
    },
    addImage(image) {
      images.set(image.hash, image);
      wake();
    },
    image: (hash) => images.get(hash) ?? null,
    takeSnapshot() {
      snapshot = true;
      wake();
    },
    flush,
    state: () => state,
    onState(on) {
      listeners.add(on);
      return () => listeners.delete(on);
    },
    waiting: () => changes,
    stop() {
      stopped = true;
      if (timer) clearTimeout(timer);
      timer = null;
    },
  };
}
