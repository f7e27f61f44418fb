import type { ReactElement } from 'react';
import { Button } from '../parts/Button.tsx';
import { Dialog } from '../parts/Dialog.tsx';
import { jobText } from '../../words/jobWords.ts';
import { openJobById } from './kept.ts';
import { oneAtATime } from './oneAtATime.ts';
import { openAsNew, putInPlace, type SameJob } from './openFile.ts';

export function SameJobDialog({
  same,
  onClose,
}: {
  readonly same: SameJob;
  readonly onClose: () => void;
}): ReactElement {
  const then = (work: () => Promise<unknown>): (() => void) => {
    return () => {
      onClose();
      void oneAtATime(work);
    };
  };
  return (
    <Dialog
      title={jobText.sameTitle}
      open
      onClose={onClose}
      foot={
        <>
          <Button onClick={then(() => openJobById(same.id))}>{jobText.keepMine}</Button>
          <Button onClick={then(() => openAsNew(same))}>{jobText.beside}</Button>
          <Button onClick={then(() => putInPlace(same))}>{jobText.inPlace}</Button>
        </>
      }
    >
      <p>{jobText.sameSays(same.name)}</p>
    </Dialog>
  );
}
