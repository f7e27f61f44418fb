import { useCallback, useLayoutEffect, useMemo, useState, type ReactElement } from 'react';
import Konva from 'konva/lib/Core.js';
import { Stage } from 'react-konva/lib/ReactKonvaCore.js';
import type { Camera, View } from '../camera.ts';
import type { Showing } from '../paint/paintFloor.ts';
import { itemCount } from '../paint/planPart.ts';
import type { Prim } from '../paint/prim.ts';
import { northArrow, scaleBar } from '../paint/scaleBar.ts';
import type { PlanView } from '../paint/view.ts';
import { DrawnFloor } from './DrawnFloor.tsx';
import { drawOnGlass, type Drawing } from './drawPrims.ts';
import { PicturedFloor } from './PicturedFloor.tsx';
import type { PageImages } from './pageImages.ts';
import css from './PlanStage.module.css';
import { useDrawing } from './useDrawing.ts';

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

/** A floor of so many items is shown as a picture that is drawn aside. */
const PICTURED_FROM_ITEMS = 3000;

/** The plan on the screen. */
export function PlanStage(props: PlanStageProps): ReactElement {
  const { plan, showing, camera, hand, images, scale, moving, onElement, onSize } = props;
  const [element, setElement] = useState<HTMLDivElement | null>(null);
  const wrapper = useCallback(
    (now: HTMLDivElement | null) => {
      setElement(now);
      onElement?.(now);
    },
    [onElement],
  );
  const view = useSize(element, onSize);
  const drawing = useDrawing(element, camera, view, images);
  const northDeg = plan.floor?.northDeg;
  const glass = useMemo(() => glassPrims(scale, camera, view, northDeg), [scale, camera, view, northDeg]);
  const drawGlass = useCallback((lent: Drawing) => drawOnGlass(lent, glass), [glass]);
  const Floor = itemCount(plan) >= PICTURED_FROM_ITEMS ? PicturedFloor : DrawnFloor;
  return (
    <div ref={wrapper} className={css.stage} aria-hidden="true">
      {view.widthPx > 0 && view.heightPx > 0 && (
        <Stage width={view.widthPx} height={view.heightPx} listening={false}>
          <Floor plan={plan} showing={showing} drawing={drawing} moving={moving} hand={hand} drawGlass={drawGlass} />
        </Stage>
      )}
    </div>
  );
}
