import type { TextLine, TextPrim } from './prim.ts';
import { textWidth } from './textWidth.ts';

/** A text prim laid out in px: the plate's box about its middle, and where each line of letters stands. */
export interface Plate {
  readonly width: number;
  readonly height: number;
  /** Middle of the plate from the prim's point. */
  readonly middle: readonly [number, number];
  /** Baselines from the plate's middle; letters start at x. */
  readonly lines: readonly PlacedLine[];
  /** The outlined plate that stands right beside the first one: its width, and its lines likewise. */
  readonly beside: { readonly width: number; readonly lines: readonly PlacedLine[] } | null;
}

export type PlacedLine = TextLine & { readonly x: number; readonly y: number; readonly width: number };

const LEADING = 1.3;
/** Baseline below the middle of a line of capitals and figures, share of the letter size. */
const BASELINE = 0.345;
/** A tag's plate is 24 high about letters of 14.5. */
const TAG_HEIGHT = 24 / 14.5;
const TAG_PAD = 0.5;
/** A zone's plate is a square of 48 about a figure of 31. */
const SOLID_SIDE = 48 / 31;

export function plateOf(prim: TextPrim): Plate {
  const texts: readonly TextLine[] = [{ text: prim.text, px: prim.px, weight: prim.weight }, ...(prim.more ?? [])];
  const widths = texts.map((line) => textWidth(line.text, line.px));
  const widest = Math.max(...widths);
  const tall = texts.reduce((sum, line) => sum + line.px * LEADING, 0);
  const one = texts.length === 1;
  let width = widest;
  let height = one ? prim.px : tall;
  if (prim.plate === 'solid') {
    height = prim.px * SOLID_SIDE;
    width = Math.max(height, widest + prim.px * 0.5);
  } else if (prim.plate) {
    height = one ? prim.px * TAG_HEIGHT : tall + prim.px * 0.6;
    width = Math.max(one ? height : 0, widest + 2 * TAG_PAD * prim.px);
  }
  const align = prim.align ?? 'middle';
  const [dx, dy] = prim.offsetPx ?? [0, 0];
  const side = align === 'middle' ? 0 : align === 'left' ? width / 2 : -width / 2;
  let y = one ? prim.px * BASELINE : -tall / 2;
  const lines = texts.map((line, i) => {
    const own = widths[i] ?? 0;
    const x = one || align === 'middle' ? -own / 2 : -width / 2 + (prim.plate ? TAG_PAD * prim.px : 0);
    const baseline = one ? y : y + line.px * (LEADING / 2 + BASELINE);
    y += line.px * LEADING;
    return { ...line, x, y: baseline, width: own };
  });
  const beside = prim.beside ? besideOf(prim.beside, prim.px * 0.3) : null;
  // What is asked for is the middle of both plates together.
  const back = (beside?.width ?? 0) / 2;
  return { width, height, middle: [dx + side - back, dy], lines, beside };
}

/** Lines from the left edge of the second plate, whose middle is as high as the first one's. */
function besideOf(texts: readonly TextLine[], pad: number): NonNullable<Plate['beside']> {
  const widths = texts.map((line) => textWidth(line.text, line.px));
  const tall = texts.reduce((sum, line) => sum + line.px * LEADING, 0);
  let y = -tall / 2;
  const lines = texts.map((line, i) => {
    const baseline = y + line.px * (LEADING / 2 + BASELINE);
    y += line.px * LEADING;
    return { ...line, x: pad, y: baseline, width: widths[i] ?? 0 };
  });
  return { width: Math.max(...widths) + 2 * pad, lines };
}

/** Room that a text takes, both plates together, px. */
export function plateSize(prim: TextPrim): { readonly width: number; readonly height: number } {
  const { width, height, beside } = plateOf(prim);
  return { width: width + (beside?.width ?? 0), height };
}
