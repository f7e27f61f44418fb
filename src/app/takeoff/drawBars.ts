/**
 * Bars as SVG, drawn with Observable Plot: it comes with this file only when bars are looked at. Colours are the
 * variables of the page, so themes and print need no second drawing.
 */
import { axisX, barX, gridX, plot, ruleX, type Markish } from '@observablehq/plot';
import type { DriverBar } from './driverBars.ts';

export interface BarsDrawn {
  readonly bars: readonly DriverBar[];
  /** zero: from nothing to the likely, in a frame from low to high. likely: from the likely out to low and to high. */
  readonly from: 'zero' | 'likely';
  /** Where bars that go both ways begin. */
  readonly likely: number;
  readonly widthPx: number;
  readonly heightPx: number;
  /** The bar whose Why is open. */
  readonly asked: string | null;
  readonly tick: (value: number) => string;
}

const SIDE_PX = 12;
/** Ticks stand so far apart that their words do not touch. */
const TICK_PX = 100;
const SCALE_PX = 24;
const FRAME_PX = 22;
const BAR_PX = 10;
const INK = 'var(--ink)';
const STYLE = {
  background: 'none',
  color: 'var(--ink-2)',
  fontFamily: 'inherit',
  fontSize: '14px',
  overflow: 'visible',
};

/** The bars alone, one to each row of the table that they stand in. */
export function drawBars(drawn: BarsDrawn): Element {
  return plot({
    ...acrossOf(drawn),
    height: drawn.heightPx,
    y: { domain: drawn.bars.map(({ key }) => key), axis: null, padding: 0 },
    marks: [gridX({ ticks: ticksOf(drawn), stroke: 'var(--rule)', strokeOpacity: 1 }), ...marksOf(drawn)],
  });
}

/** The scale above the bars: it stands in the heading of their column. */
export function drawScale(drawn: BarsDrawn): Element {
  return plot({
    ...acrossOf(drawn),
    height: SCALE_PX,
    marginTop: SCALE_PX,
    marks: [axisX({ anchor: 'top', ticks: ticksOf(drawn), tickSize: 0, tickFormat: drawn.tick, label: null })],
  });
}

function marksOf({ bars, from, likely, heightPx, asked }: BarsDrawn): Markish[] {
  const row = heightPx / Math.max(1, bars.length);
  const thick = (px: number) => ({ y: 'key', insetTop: (row - px) / 2, insetBottom: (row - px) / 2 });
  const ink = (bar: DriverBar): string => (bar.key === asked ? 'var(--chalk)' : INK);
  const line = { stroke: INK, strokeWidth: 2 };
  if (from === 'zero') {
    const frame = { fill: 'var(--well)', stroke: 'var(--border)', strokeWidth: 1.5 };
    return [
      barX(bars, { ...thick(FRAME_PX), x1: 'low', x2: 'high', ...frame }),
      barX(bars, { ...thick(BAR_PX), x1: 0, x2: 'likely', fill: ink }),
      ruleX([0], line),
    ];
  }
  // What makes it cheaper is open, what makes it dearer is solid: two marks, and no colour needed.
  return [
    barX(bars, { ...thick(FRAME_PX), x1: 'low', x2: 'likely', fill: 'var(--board)', stroke: ink, strokeWidth: 2 }),
    barX(bars, { ...thick(FRAME_PX), x1: 'likely', x2: 'high', fill: ink, stroke: ink, strokeWidth: 2 }),
    ruleX([likely], line),
  ];
}

function acrossOf({ bars, from, likely, widthPx }: BarsDrawn) {
  const ends = [likely, ...bars.flatMap((bar) => [bar.low, bar.likely, bar.high])];
  return {
    width: widthPx,
    marginLeft: SIDE_PX,
    marginRight: SIDE_PX,
    marginTop: 0,
    marginBottom: 0,
    style: STYLE,
    x: { domain: [from === 'zero' ? 0 : Math.min(...ends), Math.max(...ends)], axis: null },
  };
}

/** How many ticks, or which: where there is room for one amount only, it is the one that the bars begin at. */
function ticksOf({ widthPx, from, likely }: BarsDrawn): number | number[] {
  const room = Math.floor(widthPx / TICK_PX);
  return from === 'likely' && room < 2 ? [likely] : Math.max(2, room);
}
