import type { ReactElement } from 'react';
import css from './HandoverStage.module.css';
import { Notes } from './Notes.tsx';
import { Readings } from './Readings.tsx';
import { WorkDone } from './WorkDone.tsx';

/** What was found and done: readings, notes, and the ticks and hours of the crew. */
export function HandoverStage(): ReactElement {
  return (
    <div className={css.handover}>
      <Readings />
      <WorkDone />
      <Notes />
    </div>
  );
}
