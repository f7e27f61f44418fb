import type { ReactElement, ReactNode } from 'react';
import css from './HoldBar.module.css';

interface HoldBarProps {
  readonly pictogram: ReactNode;
  readonly title: string;
  readonly sentence: string;
  readonly action?: { readonly words: string; readonly run: () => void };
}

/** An ink bar across the dock: weight and words carry the alarm, no warning colour. */
export function HoldBar({ pictogram, title, sentence, action }: HoldBarProps): ReactElement {
  return (
    <div className={css.hold}>
      {pictogram}
      <div className={css.words}>
        <b>{title}</b>
        <span>{sentence}</span>
      </div>
      {action && (
        <button type="button" className={css.action} onClick={action.run}>
          {action.words}
        </button>
      )}
    </div>
  );
}
