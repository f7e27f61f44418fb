import type { ReactElement } from 'react';
import css from './Tag.module.css';
import { cx } from '../look/cx.ts';

interface TagProps {
  readonly children: string;
  /** In chalk: the picked item. */
  readonly picked?: boolean;
  /** The large plate of a zone's number. */
  readonly zone?: boolean;
}

export function Tag({ children, picked = false, zone = false }: TagProps): ReactElement {
  return <span className={cx(css.tag, zone && css.zone, picked && css.picked)}>{children}</span>;
}
