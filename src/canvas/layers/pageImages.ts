/**
 * Page images by hash, ready to be drawn. A large scan is kept in half-size levels: far out a small one is
 * drawn, so that no frame has to shrink fifty megapixels.
 */
export interface PageImage {
  /** Finest first; each half as wide as the one before. */
  readonly levels: readonly ImageBitmap[];
  readonly widthPx: number;
  readonly heightPx: number;
}

export interface PageImages {
  /** null while it is being read, or when it cannot be. */
  get(hash: string): PageImage | null;
  /** Tells that an image has come. */
  listen(on: () => void): () => void;
  close(): void;
}

const LEVELS_FROM_PX = 16_000_000;
const SMALLEST_LEVEL_PX = 1_000_000;

async function levelsOf(blob: Blob): Promise<PageImage> {
  const whole = await createImageBitmap(blob);
  const levels = [whole];
  let last = whole;
  if (whole.width * whole.height <= LEVELS_FROM_PX) return { levels, widthPx: whole.width, heightPx: whole.height };
  while (last.width * last.height > SMALLEST_LEVEL_PX) {
    // One after the other: each level is made from the one before it.
    // oxlint-disable-next-line no-await-in-loop
    last = await createImageBitmap(last, {
      resizeWidth: Math.max(1, Math.round(last.width / 2)),
      resizeHeight: Math.max(1, Math.round(last.height / 2)),
      resizeQuality: 'medium',
    });
    levels.push(last);
  }
  return { levels, widthPx: whole.width, heightPx: whole.height };
}

export function pageImages(load: (hash: string) => Promise<Blob | null>): PageImages {
  const images = new Map<string, PageImage | null>();
  const listeners = new Set<() => void>();
  let closed = false;
  const read = async (hash: string): Promise<void> => {
    try {
      const blob = await load(hash);
      const image = blob ? await levelsOf(blob) : null;
      if (closed) {
        for (const level of image?.levels ?? []) level.close();
        return;
      }
      images.set(hash, image);
      for (const on of listeners) on();
    } catch {
      // An image that cannot be read stays undrawn; opening the job has already said so.
    }
  };
  return {
    get(hash) {
      const known = images.get(hash);
      if (known !== undefined) return known;
      images.set(hash, null);
      void read(hash);
      return null;
    },
    listen(on) {
      listeners.add(on);
      return () => listeners.delete(on);
    },
    close() {
      closed = true;
      for (const image of images.values()) for (const level of image?.levels ?? []) level.close();
      images.clear();
      listeners.clear();
    },
  };
}

/** The coarsest level that is still at least as fine as the screen. */
export function levelFor(image: PageImage, screenPxPerImagePx: number): ImageBitmap | null {
  return image.levels.findLast((level) => level.width / image.widthPx >= screenPxPerImagePx) ?? image.levels[0] ?? null;
}
