import type { ReactElement } from 'react';
import css from './SortHead.module.css';
import { sortBy, useWayToRead } from './wayToRead.ts';
import { cx } from '../look/cx.ts';
import { Icon } from '../parts/Icon.tsx';

interface SortHeadProps {
  /** Column of `Sort`. */
  readonly by: string;
  readonly words: string;
  /** Stands beside the words, and is said with them. */
  readonly tag?: string | null;
  readonly className?: string | undefined;
}

/** The heading of a column: pressed, it sorts the rows of each group; a third press gives the order of the work back. */
export function SortHead({ by, words, tag = null, className }: SortHeadProps): ReactElement {
  const sort = useWayToRead((now) => now.sort);
  const order = sort?.by === by ? sort.order : undefined;
  return (
    <th
      scope="col"
      aria-sort={order}
      aria-label={tag === null ? words : `${words}, ${tag}`}
      className={cx(css.head, className)}
    >
      <button type="button" className={css.press} onClick={() => sortBy(by)}>
        <span>
          {words}
          {tag !== null && <span className={css.tag}>{tag}</span>}
        </span>
        <span className={css.arrow}>{order && <Icon name={order === 'ascending' ? 'up' : 'down'} small />}</span>
      </button>
    </th>
  );
}
