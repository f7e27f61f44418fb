import { useEffect, type ReactElement } from 'react';
import css from './PrepLeft.module.css';
import { Button } from '../parts/Button.tsx';
import { arm, useSession } from '../session.ts';
import { send } from '../survey/hand.ts';
import { prepText } from '../../words/stageWords.ts';

/** While a zone is being drawn: how, and the ways to end, step back and leave for those without a keyboard. */
export function DrawingZone(): ReactElement {
  const drawn = useSession((now) => now.picked.some((id) => id.startsWith('zone:')));
  useEffect(() => {
    // The zone that was drawn is picked by now: its sheet is what the hand wants next, not another zone.
    if (drawn) arm('pick');
  }, [drawn]);
  return (
    <div className={css.drawing} role="group" aria-label={prepText.drawing}>
      <b>{prepText.drawing}</b>
      <p>{prepText.drawingHelp}</p>
      <Button wide kind="main" onClick={() => send({ kind: 'finish' })}>
        {prepText.drawingDone}
      </Button>
      <Button size="desk" wide onClick={() => send({ kind: 'back' })}>
        {prepText.drawingBack}
      </Button>
      <Button size="desk" wide onClick={() => arm('pick')}>
        {prepText.drawingLeave}
      </Button>
    </div>
  );
}
