import type { ReactElement } from 'react';
import css from './NoticeStrip.module.css';
import { hush, useSession } from '../session.ts';
import { ui } from '../../words/uiWords.ts';
import { Icon } from './Icon.tsx';

/** One sentence under the top bar: what was refused and why, or what has just happened and how to take it back. */
export function NoticeStrip(): ReactElement {
  const notice = useSession((now) => now.notice);
  return (
    <div className={css.holder} role="status" aria-live="polite">
      {notice && (
        <div className={css.strip}>
          <p className={css.text}>{notice.text}</p>
          {notice.doIt && (
            <button
              type="button"
              className={css.act}
              onClick={() => {
                hush();
                notice.doIt?.run();
              }}
            >
              {notice.doIt.words}
            </button>
          )}
          <button type="button" className={css.close} onClick={hush} aria-label={ui.close}>
            <Icon name="close" />
          </button>
        </div>
      )}
    </div>
  );
}
