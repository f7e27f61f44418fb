import type { KeyboardEvent, ReactElement, ReactNode } from 'react';
import css from './Row.module.css';
import { cx } from '../look/cx.ts';
import type { Figure as FigureValue } from '../../model/showNumber.ts';
import { Figure } from './Figure.tsx';
import { Tag } from './Tag.tsx';

export interface RowProps {
  readonly tag?: string | null;
  readonly zone?: boolean;
  readonly words: ReactNode;
  /** A second line under the words. */
  readonly more?: ReactNode;
  readonly figure?: FigureValue | null;
  readonly right?: ReactNode;
  readonly picked?: boolean;
  readonly onPick?: (shift: boolean) => void;
  readonly onFocus?: () => void;
  readonly onKeyDown?: (event: KeyboardEvent) => void;
}

/** A line of a list: tag, words, figure at the right. With `onPick` it is a button. */
export function Row({
  tag,
  zone = false,
  words,
  more,
  figure,
  right,
  picked = false,
  onPick,
  onFocus,
  onKeyDown,
}: RowProps): ReactElement {
  const inside = (
    <>
      {tag && (
        <Tag picked={picked} zone={zone}>
          {tag}
        </Tag>
      )}
      <span className={css.words}>
        <span className={css.main}>{words}</span>
        {more && <span className={css.more}>{more}</span>}
      </span>
      {figure && <Figure of={figure} />}
      {right}
    </>
  );
  if (!onPick) return <div className={css.row}>{inside}</div>;
  return (
    <button
      type="button"
      className={cx(css.row, css.pickable, picked && css.picked)}
      aria-pressed={picked}
      onClick={(event) => onPick(event.shiftKey)}
      onFocus={onFocus}
      onKeyDown={onKeyDown}
    >
      {inside}
    </button>
  );
}
