import { useLayoutEffect, useMemo, useState, type RefObject } from 'react';
import type Konva from 'konva/lib/Core.js';
import { toScreen, type Camera, type View } from '../camera.ts';
import type { Drawing } from './drawPrims.ts';

/** A floor of so many items is moved as one picture while a pan or zoom runs, and drawn when it rests. */
export const SNAPSHOT_FROM_ITEMS = 3000;

/** Where the eye stands. */
export interface Eye {
  readonly camera: Camera;
  readonly view: View;
}

interface Snapshot extends Eye {
  readonly picture: HTMLCanvasElement;
}

function takeSnapshot(stage: Konva.Stage, { camera, view }: Eye): Snapshot {
  const picture = document.createElement('canvas');
  const first = stage.getLayers()[0]?.getNativeCanvasElement();
  picture.width = first?.width ?? 1;
  picture.height = first?.height ?? 1;
  const context = picture.getContext('2d');
  // The top layer belongs to the hand and is drawn live.
  for (const layer of stage.getLayers().slice(0, -1)) context?.drawImage(layer.getNativeCanvasElement(), 0, 0);
  return { picture, camera, view };
}

function blit({ context, camera, view }: Drawing, snapshot: Snapshot): void {
  const [x, y] = toScreen(camera, view, snapshot.camera.middle);
  const scale = camera.pxPerMm / snapshot.camera.pxPerMm;
  context.save();
  context.translate(x, y);
  context.rotate(((camera.turnDeg - snapshot.camera.turnDeg) * Math.PI) / 180);
  context.scale(scale, scale);
  context.drawImage(
    snapshot.picture,
    -snapshot.view.widthPx / 2,
    -snapshot.view.heightPx / 2,
    snapshot.view.widthPx,
    snapshot.view.heightPx,
  );
  context.restore();
}

/**
 * Draws the picture that is moved instead of the floor, or null: the floor is small, or rests. Taken when the gesture
 * begins, before konva draws its first frame: the canvases then still hold the last rest.
 */
export function useGestureSnapshot(
  stage: RefObject<Konva.Stage | null>,
  wanted: boolean,
  rested: Eye,
): ((drawing: Drawing) => void) | null {
  const [snapshot, setSnapshot] = useState<Snapshot | null>(null);
  useLayoutEffect(() => {
    setSnapshot(wanted && stage.current ? takeSnapshot(stage.current, rested) : null);
    // What rests does not change while a gesture runs, and outside one nothing is taken.
  }, [stage, wanted, rested]);
  return useMemo(() => (wanted && snapshot ? (drawing: Drawing) => blit(drawing, snapshot) : null), [wanted, snapshot]);
}
