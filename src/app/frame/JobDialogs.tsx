import { useState, type ReactElement } from 'react';
import { recordsOf } from '../../model/doc.ts';
import { newId, run, useDoc, useFloor, useJob, usePlanStore } from '../plan.ts';
import { openPanel, showFloor, useSession } from '../session.ts';
import { Button } from '../parts/Button.tsx';
import { Dialog } from '../parts/Dialog.tsx';
import { Row } from '../parts/Row.tsx';
import { TextField } from '../parts/TextField.tsx';
import { jobText } from '../../words/jobWords.ts';
import { ui } from '../../words/uiWords.ts';
import { LeaveDialog } from './LeaveDialog.tsx';

interface NameDialogProps {
  readonly title: string;
  readonly label: string;
  readonly start: string;
  /** Words of the button. */
  readonly act?: string;
  readonly onName: (name: string) => void;
}

function NameDialog({ title, label, start, act = ui.rename.do, onName }: NameDialogProps): ReactElement {
  const [name, setName] = useState(start);
  const close = (): void => openPanel(null);
  return (
    <Dialog
      title={title}
      open
      onClose={close}
      foot={
        <>
          <Button onClick={close}>{ui.cancel}</Button>
          <Button
            kind="main"
            blocked={name.trim() === '' ? ui.needsName : null}
            onClick={() => {
              onName(name.trim());
              close();
            }}
          >
            {act}
          </Button>
        </>
      }
    >
      <TextField label={label} value={name} onType={setName} onSet={setName} autoFocus />
    </Dialog>
  );
}

/** What could not be read, as it came, with why. */
function AsideDialog(): ReactElement {
  const aside = [...usePlanStore().quarantine()];
  return (
    <Dialog title={jobText.asideTitle(aside.length)} open wide onClose={() => openPanel(null)}>
      <p>{jobText.asideSays}</p>
      <ul>
        {aside.map(([id, { reason, fields }]) => (
          <li key={id}>
            <Row words={id} more={`${reason}: ${JSON.stringify(fields).slice(0, 300)}`} />
          </li>
        ))}
      </ul>
    </Dialog>
  );
}

/** The small questions about a whole job or floor. */
export function JobDialogs(): ReactElement | null {
  const panel = useSession((now) => now.panel);
  const job = useJob();
  const floor = useFloor();
  const floorCount = useDoc((doc) => recordsOf(doc, 'floor').length);
  if (panel === 'aside') return <AsideDialog />;
  if (panel === 'leave') return <LeaveDialog />;
  if (panel === 'rename' && job) {
    const onName = (name: string): boolean => run('setField', { id: job.id, slot: 'name', value: name });
    return <NameDialog title={ui.rename.title} label={ui.rename.label} start={job.name} onName={onName} />;
  }
  if (panel === 'renameFloor' && floor) {
    const onName = (name: string): boolean => run('setField', { id: floor.id, slot: 'name', value: name });
    return <NameDialog title={ui.rename.floorTitle} label={ui.rename.label} start={floor.name} onName={onName} />;
  }
  if (panel === 'addFloor') {
    const id = newId('floor');
    const onName = (name: string): void => {
      if (run('newFloor', { id, name })) showFloor(id);
    };
    return (
      <NameDialog
        title={ui.rename.floorTitle}
        label={ui.rename.label}
        act={ui.menu.addFloor}
        start={ui.newFloorName(floorCount + 1)}
        onName={onName}
      />
    );
  }
  return null;
}
