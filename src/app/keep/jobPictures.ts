import type { ImageFile } from '../../exchange/jobFile.ts';
import type { Autosave } from './autosave.ts';
import type { ImageRow, Keep } from './database.ts';
import { imageExtension, imageFile, imageRow, imagesOf } from './images.ts';

/** Pictures of an open job: those that still wait to be written, then those in the database. */
export interface JobPictures {
  /** The hash of a picture that is kept from now on; null when it is no PNG, JPEG or WebP. */
  add(bytes: Uint8Array): string | null;
  blob(hash: string): Promise<Blob | null>;
  /** All that can be read, `named` among them even when they could not be written yet. */
  all(named: Iterable<string>): Promise<ReadonlyMap<string, ImageFile>>;
}

/** `keep` is null for a job that no database keeps. */
export function jobPictures(keep: Keep | null, id: string, saving: Autosave): JobPictures {
  async function stored(hash: string): Promise<ImageRow | null> {
    if (!keep) return null;
    const db = await keep.database();
    return (await db.get('images', [id, hash])) ?? null;
  }

  return {
    add(bytes) {
      const extension = imageExtension(bytes);
      if (!extension) return null;
      const row = imageRow(id, bytes, extension);
      saving.addImage(row);
      return row.hash;
    },
    async blob(hash) {
      return (saving.image(hash) ?? (await stored(hash)))?.blob ?? null;
    },
    async all(named) {
      // A file without a picture that cannot be read is better than no file.
      const files = new Map<string, ImageFile>(keep ? await imagesOf(keep, id).catch(() => []) : []);
      const waiting = [...named].flatMap((hash) => saving.image(hash) ?? []);
      const read = await Promise.all(waiting.map(async (row) => [row.hash, await imageFile(row)] as const));
      for (const [hash, file] of read) files.set(hash, file);
      return files;
    },
  };
}
