import type { JobRow, Keep } from './database.ts';

/** A browser may clear its store. After so many days of edits that no file holds, the job asks for one. */
export const ASK_AFTER_DAYS = 10;
const DAY_MS = 24 * 60 * 60 * 1000;

export function asksForCopy(row: JobRow, now: number): boolean {
  return row.firstEditSinceCopyOn !== null && now - row.firstEditSinceCopyOn >= ASK_AFTER_DAYS * DAY_MS;
}

/** A file with changes up to `seq` has been saved under this name. Edits made since then still count. */
export async function noteCopy(
  keep: Keep,
  id: string,
  copy: { readonly fileName: string; readonly seq: number },
): Promise<void> {
  const db = await keep.database();
  const tx = db.transaction('jobs', 'readwrite');
  const row = await tx.store.get(id);
  if (row) {
    const now = keep.now();
    const editsSinceCopy = Math.max(0, row.seq - copy.seq);
    await tx.store.put({
      ...row,
      lastCopy: { on: now, fileName: copy.fileName },
      editsSinceCopy,
      firstEditSinceCopyOn: editsSinceCopy > 0 ? now : null,
    });
  }
  await tx.done;
}

/** A name that every file system takes; letters of any script stay. */
export function fileNameFor(jobName: string, copy: 'whole' | 'crew'): string {
  const plain = jobName
    .replaceAll(/[\p{Cc}\\/:*?"<>|]+/gu, ' ')
    .replaceAll(/\s+/g, ' ')
    .trim()
    .replace(/^\.+/, '')
    .slice(0, 80)
    .trim();
  return `${plain === '' ? 'job' : plain}${copy === 'crew' ? ' crew copy' : ''}.slabtooth`;
}
