import { useCallback, useEffect, useMemo, useState, type ReactElement } from 'react';
import { Layer } from 'react-konva/lib/ReactKonvaCore.js';
import { seenBox } from '../camera.ts';
import { painted } from '../paint/kept.ts';
import { PAINT_ORDER, paintFloor, paintTags, type PaintedFloor, type Showing } from '../paint/paintFloor.ts';
import type { PxBox } from '../paint/plateGrid.ts';
import type { PlanView } from '../paint/view.ts';
import { ClassShape } from './ClassShape.tsx';
import { drawPainted, type Drawing } from './drawPrims.ts';
import type { FloorLayersProps } from './FloorLayers.ts';
import { PaintedLayer } from './PaintedLayer.tsx';

type Eye = Pick<Drawing, 'camera' | 'view'>;

const PAGE = PAINT_ORDER.slice(0, 1);
const FLOOR = PAINT_ORDER.slice(1, 5);
const MARKS = PAINT_ORDER.slice(5, -1);

/** Where the camera stood when it last rested. */
function useRested({ camera, view }: Eye, moving: boolean): Eye {
  const [rested, setRested] = useState<Eye>({ camera, view });
  useEffect(() => {
    if (!moving) setRested({ camera, view });
  }, [camera, view, moving]);
  return useMemo(() => (moving ? rested : { camera, view }), [camera, view, moving, rested]);
}

/** Scale bar and north stand in a strip of their own, px. */
const SCALE_STRIP_PX = 46;

/** What is seen, in px about the floor's origin: plates stay within it. Null on a turned plan. */
function useSeen({ camera, view }: Eye): PxBox | null {
  return useMemo(() => {
    if (camera.turnDeg !== 0) return null;
    const { minX, minY, maxX, maxY } = seenBox(camera, view);
    const px = camera.pxPerMm;
    return { minX: minX * px, minY: minY * px, maxX: maxX * px, maxY: maxY * px - SCALE_STRIP_PX };
  }, [camera, view]);
}

/** Prims of the floor. While a gesture runs, plates keep the places that the last rest has given them. */
function useFloor(plan: PlanView, showing: Showing, pxPerMm: number, rested: Eye): PaintedFloor {
  const restPxPerMm = rested.camera.pxPerMm;
  const within = useSeen(rested);
  const tags = useMemo(
    () =>
      paintTags(plan, { pxPerMm: restPxPerMm, picked: false, print: false }, within ? { ...showing, within } : showing),
    [plan, restPxPerMm, showing, within],
  );
  const bare = useMemo(
    () => paintFloor(plan, { pxPerMm, picked: false, print: false }, { ...showing, tags: false }),
    [plan, pxPerMm, showing],
  );
  return useMemo(() => ({ ...bare, tags }), [bare, tags]);
}

/** A floor that can be drawn anew in every frame: four konva layers, of which pointer moves touch only the top one. */
export function DrawnFloor({ plan, showing, drawing, moving, hand, drawGlass }: FloorLayersProps): ReactElement {
  const rested = useRested(drawing, moving);
  const floor = useFloor(plan, showing, drawing.camera.pxPerMm, rested);
  const drawHand = useCallback(
    (lent: Drawing) => drawPainted(lent, [...floor.picked, painted('hand', hand)]),
    [floor.picked, hand],
  );
  const above = <ClassShape name="glass" drawing={drawing} draw={drawGlass} />;
  return (
    <>
      <PaintedLayer classes={PAGE} floor={floor} drawing={drawing} />
      <PaintedLayer classes={FLOOR} floor={floor} drawing={drawing} />
      <PaintedLayer classes={MARKS} floor={floor} drawing={drawing} above={above} />
      <Layer listening={false}>
        <ClassShape name="hand" drawing={drawing} draw={drawHand} />
      </Layer>
    </>
  );
}
