import { boxesMeet, grownBox } from '../../geometry/box.ts';
import { seenBox, type Camera, type View } from '../camera.ts';
import type { Theme } from '../look.ts';
import type { Painted } from '../paint/kept.ts';
import type { AreaPrim, ImagePrim, LinePrim, Prim } from '../paint/prim.ts';
import { drawMark, drawText } from './drawSigns.ts';
import { levelFor, type PageImages } from './pageImages.ts';
import { linePaths, regionPath } from './paths.ts';
import { patternOf, type Pattern } from './patterns.ts';

export interface Drawing {
  readonly context: CanvasRenderingContext2D;
  readonly camera: Camera;
  readonly view: View;
  readonly theme: Theme;
  readonly images: PageImages | null;
}

const HATCH_OPACITY = 0.6;
const TEXTURE_OPACITY = 0.78;
/** Marks, letters and walls reach this far beyond the points they belong to. */
const REACH_PX = 160;

function degrees(value: number): number {
  return (value * Math.PI) / 180;
}

/** Puts the context on the floor: one unit is one millimetre. */
function toFloorUnits({ context, camera, view }: Drawing): void {
  context.translate(view.widthPx / 2, view.heightPx / 2);
  context.rotate(degrees(camera.turnDeg));
  context.scale(camera.pxPerMm, camera.pxPerMm);
  context.translate(-camera.middle[0], -camera.middle[1]);
}

/** Tiles keep their size on the screen and hang on the floor's origin, so they pan with the slab. */
function hang({ pattern, leanDeg, finer }: Pattern, pxPerMm: number): CanvasPattern {
  const size = 1 / (pxPerMm * finer);
  pattern.setTransform(new DOMMatrix().rotate(leanDeg).scale(size, size));
  return pattern;
}

function drawArea(drawing: Drawing, prim: AreaPrim): void {
  const { context, camera, theme } = drawing;
  const path = regionPath(prim.region);
  if (prim.fill) {
    context.globalAlpha = prim.opacity ?? 1;
    context.fillStyle = theme[prim.fill];
    context.fill(path, 'evenodd');
  }
  const tile = prim.hatchCsp ?? prim.texture;
  const pattern = tile === undefined ? null : patternOf(tile, theme);
  if (pattern) {
    context.globalAlpha = prim.opacity ?? (prim.hatchCsp === undefined ? TEXTURE_OPACITY : HATCH_OPACITY);
    context.fillStyle = hang(pattern, camera.pxPerMm);
    context.fill(path, 'evenodd');
  }
  context.globalAlpha = 1;
}

function drawLine(drawing: Drawing, prim: LinePrim): void {
  const { context, camera, theme } = drawing;
  const mm = 1 / camera.pxPerMm;
  const { path, bars, triangles, teethPx } = linePaths(prim, camera.pxPerMm);
  context.lineJoin = 'miter';
  context.miterLimit = 4;
  context.lineCap = prim.cap ?? 'butt';
  context.setLineDash([]);
  if (prim.haloPx) {
    context.strokeStyle = theme.slab;
    context.lineWidth = (prim.px + 2 * prim.haloPx) * mm;
    context.stroke(path);
  }
  context.strokeStyle = theme[prim.ink];
  context.fillStyle = theme[prim.ink];
  if (bars) {
    context.lineWidth = teethPx * mm;
    context.stroke(bars);
  }
  if (triangles) context.fill(triangles);
  if (prim.dashPx) context.setLineDash(prim.dashPx.map((px) => px * mm));
  context.lineWidth = prim.px * mm;
  context.stroke(path);
  context.setLineDash([]);
}

function drawImage(drawing: Drawing, prim: ImagePrim): void {
  const { context, camera, theme, images } = drawing;
  const image = images?.get(prim.hash);
  const [a, b, c, d, e, f] = prim.matrix;
  const bitmap = image ? levelFor(image, Math.hypot(a, b) * camera.pxPerMm) : null;
  if (!bitmap) return;
  context.save();
  context.transform(a, b, c, d, e, f);
  context.imageSmoothingQuality = 'high';
  context.globalAlpha = prim.opacity;
  context.drawImage(bitmap, 0, 0, prim.widthPx, prim.heightPx);
  if (theme.dark) {
    // White paper on a dark screen blinds: the page is shown as a negative.
    context.globalCompositeOperation = 'difference';
    context.fillStyle = 'white';
    context.fillRect(0, 0, prim.widthPx, prim.heightPx);
  }
  context.restore();
}

function draw(drawing: Drawing, prim: Prim, flat: DOMMatrix): void {
  if (prim.kind === 'area') drawArea(drawing, prim);
  else if (prim.kind === 'line') drawLine(drawing, prim);
  else if (prim.kind === 'image') drawImage(drawing, prim);
  else if (prim.kind === 'mark') drawMark(drawing, prim, flat);
  else drawText(drawing, prim, flat);
}

/** Draws what of a class can be seen, a prim a step. */
export function* paintedSteps(drawing: Drawing, works: readonly Painted[]): Generator<undefined, void> {
  const { context, camera, view } = drawing;
  const seen = grownBox(seenBox(camera, view), REACH_PX / camera.pxPerMm);
  context.save();
  const flat = context.getTransform();
  toFloorUnits(drawing);
  for (const { box, prims } of works) {
    if (!boxesMeet(box, seen)) continue;
    for (const prim of prims) {
      draw(drawing, prim, flat);
      yield;
    }
  }
  context.restore();
}

/** Draws what of a class can be seen. */
export function drawPainted(drawing: Drawing, works: readonly Painted[]): void {
  const steps = paintedSteps(drawing, works);
  while (!steps.next().done);
}

/** Draws prims that stand on the glass: their points are screen px. */
export function drawOnGlass(drawing: Drawing, prims: readonly Prim[]): void {
  const { view } = drawing;
  const camera: Camera = { middle: [view.widthPx / 2, view.heightPx / 2], pxPerMm: 1, turnDeg: 0 };
  drawPainted({ ...drawing, camera }, [{ id: 'glass', box: seenBox(camera, view), prims }]);
}
