import { strFromU8, strToU8, unzipSync, zipSync, type Zippable } from 'fflate';
import type { Doc } from '../model/doc.ts';
import { HEAD, openEnvelope, writeEnvelope, type EnvelopeFault, type Head, type Opened } from '../model/envelope.ts';
import { recordsOf } from '../model/doc.ts';
import type { Quarantine } from '../model/store.ts';
import { sha256Hex } from './sha256.ts';

/** A `.slabtooth` file: a ZIP with `job.json` and `images/<sha256>.<ext>`. docs/file-format.md tells it field by field. */
export const IMAGE_TYPES = { png: 'image/png', jpg: 'image/jpeg', webp: 'image/webp' } as const;
export type ImageExtension = keyof typeof IMAGE_TYPES;

export interface ImageFile {
  readonly bytes: Uint8Array;
  readonly extension: ImageExtension;
}
/** By SHA-256 in hex, as pages and photos name them. */
export type Images = ReadonlyMap<string, ImageFile>;

/** What was not quite right with a file that opened all the same. */
export interface FileReport {
  readonly code:
    /** The bytes are not those that were saved. Kept, under the name that the plan knows. */
    | 'imageHashMismatch'
    | 'imageUnreadable'
    /** A page or photo names an image that is not in the file. */
    | 'imageMissing'
    /** Something that we did not put there. */
    | 'strangeEntry';
  readonly what: string;
}
export type JobFileFault = 'notAZip' | 'noJobJson' | 'brokenJson' | 'tooLarge' | 'tooManyEntries' | EnvelopeFault;
export type ReadJobFile =
  | { readonly ok: true; readonly opened: Opened; readonly images: Images; readonly reports: readonly FileReport[] }
  | { readonly ok: false; readonly fault: JobFileFault; readonly what: string };

/** What a file may unpack to: an honest job is far below, a packing trick far above. */
export const LIMITS = { jobJsonBytes: 128e6, imageBytes: 400e6, allBytes: 1.5e9, entries: 2000 } as const;

const JOB_JSON = 'job.json';
const IMAGE_NAME = /^images\/([0-9a-f]{64})\.(png|jpg|webp)$/;

type Fault = Extract<ReadJobFile, { ok: false }>;
function fail(fault: JobFileFault, what = ''): Fault {
  return { ok: false, fault, what };
}

interface Entry {
  readonly name: string;
  readonly bytes: number;
}

/** What is in the file, by its own list, without unpacking anything; null when it is no ZIP. */
function listEntries(file: Uint8Array): Entry[] | null {
  const entries: Entry[] = [];
  try {
    unzipSync(file, {
      filter: ({ name, originalSize }) => {
        entries.push({ name, bytes: originalSize });
        return false;
      },
    });
  } catch {
    return null;
  }
  return entries;
}

function unpack(file: Uint8Array, name: string): Uint8Array | null {
  try {
    return unzipSync(file, { filter: (entry) => entry.name === name })[name] ?? null;
  } catch {
    return null;
  }
}

function overLimit(entries: readonly Entry[]): Fault | null {
  if (entries.length > LIMITS.entries) return fail('tooManyEntries', String(entries.length));
  const large = entries.find(
    ({ name, bytes }) => bytes > (name === JOB_JSON ? LIMITS.jobJsonBytes : LIMITS.imageBytes),
  );
  if (large) return fail('tooLarge', large.name);
  const all = entries.reduce((sum, { bytes }) => sum + bytes, 0);
  return all > LIMITS.allBytes ? fail('tooLarge', 'all together') : null;
}

function readImages(file: Uint8Array, entries: readonly Entry[], reports: FileReport[]): Map<string, ImageFile> {
  const images = new Map<string, ImageFile>();
  for (const { name } of entries) {
    if (name === JOB_JSON || name.endsWith('/')) continue;
    const [, hash = '', extension = ''] = IMAGE_NAME.exec(name) ?? [];
    if (hash === '') {
      reports.push({ code: 'strangeEntry', what: name });
      continue;
    }
    const bytes = unpack(file, name);
    if (!bytes) {
      reports.push({ code: 'imageUnreadable', what: name });
      continue;
    }
    if (sha256Hex(bytes) !== hash) reports.push({ code: 'imageHashMismatch', what: name });
    images.set(hash, { bytes, extension: extension as ImageExtension });
  }
  return images;
}

/** Hashes of the images that a plan shows. */
export function imagesNamed(doc: Doc): Set<string> {
  return new Set([...recordsOf(doc, 'page'), ...recordsOf(doc, 'photo')].map(({ image }) => image));
}

/** Opens the bytes of a `.slabtooth` file. Bad files are answered with a code for a sentence; nothing throws. */
export function readJobFile(file: Uint8Array): ReadJobFile {
  const entries = listEntries(file);
  if (!entries) return fail('notAZip');
  const tooMuch = overLimit(entries);
  if (tooMuch) return tooMuch;
  if (!entries.some(({ name }) => name === JOB_JSON)) return fail('noJobJson');
  const text = unpack(file, JOB_JSON);
  if (!text) return fail('brokenJson');
  let json: unknown;
  try {
    json = JSON.parse(strFromU8(text));
  } catch (error) {
    return fail('brokenJson', error instanceof Error ? error.message : '');
  }
  const opened = openEnvelope(json);
  if (!opened.ok) return fail(opened.fault, opened.what);

  const reports: FileReport[] = [];
  const images = readImages(file, entries, reports);
  for (const hash of imagesNamed(opened.doc)) {
    if (!images.has(hash)) reports.push({ code: 'imageMissing', what: hash });
  }
  return { ok: true, opened, images, reports };
}

/** ZIP wants a date; the plan's own dates are in the plan. Always the same one: the same job gives the same bytes. */
const NO_DATE = new Date(1980, 0, 1);

/** The bytes of a `.slabtooth` file. Images are stored as they are: they are packed already. */
export function writeJobFile(doc: Doc, quarantine: Quarantine, images: Images, head: Head = HEAD): Uint8Array {
  const entries: Zippable = { [JOB_JSON]: [strToU8(writeEnvelope(doc, quarantine, head)), { level: 6 }] };
  const sorted = [...images].toSorted(([a], [b]) => (a < b ? -1 : 1));
  for (const [hash, { bytes, extension }] of sorted) entries[`images/${hash}.${extension}`] = [bytes, { level: 0 }];
  return zipSync(entries, { mtime: NO_DATE });
}
