import { useEffect, useState } from 'react';
import { pictureSteps, type FloorPicture, type PictureOf } from './floorPicture.ts';

/** The page is not held up longer than this at a time, as far as can be foreseen. */
const LOT_MS = 10;
/** Steps of the first lot, and never fewer or more than these. */
const STEPS = { first: 40, least: 4, most: 2000 } as const;
/** A plan that changes under the hand is drawn when the hand rests. */
const REST_MS = 180;

/**
 * Runs steps in lots between which the page answers the hand. What a lot costs is known only when the next one begins:
 * the browser takes the strokes down and draws them after we have returned.
 */
function inLots<T>(steps: Generator<undefined, T>, whenDone: (result: T) => void): () => void {
  let size: number = STEPS.first;
  let beganMs = Number.NaN;
  let timer = setTimeout(lot, 0);
  function lot(): void {
    const nowMs = performance.now();
    if (nowMs - beganMs > LOT_MS) size = Math.max(STEPS.least, size / 2);
    else if (!Number.isNaN(beganMs)) size = Math.min(STEPS.most, size * 1.3);
    beganMs = nowMs;
    for (let taken = 0; taken < size; taken += 1) {
      const step = steps.next();
      if (step.done) return whenDone(step.value);
      if (performance.now() - beganMs > LOT_MS) break;
    }
    timer = setTimeout(lot, 0);
  }
  return () => clearTimeout(timer);
}

/**
 * The newest picture of a floor, or null before the first. A new one is begun when what it shows has not changed for a
 * moment and the camera rests, and thrown away when either moves on.
 */
export function useFloorPicture(of: PictureOf, moving: boolean): FloorPicture | null {
  const [picture, setPicture] = useState<FloorPicture | null>(null);
  const { plan, showing, drawing, sharpness } = of;
  const isFirst = picture === null;
  useEffect(() => {
    if (moving) return;
    let stop = (): void => clearTimeout(timer);
    const timer = setTimeout(
      () => {
        stop = inLots(pictureSteps({ plan, showing, drawing, sharpness }), setPicture);
      },
      isFirst ? 0 : REST_MS,
    );
    return () => stop();
  }, [plan, showing, drawing, sharpness, moving, isFirst]);
  return picture;
}
