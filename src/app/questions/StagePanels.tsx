import type { ReactElement } from 'react';
import { Questions } from './Questions.tsx';
import { Button } from '../parts/Button.tsx';
import { Dialog } from '../parts/Dialog.tsx';
import { EstimatePanels } from '../estimate/EstimatePanels.tsx';
import { MoneyDialog } from '../rates/MoneyDialog.tsx';
import { openPanel, useSession } from '../session.ts';
import { machineText, questionsText } from '../../words/stageWords.ts';

/** Panels that every stage can open: the four questions, wages and prices, estimates. */
export function StagePanels(): ReactElement | null {
  const panel = useSession((now) => now.panel);
  if (panel === 'money') return <MoneyDialog />;
  if (panel !== 'questions') return <EstimatePanels />;
  const close = (): void => openPanel(null);
  return (
    <Dialog
      title={questionsText.title}
      open
      onClose={close}
      foot={<Button onClick={close}>{machineText.close}</Button>}
    >
      <p>{questionsText.intro}</p>
      <Questions />
    </Dialog>
  );
}
