import { useCallback, useEffect, useMemo, useState, type DragEvent, type ReactElement } from 'react';
import css from './PlanCanvas.module.css';
import { cx } from '../look/cx.ts';
import { toScreen, zoomedAbout, type Camera, type View } from '../../canvas/camera.ts';
import { PlanStage } from '../../canvas/layers/PlanStage.tsx';
import { chalkTick, guideLines, handPoint, tickReachPx } from '../../canvas/paint/guides.ts';
import type { Prim } from '../../canvas/paint/prim.ts';
import { planView } from '../../canvas/paint/view.ts';
import { snapWord } from '../../words/handWords.ts';
import { useKept } from '../jobs/kept.ts';
import { useFloor, useTakeoff, useUnits } from '../plan.ts';
import { useAskedSpot, useSpotTaps } from '../prep/useAskedSpot.ts';
import { useSession } from '../session.ts';
import { EmptyFloor } from './EmptyFloor.tsx';
import { toolNow, useHand } from './hand.ts';
import { addPage, fileOf } from './page/addPage.ts';
import { usePlanNotes, useShowing } from './planNotes.ts';
import { useShownDoc } from './shownDoc.ts';
import { PLAN } from './showPlan.ts';
import { useCamera } from './useCamera.ts';
import { useKeys } from './useKeys.ts';
import { usePointers } from './usePointers.ts';

/** The word of a chalk tick and its distance, below the point. */
const TICK_WORD_PX = 40;
const NO_SIZE: View = { widthPx: 0, heightPx: 0 };

/** The live line, the chalk tick where a point has met something, and under a finger its ring. */
function useHandPrims(camera: Camera, view: View): readonly Prim[] {
  const { draft, snap, finger } = useHand();
  const tool = useSession((now) => now.tool);
  return useMemo(() => {
    const prims = [...(draft?.prims ?? [])];
    const points = toolNow().finger === 'points' || (draft?.moving.length ?? 0) > 0;
    if (!snap || !points || tool === '') return prims;
    const met = snap.kind !== 'free' && snap.kind !== 'grid';
    const reason = snapWord(snap);
    if (finger) prims.push(...handPoint(snap.at, true));
    if (!met) return prims;
    const [x, y] = toScreen(camera, view, snap.at);
    const left = x + tickReachPx(reason) > view.widthPx;
    const above = finger || y + TICK_WORD_PX > view.heightPx;
    prims.push(...guideLines(snap.guides), ...chalkTick(snap.at, snap.along, { reason, above, left }));
    return prims;
  }, [draft, snap, finger, tool, camera, view]);
}

function usePaste(): void {
  useEffect(() => {
    const onPaste = (event: ClipboardEvent): void => {
      const file = fileOf(event.clipboardData);
      if (!file) return;
      event.preventDefault();
      void addPage(file);
    };
    window.addEventListener('paste', onPaste);
    return () => window.removeEventListener('paste', onPaste);
  }, []);
}

function onDrop(event: DragEvent): void {
  event.preventDefault();
  const file = fileOf(event.dataTransfer);
  if (file) void addPage(file);
}

/** The plan, and the hand on it. Screen readers get the list of items instead. */
export function PlanCanvas({ className }: { readonly className?: string | undefined }): ReactElement {
  const floor = useFloor();
  const units = useUnits();
  const stage = useSession((now) => now.stage);
  const images = useKept((now) => now.images);
  const { takeoff } = useTakeoff();
  const [element, setElement] = useState<HTMLDivElement | null>(null);
  const [view, setView] = useState<View>(NO_SIZE);
  const { camera, moving, change } = useCamera(floor?.id ?? null, view, element);
  const doc = useShownDoc();
  const notes = usePlanNotes(doc, floor?.id ?? '', takeoff, units);
  const plan = useMemo(() => planView(doc, floor?.id ?? '', notes), [doc, floor?.id, notes]);
  const onFloor = useShowing();
  const asked = useAskedSpot(plan);
  const showing = useMemo(() => ({ ...onFloor, asked }), [onFloor, asked]);
  useSpotTaps(plan);
  const hand = useHandPrims(camera, view);
  const cursor = useHand((now) => now.draft?.cursor) ?? 'default';

  // A page that is not trued has no scale, and neither has what nobody has drawn on it yet.
  const hasScale = takeoff?.blocked !== 'pageNotTrued' || plan.slabs.length > 0;
  const floorId = floor?.id ?? null;
  useEffect(() => useHand.setState({ view }), [view]);
  const zoom = useCallback(
    (factor: number) => change((now) => zoomedAbout(now, view, [view.widthPx / 2, view.heightPx / 2], factor)),
    // `change` only speaks to the session: any of them will do.
    // oxlint-disable-next-line react-hooks/exhaustive-deps
    [view, floorId],
  );
  usePointers(element, { camera, view, units, tracing: plan.pages.length > 0, change });
  useKeys(zoom, stage === 'survey' || stage === 'prep');
  usePaste();

  return (
    <div
      id={PLAN}
      className={cx(css.canvas, className)}
      style={{ cursor }}
      // Where the eye stands, for whoever drives the canvas from outside.
      data-middle={camera.middle.join()}
      data-px-per-mm={camera.pxPerMm}
      onDragOver={(event) => event.preventDefault()}
      onDrop={onDrop}
    >
      <PlanStage
        plan={plan}
        showing={showing}
        camera={camera}
        hand={hand}
        images={images}
        scale={hasScale ? units : null}
        moving={moving}
        onElement={setElement}
        onSize={setView}
      />
      {stage === 'survey' && <EmptyFloor />}
    </div>
  );
}
