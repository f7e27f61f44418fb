import type { Keep, LeaseRow } from './database.ts';

/**
 * One tab writes a job, every other one reads it. The browser's own locks say who; on plain http pages there are none,
 * and a lease in the database stands in: renewed every second, and looked at again inside every write, so that a tab
 * that slept past its lease cannot write over another.
 */
export interface WriteLock {
  held(): boolean;
  /** What a write must find in the database; null where the browser's lock guards it. */
  readonly leaseHolder: string | null;
  release(): void;
}

export interface LockEvents {
  /** The lock came to us after a wait. */
  readonly onHeld: () => void;
  /** Another tab took it while this one slept. */
  readonly onLost: () => void;
}

export const BEAT_MS = 1000;
export const LEASE_MS = 4000;

export function takeWriteLock(keep: Keep, job: string, events: LockEvents): Promise<WriteLock> {
  return keep.locks ? takeBrowserLock(keep.locks, `${keep.name}/${job}`, events) : takeLease(keep, job, events);
}

async function takeBrowserLock(locks: LockManager, name: string, { onHeld }: LockEvents): Promise<WriteLock> {
  const waiting = new AbortController();
  let held = false;
  let letGo: (() => void) | null = null;
  const hold = (): Promise<void> => {
    held = true;
    return new Promise((resolve) => {
      letGo = resolve;
    });
  };
  await new Promise<void>((answered) => {
    void locks.request(name, { ifAvailable: true }, (lock) => {
      const holding = lock ? hold() : undefined;
      answered();
      return holding;
    });
  });
  if (!held) {
    const queued = locks.request(name, { signal: waiting.signal }, () => {
      const holding = hold();
      onHeld();
      return holding;
    });
    // Only an abort ends up here: the job was closed while it waited.
    queued.catch(() => undefined);
  }
  return {
    held: () => held,
    leaseHolder: null,
    release() {
      held = false;
      waiting.abort();
      letGo?.();
    },
  };
}

/** True while another tab's lease keeps us out. One too long to be true (a clock set back) does not. */
export function keepsOut(lease: LeaseRow | undefined, holder: string, now: number): boolean {
  return lease !== undefined && lease.holder !== holder && lease.until > now && lease.until <= now + LEASE_MS;
}

/** Takes or renews the lease; false while another tab's stands. */
async function tryLease(keep: Keep, job: string, holder: string): Promise<boolean> {
  const db = await keep.database();
  const tx = db.transaction('leases', 'readwrite');
  const now = keep.now();
  const ours = !keepsOut(await tx.store.get(job), holder, now);
  if (ours) await tx.store.put({ job, holder, until: now + LEASE_MS });
  await tx.done;
  return ours;
}

async function dropLease(keep: Keep, job: string, holder: string): Promise<void> {
  const db = await keep.database();
  const tx = db.transaction('leases', 'readwrite');
  if ((await tx.store.get(job))?.holder === holder) await tx.store.delete(job);
  await tx.done;
}

async function takeLease(keep: Keep, job: string, { onHeld, onLost }: LockEvents): Promise<WriteLock> {
  const holder = keep.newId('tab');
  const channel = new BroadcastChannel(`${keep.name}/leases`);
  let released = false;
  // On a full disk no lease can be written; the writes themselves will say so, and look at the lease again.
  let held = await tryLease(keep, job, holder).catch(() => true);

  const beat = async (): Promise<void> => {
    if (released) return;
    const now = await tryLease(keep, job, holder).catch(() => held);
    if (released || now === held) return;
    held = now;
    if (now) onHeld();
    else onLost();
  };
  const timer = setInterval(() => void beat(), BEAT_MS);
  channel.addEventListener('message', (event: MessageEvent<unknown>) => {
    if (event.data === job) void beat();
  });

  const giveBack = async (): Promise<void> => {
    if (!held) return;
    held = false;
    await dropLease(keep, job, holder).catch(() => undefined);
    channel.postMessage(job);
  };
  const onPageHide = (): void => void giveBack();
  // A page that comes back from the back-and-forward store asks again with its next beat.
  window.addEventListener('pagehide', onPageHide);
  return {
    held: () => held,
    leaseHolder: holder,
    release() {
      if (released) return;
      released = true;
      clearInterval(timer);
      window.removeEventListener('pagehide', onPageHide);
      void giveBack().finally(() => channel.close());
    },
  };
}
