import { grownBox } from '../../geometry/box.ts';
import { seenBox, toScreen } from '../camera.ts';
import { PAINT_ORDER, paintFloor, paintTags, type Showing } from '../paint/paintFloor.ts';
import { partIn } from '../paint/planPart.ts';
import type { Look } from '../paint/prim.ts';
import { zoneSpots } from '../paint/tags.ts';
import type { PlanView } from '../paint/view.ts';
import { paintedSteps, type Drawing } from './drawPrims.ts';

/*
 * A floor of thousands of items takes longer to draw than a frame lasts. It is drawn aside, a little at a time, and
 * shown as one picture when it is done:
 *
 *   plan changes, camera rests --> steps, some ms each, between which the page answers the hand --> the new picture
 *   meanwhile: the last picture, moved and scaled as the camera asks
 */
export interface FloorPicture {
  readonly canvas: HTMLCanvasElement;
  readonly plan: PlanView;
  readonly eye: Pick<Drawing, 'camera' | 'view'>;
}

export interface PictureOf {
  readonly plan: PlanView;
  readonly showing: Showing;
  readonly drawing: Omit<Drawing, 'context'>;
  /** Canvas px a screen px. */
  readonly sharpness: number;
}

/** Plates, marks and letters reach this far beyond what they belong to, px. */
const REACH_PX = 160;

/** Draws a picture step by step; the last step gives it. Null when there is no canvas to be had. */
export function* pictureSteps({
  plan,
  showing,
  drawing,
  sharpness,
}: PictureOf): Generator<undefined, FloorPicture | null> {
  const { camera, view } = drawing;
  const canvas = document.createElement('canvas');
  canvas.width = Math.round(view.widthPx * sharpness);
  canvas.height = Math.round(view.heightPx * sharpness);
  const context = canvas.getContext('2d');
  if (!context) return null;
  context.scale(sharpness, sharpness);
  const look: Look = { pxPerMm: camera.pxPerMm, picked: false, print: false };
  const seen = grownBox(seenBox(camera, view), REACH_PX / camera.pxPerMm);
  const part = partIn(plan, seen, showing.picked);
  yield;
  const bare = paintFloor(part, look, { ...showing, tags: false });
  yield;
  for (const { region } of showing.zones ? part.zones : []) {
    // Kept with the region: all plates together would be one long step.
    zoneSpots(region);
    yield;
  }
  const tags = paintTags(part, look, showing);
  yield;
  for (const name of PAINT_ORDER) {
    // What is picked lies above the picture, with the hand.
    if (name === 'picked') continue;
    for (const _ of paintedSteps({ ...drawing, context }, name === 'tags' ? tags : bare[name])) yield;
  }
  return { canvas, plan, eye: { camera, view } };
}

/** Lays a picture where its floor is now. */
export function drawPicture({ context, camera, view }: Drawing, { canvas, eye }: FloorPicture): void {
  const [x, y] = toScreen(camera, view, eye.camera.middle);
  const scale = camera.pxPerMm / eye.camera.pxPerMm;
  const { widthPx, heightPx } = eye.view;
  context.save();
  context.translate(x, y);
  context.rotate(((camera.turnDeg - eye.camera.turnDeg) * Math.PI) / 180);
  context.scale(scale, scale);
  context.drawImage(canvas, -widthPx / 2, -heightPx / 2, widthPx, heightPx);
  context.restore();
}
