import type { ReactElement, ReactNode } from 'react';
import css from './Dock.module.css';
import { cx } from '../look/cx.ts';

interface DockProps {
  readonly side: 'left' | 'right' | 'bottom';
  /** Name of the region for screen readers. */
  readonly label: string;
  readonly className?: string | undefined;
  readonly children: ReactNode;
}

/** A board along one edge of the screen. It pushes the canvas and never covers it; what is too long scrolls inside. */
export function Dock({ side, label, className, children }: DockProps): ReactElement {
  return (
    <section className={cx(css.dock, css[side], className)} aria-label={label}>
      {children}
    </section>
  );
}

export function DockHead({
  children,
  right,
}: {
  readonly children: ReactNode;
  readonly right?: ReactNode;
}): ReactElement {
  return (
    <div className={css.head}>
      <h2 className={css.title}>{children}</h2>
      {right !== undefined && <span className={css.headRight}>{right}</span>}
    </div>
  );
}

interface SectionProps {
  readonly title?: string;
  readonly right?: ReactNode;
  /** A heavy rule above: a new matter. */
  readonly heavy?: boolean;
  readonly className?: string;
  readonly children: ReactNode;
}

export function DockSection({ title, right, heavy = false, className, children }: SectionProps): ReactElement {
  return (
    <div className={cx(css.section, heavy && css.heavy, className)}>
      {title && (
        <div className={css.sectionHead}>
          <h3>{title}</h3>
          {right !== undefined && <span className={css.headRight}>{right}</span>}
        </div>
      )}
      {children}
    </div>
  );
}
