import { useEffect, useLayoutEffect, useRef, useState } from 'react';
import { boxOf, grownBox, type Box } from '../../geometry/box.ts';
import type { Point } from '../../geometry/floorShape.ts';
import { mapPoint } from '../../geometry/transform.ts';
import { fittedTo, FIRST_CAMERA, isSeen, pannedBy, type Camera, type View } from '../../canvas/camera.ts';
import { planIndex } from '../../canvas/planIndex.ts';
import { pageMatrix } from '../../edit/pageMap.ts';
import type { RecordId } from '../../model/cell.ts';
import { onFloor, type Doc } from '../../model/doc.ts';
import { planStoreNow } from '../plan.ts';
import { setCamera, useSession } from '../session.ts';
import { onAskToSee, onFit, type CloseUp } from './fit.ts';
import { useHand } from './hand.ts';

const MARGIN_PX = 56;
const SMALL_MARGIN_PX = 32;
const SCALE_BAR_PX = 36;
const STILL_MS = 160;
/** A point this near to the rim has no room for what stands beside it, px. */
const TAKEN_PX = 16;
/** What an empty floor shows: a two-car garage and the driveway before it, mm. */
const ROOM_TO_BEGIN: Box = { minX: 0, minY: 0, maxX: 9000, maxY: 8000 };

/** Points in sight are near enough, however small the plan is. */
const ANYHOW: CloseUp = { leastPxPerMm: 0, roomMm: 0 };

/** The box whole, above the scale bar. */
function fitted(box: Box, view: View, turnDeg = 0): Camera {
  const marginPx = Math.min(view.widthPx, view.heightPx) < 420 ? SMALL_MARGIN_PX : MARGIN_PX;
  const above = { ...view, heightPx: view.heightPx - SCALE_BAR_PX };
  return pannedBy(fittedTo(box, above, marginPx, turnDeg), 0, -SCALE_BAR_PX / 2);
}

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
export function useCamera(floor: RecordId | null, view: View, element: HTMLElement | null): CameraHold {
  const camera = useSession((now) => (floor ? now.cameras[floor] : undefined));
  const [moving, setMoving] = useState(false);
  const still = useRef<ReturnType<typeof setTimeout> | null>(null);
  const touched = useRef(false);

  // A notice that opens above the plan takes its upper part away: what the hand works on stays where it is.
  const stood = useRef<DOMRect | null>(null);
  useLayoutEffect(() => {
    const was = stood.current;
    const now = element?.getBoundingClientRect() ?? null;
    stood.current = now;
    if (!floor || !was || !now || view.widthPx === 0) return;
    const onlyTop = was.left === now.left && was.width === now.width && was.bottom === now.bottom;
    const drawing = (useHand.getState().draft?.from ?? null) !== null;
    if (!onlyTop || was.top === now.top || !(touched.current || drawing)) return;
    touched.current = true;
    const eye = useSession.getState().cameras[floor] ?? FIRST_CAMERA;
    setCamera(floor, pannedBy(eye, 0, (was.top - now.top) / 2));
  }, [element, floor, view]);

  useEffect(() => {
    if (!floor || view.widthPx === 0) return;
    const fit = (): void => {
      touched.current = false;
      const box = floorBox(planStoreNow().getState(), floor);
      setCamera(floor, fitted(box ?? ROOM_TO_BEGIN, view));
    };
    if (!touched.current) fit();
    return onFit(fit);
  }, [floor, view]);

  useEffect(() => {
    if (!floor) return;
    return onAskToSee((points, closeUp = ANYHOW) => {
      const now = useSession.getState().cameras[floor] ?? FIRST_CAMERA;
      const isNear = now.pxPerMm >= closeUp.leastPxPerMm;
      if (isNear && points.every((at) => isSeen(now, view, at, TAKEN_PX))) return;
      setCamera(floor, fitted(grownBox(boxOf(points), closeUp.roomMm), view, now.turnDeg));
    });
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
