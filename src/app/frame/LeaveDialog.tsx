import type { ReactElement } from 'react';
import { saveFile, useKeptState } from '../jobs/jobActions.ts';
import { closeJob } from '../jobs/kept.ts';
import { Button } from '../parts/Button.tsx';
import { Dialog } from '../parts/Dialog.tsx';
import { openPanel } from '../session.ts';
import { jobText } from '../../words/jobWords.ts';
import { ui } from '../../words/uiWords.ts';

/** Leaving now would lose edits: what stands in the way, and a file as the way out. */
export function LeaveDialog(): ReactElement {
  const { fault } = useKeptState();
  const close = (): void => openPanel(null);
  return (
    <Dialog
      title={jobText.leaveTitle}
      open
      onClose={close}
      foot={
        <>
          <Button onClick={close}>{jobText.stay}</Button>
          <Button onClick={() => void closeJob(true)}>{jobText.leaveAnyway}</Button>
          <Button
            kind="main"
            onClick={() => {
              close();
              saveFile();
            }}
          >
            {ui.saveNow}
          </Button>
        </>
      }
    >
      <p>{fault ?? ui.copy.saved}</p>
    </Dialog>
  );
}
