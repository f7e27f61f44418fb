import type { ReactElement } from 'react';
import css from './Sill.module.css';
import { cx } from '../look/cx.ts';
import type { Figure as FigureValue } from '../../model/showNumber.ts';
import { Figure } from './Figure.tsx';

export interface SillItem {
  readonly key: string;
  readonly label: string;
  /** null: not known yet; a dash stands there. */
  readonly figure: FigureValue | null;
  /** A newer number is on its way: the old one is dimmed, not taken away. */
  readonly stale?: boolean;
  /** It changes under the hand right now. */
  readonly live?: boolean;
  /** Pressing it asks why. */
  readonly onAsk?: () => void;
}

interface SillProps {
  readonly label: string;
  readonly items: readonly SillItem[];
  /** Which ask the numbers answer, for whoever watches from outside. */
  readonly answers?: number;
  readonly className?: string | undefined;
}

/** What it adds up to, along the bottom of the canvas. Figures hold their width, so nothing jumps. */
export function Sill({ label, items, answers, className }: SillProps): ReactElement {
  return (
    <section
      className={cx(css.sill, className)}
      aria-label={label}
      aria-busy={items.some((item) => item.stale)}
      data-answers={answers}
    >
      {items.map((item) => {
        const inside = (
          <>
            <span className={css.label}>{item.label}</span>
            <Figure className={css.figure ?? ''} of={item.figure ?? { figure: '–', unit: '' }} />
          </>
        );
        const long = (item.figure?.figure.length ?? 0) > 9;
        const look = cx(css.item, item.stale && css.stale, item.live && css.live, long && css.long);
        return item.onAsk ? (
          <button key={item.key} type="button" className={look} onClick={item.onAsk}>
            {inside}
          </button>
        ) : (
          <div key={item.key} className={look}>
            {inside}
          </div>
        );
      })}
    </section>
  );
}
