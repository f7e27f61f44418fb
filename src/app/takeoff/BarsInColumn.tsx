import { useEffect, useRef, useState, type ReactElement } from 'react';
import css from './BarTable.module.css';
import type { BarsDrawn } from './drawBars.ts';
import { askWhy } from '../session.ts';

interface BarsInColumnProps extends Omit<BarsDrawn, 'widthPx' | 'heightPx'> {
  /** The bars of all rows, or the scale above them. */
  readonly part: 'bars' | 'scale';
}

/** The drawing in the column of bars, as wide and high as its cell. Whoever reads the table aloud has the figures beside it. */
export function BarsInColumn({ part, ...drawn }: BarsInColumnProps): ReactElement {
  const box = useRef<HTMLDivElement>(null);
  const { widthPx, heightPx } = useSize(box);
  const { bars, from, likely, asked, tick } = drawn;
  useEffect(() => {
    const home = box.current;
    if (!home || widthPx === 0) return;
    let gone = false;
    const draw = async (): Promise<void> => {
      try {
        // The library that draws is fetched with the first bars.
        const { drawBars, drawScale } = await import('./drawBars.ts');
        const drawing = part === 'bars' ? drawBars : drawScale;
        if (!gone) home.replaceChildren(drawing({ bars, from, likely, asked, tick, widthPx, heightPx }));
      } catch {
        // No connection, and not kept yet: the figures beside the column say the same.
      }
    };
    void draw();
    return () => {
      gone = true;
    };
  }, [part, bars, from, likely, asked, tick, widthPx, heightPx]);
  useEffect(() => {
    const home = box.current;
    if (!home || part === 'scale') return;
    const ask = ({ offsetY }: MouseEvent): void => {
      const bar = bars[Math.floor((offsetY / home.clientHeight) * bars.length)];
      if (bar) askWhy(bar.key === asked ? null : bar.why);
    };
    home.addEventListener('click', ask);
    return () => home.removeEventListener('click', ask);
  }, [part, bars, asked]);
  return <div ref={box} className={part === 'bars' ? css.drawing : css.scaleDrawing} aria-hidden="true" />;
}

function useSize(box: React.RefObject<HTMLDivElement | null>): { readonly widthPx: number; readonly heightPx: number } {
  const [size, setSize] = useState({ widthPx: 0, heightPx: 0 });
  useEffect(() => {
    const home = box.current;
    if (!home) return;
    const watch = new ResizeObserver(() => setSize({ widthPx: home.clientWidth, heightPx: home.clientHeight }));
    watch.observe(home);
    return () => watch.disconnect();
  }, [box]);
  return size;
}
