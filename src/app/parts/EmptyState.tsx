import type { ReactElement, ReactNode } from 'react';
import css from './EmptyState.module.css';

interface EmptyStateProps {
  /** One sentence of fact. */
  readonly title: string;
  /** One of what to do. */
  readonly sentence: string;
  /** One or two buttons. */
  readonly children?: ReactNode;
}

export function EmptyState({ title, sentence, children }: EmptyStateProps): ReactElement {
  return (
    <div className={css.empty}>
      <h2 className={css.title}>{title}</h2>
      <p>{sentence}</p>
      {children && <div className={css.buttons}>{children}</div>}
    </div>
  );
}
