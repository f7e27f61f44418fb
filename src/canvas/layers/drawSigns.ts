import { toScreen, type Camera, type View } from '../camera.ts';
import type { Theme } from '../look.ts';
import { plateOf, type Plate } from '../paint/plate.ts';
import type { MarkPrim, TextPrim } from '../paint/prim.ts';
import { tracedPath } from './paths.ts';

/** Marks and letters: they keep their size and stand upright, whatever the camera does. */
interface Glass {
  readonly context: CanvasRenderingContext2D;
  readonly camera: Camera;
  readonly view: View;
  readonly theme: Theme;
}

const PLATE = { radius: 3, rim: 2 } as const;
const HALO_PX = 6;

function onGlass(
  glass: Glass,
  at: readonly [number, number],
  flat: DOMMatrix,
  turnDeg: number | undefined,
  paint: () => void,
): void {
  const { context, camera, view } = glass;
  const [x, y] = toScreen(camera, view, at);
  context.save();
  context.setTransform(flat);
  context.translate(x, y);
  if (turnDeg !== undefined) context.rotate(((turnDeg + camera.turnDeg) * Math.PI) / 180);
  paint();
  context.restore();
}

export function drawMark(glass: Glass, mark: MarkPrim, flat: DOMMatrix): void {
  const { context, theme } = glass;
  onGlass(glass, mark.at, flat, mark.turnDeg, () => {
    const path = tracedPath(mark.paths, mark.filled ?? false);
    context.globalAlpha = mark.opacity ?? 1;
    if (mark.filled) {
      context.fillStyle = theme[mark.ink];
      context.fill(path);
    } else {
      context.strokeStyle = theme[mark.ink];
      context.lineWidth = mark.px;
      context.lineJoin = 'miter';
      context.lineCap = 'butt';
      context.setLineDash(mark.dashPx ? [...mark.dashPx] : []);
      context.stroke(path);
    }
  });
}

function drawLeader(glass: Glass, text: TextPrim, plate: Plate): void {
  const { context, theme } = glass;
  const stroke = (ink: string, width: number): void => {
    context.strokeStyle = ink;
    context.lineWidth = width;
    context.beginPath();
    context.moveTo(0, 0);
    context.lineTo(plate.middle[0], plate.middle[1]);
    context.stroke();
  };
  stroke(theme.slab, 4.5);
  stroke(theme[text.plate === 'chalk' ? 'chalk' : 'ink'], 1.5);
}

function drawPlate(glass: Glass, kind: NonNullable<TextPrim['plate']>, { width, height }: Plate): void {
  const { context, theme } = glass;
  context.beginPath();
  context.roundRect(-width / 2, -height / 2, width, height, PLATE.radius);
  context.fillStyle = kind === 'outlined' ? theme.board : kind === 'solid' ? theme.ink : theme.chalk;
  context.fill();
  if (kind === 'solid') return;
  context.strokeStyle = kind === 'chalk' ? theme.chalk : theme.ink;
  context.lineWidth = PLATE.rim;
  context.stroke();
}

export function drawText(glass: Glass, text: TextPrim, flat: DOMMatrix): void {
  const { context, theme } = glass;
  const plate = plateOf(text);
  onGlass(glass, text.at, flat, text.turnDeg, () => {
    if (text.leader) drawLeader(glass, text, plate);
    context.translate(plate.middle[0], plate.middle[1]);
    if (text.plate) drawPlate(glass, text.plate, plate);
    const align = text.align ?? 'middle';
    const bareSide = !text.plate && align !== 'middle';
    context.lineJoin = 'round';
    for (const line of plate.lines) {
      const centred = !bareSide && (plate.lines.length === 1 || align === 'middle');
      context.font = `${line.weight} ${line.px}px ${theme.font}`;
      context.textAlign = centred ? 'center' : align === 'right' ? 'right' : 'left';
      const x = centred ? 0 : align === 'right' ? plate.width / 2 : line.x;
      if (text.halo) {
        context.strokeStyle = theme[text.halo];
        context.lineWidth = HALO_PX;
        context.strokeText(line.text, x, line.y);
      }
      context.fillStyle = theme[text.ink];
      context.fillText(line.text, x, line.y);
    }
    if (plate.beside) drawBeside(glass, plate, plate.beside);
  });
}

function drawBeside(glass: Glass, { width, height }: Plate, beside: NonNullable<Plate['beside']>): void {
  const { context, theme } = glass;
  context.translate(width / 2, 0);
  context.fillStyle = theme.board;
  context.strokeStyle = theme.ink;
  context.lineWidth = PLATE.rim;
  context.fillRect(0, -height / 2, beside.width, height);
  context.strokeRect(0, -height / 2, beside.width, height);
  context.fillStyle = theme.ink;
  context.textAlign = 'left';
  for (const line of beside.lines) {
    context.font = `${line.weight} ${line.px}px ${theme.font}`;
    context.fillText(line.text, line.x, line.y);
  }
}
