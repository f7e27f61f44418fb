import type { ReactElement } from 'react';
import css from './ReadOnlyBar.module.css';
import { useOpen } from '../plan.ts';
import { saveFile, useKeptState } from '../jobs/jobActions.ts';
import { ui } from '../../words/uiWords.ts';

/** Why nothing can be drawn, or why nothing is being kept: said all the time, not once. */
export function ReadOnlyBar(): ReactElement {
  const readOnly = useOpen()?.readOnly ?? null;
  const kept = useKeptState();
  if (readOnly) {
    return (
      <div className={css.bar} role="status">
        <p>{ui.readOnlyBar[readOnly]}</p>
      </div>
    );
  }
  if (kept.fault === null) return <div role="status" />;
  return (
    <div className={css.bar} role="status">
      <p>{kept.fault}</p>
      <button type="button" className={css.act} onClick={saveFile}>
        {ui.saveNow}
      </button>
    </div>
  );
}
