import { useCallback, useEffect, useLayoutEffect, useMemo, useRef, useState, type ReactElement } from 'react';
import Konva from 'konva/lib/Core.js';
import { Layer, Stage } from 'react-konva/lib/ReactKonvaCore.js';
import { seenBox, type Camera, type View } from '../camera.ts';
import { painted } from '../paint/kept.ts';
import { PAINT_ORDER, paintFloor, paintTags, type PaintedFloor, type Showing } from '../paint/paintFloor.ts';
import type { Prim } from '../paint/prim.ts';
import type { PxBox } from '../paint/plateGrid.ts';
import { northArrow, scaleBar } from '../paint/scaleBar.ts';
import type { PlanView } from '../paint/view.ts';
import { ClassShape } from './ClassShape.tsx';
import { drawOnGlass, drawPainted, type Drawing } from './drawPrims.ts';
import { PaintedLayer } from './PaintedLayer.tsx';
import type { PageImages } from './pageImages.ts';
import css from './PlanStage.module.css';
import { useDrawing } from './useDrawing.ts';
import { SNAPSHOT_FROM_ITEMS, useGestureSnapshot, type Eye } from './useGestureSnapshot.ts';

// More pixels than this are not seen, but cost frames on tablets.
const MOST_PIXEL_RATIO = 2;
Konva.pixelRatio = Math.min(MOST_PIXEL_RATIO, globalThis.devicePixelRatio || 1);

export interface PlanStageProps {
  readonly plan: PlanView;
  readonly showing: Showing;
  readonly camera: Camera;
  /** What the hand is doing: draft, live line, chalk tick, finger. Drawn again on every move, alone. */
  readonly hand: readonly Prim[];
  readonly images: PageImages | null;
  /** Scale bar and north in the lower corners. */
  readonly scale: 'metric' | 'imperial' | null;
  /** A pan or zoom gesture runs: a large floor is then moved as one picture. */
  readonly moving: boolean;
  /** The element that takes pointer events, and its size whenever that changes. */
  readonly onElement?: (element: HTMLDivElement | null) => void;
  readonly onSize?: (size: View) => void;
}

function useSize(element: HTMLDivElement | null, onSize: ((size: View) => void) | undefined): View {
  const [size, setSize] = useState<View>({ widthPx: 0, heightPx: 0 });
  useLayoutEffect(() => {
    if (!element) return;
    const measure = (): void => {
      const next = { widthPx: element.clientWidth, heightPx: element.clientHeight };
      setSize((was) => (was.widthPx === next.widthPx && was.heightPx === next.heightPx ? was : next));
      onSize?.(next);
    };
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => observer.disconnect();
  }, [element, onSize]);
  return size;
}

function glassPrims(scale: PlanStageProps['scale'], camera: Camera, view: View, northDeg: number | undefined): Prim[] {
  if (!scale) return [];
  const low = view.heightPx - 28;
  const bar = scaleBar([46, low], camera.pxPerMm, Math.min(200, view.widthPx / 3), scale);
  const north = northDeg === undefined ? [] : northArrow([view.widthPx - 36, low - 37], northDeg + camera.turnDeg);
  return [...bar, ...north];
}

/** Where the camera stood when it last rested. */
function useRested(camera: Camera, view: View, moving: boolean): Eye {
  const [rested, setRested] = useState<Eye>({ camera, view });
  useEffect(() => {
    if (!moving) setRested({ camera, view });
  }, [camera, view, moving]);
  return useMemo(() => (moving ? rested : { camera, view }), [camera, view, moving, rested]);
}

/** Scale bar and north stand in a strip of their own, px. */
const SCALE_STRIP_PX = 46;

/** What is seen, in px about the floor's origin: plates stay within it. Null on a turned plan, and on a crowded one, where it would cost frames. */
function useSeen({ camera, view }: Eye, items: number): PxBox | null {
  return useMemo(() => {
    if (camera.turnDeg !== 0 || items >= SNAPSHOT_FROM_ITEMS) return null;
    const { minX, minY, maxX, maxY } = seenBox(camera, view);
    const px = camera.pxPerMm;
    return { minX: minX * px, minY: minY * px, maxX: maxX * px, maxY: maxY * px - SCALE_STRIP_PX };
  }, [camera, view, items]);
}

/** Prims of the floor. While a gesture runs, plates keep the places that the last rest has given them. */
function useFloor(plan: PlanView, showing: Showing, pxPerMm: number, rested: Eye, within: PxBox | null): PaintedFloor {
  const restPxPerMm = rested.camera.pxPerMm;
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

/** The plan on the screen: four konva layers, of which pointer moves touch only the top one. */
export function PlanStage(props: PlanStageProps): ReactElement {
  const { plan, showing, camera, hand, images, scale, moving, onElement, onSize } = props;
  const [element, setElement] = useState<HTMLDivElement | null>(null);
  const stage = useRef<Konva.Stage | null>(null);
  const wrapper = useCallback(
    (now: HTMLDivElement | null) => {
      setElement(now);
      onElement?.(now);
    },
    [onElement],
  );
  const view = useSize(element, onSize);
  const drawing = useDrawing(element, camera, view, images);
  const rested = useRested(camera, view, moving);
  const items = plan.cracks.length + plan.joints.length + plan.findings.length + plan.obstructions.length;
  const drawSnapshot = useGestureSnapshot(stage, moving && items >= SNAPSHOT_FROM_ITEMS, rested);
  const restPx = rested.camera.pxPerMm;
  const within = useSeen(rested, items);
  const floor = useFloor(plan, showing, drawSnapshot ? restPx : camera.pxPerMm, rested, within);
  const northDeg = plan.floor?.northDeg;
  const glass = useMemo(() => glassPrims(scale, camera, view, northDeg), [scale, camera, view, northDeg]);
  const drawGlass = useCallback((lent: Drawing) => drawOnGlass(lent, glass), [glass]);
  const drawHand = useCallback(
    (lent: Drawing) => drawPainted(lent, [...floor.picked, painted('hand', hand)]),
    [floor.picked, hand],
  );
  const above = <ClassShape name="glass" drawing={drawing} draw={drawGlass} />;
  return (
    <div ref={wrapper} className={css.stage} aria-hidden="true">
      {view.widthPx > 0 && view.heightPx > 0 && (
        <Stage ref={stage} width={view.widthPx} height={view.heightPx} listening={false}>
          {drawSnapshot ? (
            <Layer listening={false}>
              <ClassShape name="snapshot" drawing={drawing} draw={drawSnapshot} />
            </Layer>
          ) : (
            [
              <PaintedLayer key="page" classes={PAGE} floor={floor} drawing={drawing} />,
              <PaintedLayer key="floor" classes={FLOOR} floor={floor} drawing={drawing} />,
              <PaintedLayer key="marks" classes={MARKS} floor={floor} drawing={drawing} above={above} />,
            ]
          )}
          <Layer listening={false}>
            <ClassShape name="hand" drawing={drawing} draw={drawHand} />
          </Layer>
        </Stage>
      )}
    </div>
  );
}

const PAGE = PAINT_ORDER.slice(0, 1);
const FLOOR = PAINT_ORDER.slice(1, 5);
const MARKS = PAINT_ORDER.slice(5, -1);
