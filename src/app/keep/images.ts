import { IMAGE_TYPES, type ImageExtension, type ImageFile, type Images } from '../../exchange/jobFile.ts';
import { sha256Hex } from '../../exchange/sha256.ts';
import type { ImageRow, Keep } from './database.ts';

/** The kinds of picture that a page or a photograph may be, by what the file itself says. */
export function imageExtension(bytes: Uint8Array): ImageExtension | null {
  const starts = (...head: number[]): boolean => head.every((byte, index) => bytes[index] === byte);
  if (starts(0x89, 0x50, 0x4e, 0x47)) return 'png';
  if (starts(0xff, 0xd8, 0xff)) return 'jpg';
  const letters = String.fromCharCode(...bytes.subarray(0, 4), ...bytes.subarray(8, 12));
  return letters === 'RIFFWEBP' ? 'webp' : null;
}

export function imageRow(job: string, bytes: Uint8Array, extension: ImageExtension, hash = sha256Hex(bytes)): ImageRow {
  // A copy of its own: the caller's buffer may be part of a larger file.
  const blob = new Blob([new Uint8Array(bytes)], { type: IMAGE_TYPES[extension] });
  return { job, hash, extension, blob };
}

export async function imageFile(row: ImageRow): Promise<ImageFile> {
  return { bytes: new Uint8Array(await row.blob.arrayBuffer()), extension: row.extension };
}

function allOf(job: string): IDBKeyRange {
  return IDBKeyRange.bound([job], [job, []]);
}

export async function imageRows(keep: Keep, job: string): Promise<ImageRow[]> {
  const db = await keep.database();
  return db.getAll('images', allOf(job));
}

export async function imagesOf(keep: Keep, job: string): Promise<Images> {
  const rows = await imageRows(keep, job);
  return new Map(await Promise.all(rows.map(async (row) => [row.hash, await imageFile(row)] as const)));
}
