import type { ReactElement } from 'react';
import css from './Icon.module.css';
import { cx } from '../look/cx.ts';

/** Drawings of the frame of the app on a 28 px box. Tools have their own (canvas/paint/toolDrawings.ts). */
const drawings = {
  undo: 'M5 11h13a5 5 0 010 12H9M11 5l-6 6 6 6',
  redo: 'M23 11H10a5 5 0 000 12h9M17 5l6 6-6 6',
  down: 'M5 10l9 9 9-9',
  up: 'M5 18l9-9 9 9',
  back: 'M17 4L7 14l10 10',
  more: 'M4 12h4v4H4zM12 12h4v4h-4zM20 12h4v4h-4z',
  close: 'M6 6l16 16M22 6L6 22',
  plus: 'M14 5v18M5 14h18',
  minus: 'M5 14h18',
  done: 'M5 15l6 6L23 7',
  file: 'M6 3h11l5 5v17H6zM17 3v5h5',
  picture: 'M3 5h22v18H3zM3 19l7-7 6 6 4-4 5 5',
  walk: 'M6 25V11h14M14 4l7 7-7 7',
} as const;

export type IconName = keyof typeof drawings;
const FILLED: readonly IconName[] = ['more'];

interface IconProps {
  readonly name: IconName;
  readonly small?: boolean;
}

/** A drawing beside words; alone only where the button carries a name for screen readers. */
export function Icon({ name, small = false }: IconProps): ReactElement {
  return (
    <svg
      className={cx(css.icon, small && css.small, FILLED.includes(name) && css.filled)}
      viewBox="0 0 28 28"
      aria-hidden="true"
    >
      <path d={drawings[name]} />
    </svg>
  );
}
