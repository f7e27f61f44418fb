import { useEffect, useState } from 'react';
import { pictureSteps, type FloorPicture, type PictureOf } from './floorPicture.ts';

/** The page is not held up longer than this at a time. */
const STEP_MS = 8;
/** A plan that changes under the hand is drawn when the hand rests. */
const REST_MS = 180;

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
    let timer = setTimeout(begin, isFirst ? 0 : REST_MS);
    function begin(): void {
      const steps = pictureSteps({ plan, showing, drawing, sharpness });
      const goOn = (): void => {
        const untilMs = performance.now() + STEP_MS;
        let step = steps.next();
        while (!step.done && performance.now() < untilMs) step = steps.next();
        if (step.done) setPicture(step.value);
        else timer = setTimeout(goOn, 0);
      };
      goOn();
    }
    return () => clearTimeout(timer);
  }, [plan, showing, drawing, sharpness, moving, isFirst]);
  return picture;
}
