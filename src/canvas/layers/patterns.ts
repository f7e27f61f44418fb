import type { Point } from '../../geometry/floorShape.ts';
import type { Theme } from '../look.ts';
import { hatchTile, TEXTURE_TILES } from '../paint/hatchTile.ts';
import type { Texture } from '../paint/prim.ts';

/** Tiles are drawn so much finer than the screen, so that leaning ones stay sharp. */
const FINER = 3;

export interface Pattern {
  readonly pattern: CanvasPattern;
  readonly leanDeg: number;
  readonly finer: number;
}

interface Tile {
  readonly width: number;
  readonly height: number;
  readonly filled: readonly (readonly Point[])[];
  readonly strokes: readonly (readonly Point[])[];
  readonly stroke: number;
  readonly leanDeg: number;
}

function trace(context: CanvasRenderingContext2D, path: readonly Point[]): void {
  context.beginPath();
  for (const [i, [x, y]] of path.entries()) {
    if (i === 0) context.moveTo(x, y);
    else context.lineTo(x, y);
  }
}

function drawTile(tile: Tile, ink: string): Pattern | null {
  const canvas = document.createElement('canvas');
  // Whole pixels, or the joins would show: the pattern is scaled back to the tile's true size.
  canvas.width = Math.round(tile.width * FINER * 2);
  canvas.height = Math.round(tile.height * FINER * 2);
  const context = canvas.getContext('2d');
  if (!context) return null;
  context.scale(canvas.width / (tile.width * 2), canvas.height / (tile.height * 2));
  context.fillStyle = ink;
  context.strokeStyle = ink;
  context.lineWidth = tile.stroke;
  for (const x of [-1, 0, 1, 2]) {
    for (const y of [-1, 0, 1, 2]) {
      context.save();
      context.translate(x * tile.width, y * tile.height);
      for (const path of tile.filled) {
        trace(context, path);
        context.fill();
      }
      for (const path of tile.strokes) {
        trace(context, path);
        context.stroke();
      }
      context.restore();
    }
  }
  const pattern = context.createPattern(canvas, 'repeat');
  return pattern ? { pattern, leanDeg: tile.leanDeg, finer: canvas.width / (tile.width * 2) } : null;
}

const kept = new Map<string, Pattern | null>();

/** One repeating tile per profile or texture and ink. */
export function patternOf(of: number | Texture, theme: Theme): Pattern | null {
  const key = `${of} ${theme.ink}`;
  const known = kept.get(key);
  if (known !== undefined) return known;
  const tile: Tile = typeof of === 'number' ? hatchAsTile(of) : { ...TEXTURE_TILES[of], leanDeg: 0 };
  const pattern = drawTile(tile, theme.ink);
  kept.set(key, pattern);
  return pattern;
}

function hatchAsTile(csp: number): Tile {
  const { width, height, path, stroke, leanDeg } = hatchTile(csp);
  return { width, height, filled: [], strokes: [path], stroke, leanDeg };
}
