import type { ReactElement } from 'react';
import { offerWords } from './offerWords.ts';
import { HoldBar } from '../parts/HoldBar.tsx';
import { Pictogram } from '../parts/Pictogram.tsx';
import { openPanel } from '../session.ts';
import type { Takeoff } from '../../takeoff/port.ts';
import { questionsText } from '../../words/stageWords.ts';

/** Says that the range is not an offer, and why, until the questions are answered and the holds cleared. */
export function NotAnOffer({
  takeoff,
  asks = true,
}: {
  readonly takeoff: Takeoff;
  readonly asks?: boolean;
}): ReactElement | null {
  if (takeoff.notAnOffer.length === 0) return null;
  return (
    <HoldBar
      pictogram={<Pictogram name="hold" onInk />}
      title={questionsText.notAnOffer}
      sentence={offerWords(takeoff.notAnOffer)}
      {...(asks ? { action: { words: questionsText.title, run: () => openPanel('questions') } } : {})}
    />
  );
}
