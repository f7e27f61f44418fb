import { useRef } from 'react';
import type Konva from 'konva/lib/Core.js';
import { toScreen, type Camera, type View } from '../camera.ts';
import type { Drawing } from './drawPrims.ts';

/** A floor of so many items is moved as one picture while a pan or zoom runs, and drawn when it rests. */
export const SNAPSHOT_FROM_ITEMS = 3000;

interface Snapshot {
  readonly picture: HTMLCanvasElement;
  readonly camera: Camera;
  readonly view: View;
}

function takeSnapshot(stage: Konva.Stage, camera: Camera, view: View): Snapshot {
  const picture = document.createElement('canvas');
  const first = stage.getLayers()[0]?.getNativeCanvasElement();
  picture.width = first?.width ?? 1;
  picture.height = first?.height ?? 1;
  const context = picture.getContext('2d');
  // The top layer belongs to the hand and is drawn live.
  for (const layer of stage.getLayers().slice(0, -1)) context?.drawImage(layer.getNativeCanvasElement(), 0, 0);
  return { picture, camera, view };
}

export interface GestureSnapshot {
  /** Draws the picture where the camera has moved it to. */
  readonly draw: (drawing: Drawing) => void;
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

/** The picture to move instead of the floor, or null: the floor is small, or rests. */
export function useGestureSnapshot(
  stage: React.RefObject<Konva.Stage | null>,
  moving: boolean,
  items: number,
  resting: { readonly camera: Camera; readonly view: View },
): GestureSnapshot | null {
  const kept = useRef<{ snapshot: Snapshot; made: GestureSnapshot } | null>(null);
  if (!moving || items < SNAPSHOT_FROM_ITEMS || !stage.current) {
    kept.current = null;
    return null;
  }
  if (!kept.current) {
    const snapshot = takeSnapshot(stage.current, resting.camera, resting.view);
    kept.current = { snapshot, made: { draw: (drawing) => blit(drawing, snapshot) } };
  }
  return kept.current.made;
}
