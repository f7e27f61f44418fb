import { useEffect, useRef, useState } from 'react';
import { boxOf, type Box } from '../../geometry/box.ts';
import type { Point } from '../../geometry/floorShape.ts';
import { mapPoint } from '../../geometry/transform.ts';
import { fittedTo, FIRST_CAMERA, type Camera, type View } from '../../canvas/camera.ts';
import { planIndex } from '../../canvas/planIndex.ts';
import { pageMatrix } from '../../edit/pageMap.ts';
import type { RecordId } from '../../model/cell.ts';
import { onFloor, type Doc } from '../../model/doc.ts';
import { planStoreNow } from '../plan.ts';
import { setCamera, useSession } from '../session.ts';
import { onFit } from './fit.ts';

const MARGIN_PX = 56;
const STILL_MS = 160;

/** Everything there is to see on a floor; null when that is nothing. */
function floorBox(doc: Doc, floor: RecordId): Box | null {
  const pages = onFloor(doc, 'page', floor).filter((page) => page.hidden !== true);
  const corners = pages.flatMap((page) => {
    const { widthPx: w, heightPx: h } = page;
    const pixels: readonly Point[] = [
      [0, 0],
      [w, 0],
      [w, h],
      [0, h],
    ];
    return pixels.map((pixel) => mapPoint(pageMatrix(page), pixel));
  });
  const items = planIndex(doc, floor).items.flatMap((item) => item.shape.points);
  // What is drawn is what is worked on; the page round it is looked at until there is something.
  const points = items.length > 0 ? items : corners;
  return points.length === 0 ? null : boxOf(points);
}

interface CameraHold {
  readonly camera: Camera;
  /** A pan or zoom runs. */
  readonly moving: boolean;
  readonly change: (next: (camera: Camera) => Camera) => void;
}

/** The camera of the shown floor. It fits by itself until somebody moves it; after that only when Fit is asked. */
export function useCamera(floor: RecordId | null, view: View): CameraHold {
  const camera = useSession((now) => (floor ? now.cameras[floor] : undefined));
  const [moving, setMoving] = useState(false);
  const still = useRef<ReturnType<typeof setTimeout> | null>(null);
  const touched = useRef(false);

  useEffect(() => {
    if (!floor || view.widthPx === 0) return;
    const fit = (): void => {
      touched.current = false;
      const box = floorBox(planStoreNow().getState(), floor);
      const small = Math.min(view.widthPx, view.heightPx) < 420;
      setCamera(floor, box ? fittedTo(box, view, small ? 30 : MARGIN_PX) : FIRST_CAMERA);
    };
    if (!touched.current) fit();
    return onFit(fit);
  }, [floor, view]);

  function change(next: (camera: Camera) => Camera): void {
    if (!floor) return;
    touched.current = true;
    setCamera(floor, next(useSession.getState().cameras[floor] ?? FIRST_CAMERA));
    setMoving(true);
    if (still.current) clearTimeout(still.current);
    still.current = setTimeout(() => setMoving(false), STILL_MS);
  }
  return { camera: camera ?? FIRST_CAMERA, moving, change };
}
