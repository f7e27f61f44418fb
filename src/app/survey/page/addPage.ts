import type { RecordId } from '../../../model/cell.ts';
import { useKept } from '../../jobs/kept.ts';
import { floorNow, newId, run } from '../../plan.ts';
import { say, trueThe } from '../../session.ts';
import { pageText } from '../../../words/pageWords.ts';
import { ui } from '../../../words/uiWords.ts';
import { askFit } from '../fit.ts';
import { imageSize } from './imageSize.ts';

export const PAGE_TYPES = '.png,.jpg,.jpeg,.webp,image/png,image/jpeg,image/webp';
const MOST_PIXELS = 120_000_000;

interface ReadImage {
  readonly hash: string;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly name: string;
}

/** Unpacks the picture once: what a browser cannot draw is no page, whatever its name says. */
async function readImage(file: File): Promise<ReadImage | null> {
  const { job } = useKept.getState();
  if (!job) return null;
  const readOnly = job.readOnly();
  if (readOnly) {
    say(ui.readOnlyRefusal[readOnly]);
    return null;
  }
  try {
    const bytes = new Uint8Array(await file.arrayBuffer());
    const size = imageSize(bytes);
    if (!size) {
      say(pageText.wrongType(file.name));
      return null;
    }
    if (size.widthPx * size.heightPx > MOST_PIXELS) {
      say(pageText.tooLarge(Math.round((size.widthPx * size.heightPx) / 1e6)));
      return null;
    }
    const bitmap = await createImageBitmap(new Blob([bytes]));
    // The drawn size: a turned photograph is as wide as it is seen.
    const { width, height } = bitmap;
    bitmap.close();
    // The job was left while the picture was unpacked.
    if (useKept.getState().job !== job) return null;
    const hash = job.addImage(bytes);
    if (hash) return { hash, widthPx: width, heightPx: height, name: file.name };
  } catch {
    // Said below.
  }
  say(pageText.unreadable(file.name));
  return null;
}

/** Puts a picture under the plan and goes straight on to truing it. */
export async function addPage(file: File): Promise<void> {
  const floor = floorNow();
  const image = floor && (await readImage(file));
  if (!floor || !image) return;
  const id = newId('page');
  const { hash, name, widthPx, heightPx } = image;
  if (!run('placePage', { id, floor: floor.id, name, image: hash, widthPx, heightPx })) return;
  trueThe(id);
  requestAnimationFrame(askFit);
}

/** Puts a revision in the place of a page; what is drawn stays. */
export async function replacePage(page: RecordId, file: File): Promise<void> {
  const image = await readImage(file);
  if (!image) return;
  const { hash, name, widthPx, heightPx } = image;
  if (run('replacePage', { id: page, name, image: hash, widthPx, heightPx })) say(pageText.replaced(name));
}

/** The first file of a drop or a paste, when there is one. */
export function fileOf(data: DataTransfer | null): File | null {
  return data?.files[0] ?? null;
}
