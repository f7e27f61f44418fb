import { Menu } from '@base-ui/react/menu';
import { useCallback, useEffect, useState, type ReactElement } from 'react';
import css from './JobRows.module.css';
import menu from '../frame/Menu.module.css';
import {
  duplicateJob,
  listJobs,
  listRemoved,
  removeJob,
  renameJob,
  takeBackJob,
  type ListedJob,
} from '../keep/jobList.ts';
import { Button } from '../parts/Button.tsx';
import { Dialog } from '../parts/Dialog.tsx';
import { overlayHome } from '../look/overlayHome.ts';
import { Icon } from '../parts/Icon.tsx';
import { TextField } from '../parts/TextField.tsx';
import { say } from '../session.ts';
import { jobText, loadFault, placeFault } from '../../words/jobWords.ts';
import { ui } from '../../words/uiWords.ts';
import { isInMemory, openJobById, theKeep } from './kept.ts';
import { oneAtATime } from './oneAtATime.ts';
import { shortDay } from './shortDay.ts';

function whereItIs(job: ListedJob): string {
  const file = job.lastCopy ? jobText.onFile(job.lastCopy.fileName, shortDay(job.lastCopy.on)) : jobText.noFile;
  const edits = job.lastCopy && job.editsSinceCopy > 0 ? `, ${jobText.editsSince(job.editsSinceCopy)}` : '';
  return `${jobText.changed(shortDay(job.changedOn))}, ${file}${edits}`;
}

interface RowProps {
  readonly job: ListedJob;
  readonly onChanged: () => void;
  readonly onRename: () => void;
}

function JobLine({ job, onChanged, onRename }: RowProps): ReactElement {
  async function remove(): Promise<void> {
    const keep = await theKeep();
    await removeJob(keep, job.id);
    onChanged();
    say(jobText.removedSays(job.name), {
      words: ui.undo,
      run: () => void takeBackJob(keep, job.id).then(onChanged),
    });
  }
  async function duplicate(): Promise<void> {
    const answer = await duplicateJob(await theKeep(), job.id, jobText.copyOf(job.name));
    if (!answer.ok) say(loadFault(answer.fault, job.name));
    onChanged();
  }
  return (
    <li className={css.line}>
      <button type="button" className={css.job} onClick={() => void oneAtATime(() => openJobById(job.id))}>
        <b>
          {job.name}
          {job.copy === 'crew' && <small>{jobText.crewCopy}</small>}
          {job.invented && <small>{ui.invented}</small>}
        </b>
        <span>{whereItIs(job)}</span>
        {job.asksForCopy && <span className={css.ask}>{jobText.asksForCopy}</span>}
      </button>
      <Menu.Root>
        <Menu.Trigger className={css.more} aria-label={jobText.more(job.name)}>
          <Icon name="more" />
        </Menu.Trigger>
        <Menu.Portal container={overlayHome()}>
          <Menu.Positioner className={menu.positioner} align="end">
            <Menu.Popup className={menu.popup}>
              <Menu.Item className={menu.item} onClick={onRename}>
                {jobText.rename}
              </Menu.Item>
              <Menu.Item className={menu.item} onClick={() => void oneAtATime(duplicate)}>
                {jobText.duplicate}
              </Menu.Item>
              <Menu.Item className={menu.item} onClick={() => void oneAtATime(remove)}>
                {jobText.remove}
              </Menu.Item>
            </Menu.Popup>
          </Menu.Positioner>
        </Menu.Portal>
      </Menu.Root>
    </li>
  );
}

function RenameDialog({ job, onClose }: { readonly job: ListedJob; readonly onClose: () => void }): ReactElement {
  const [name, setName] = useState(job.name);
  async function rename(): Promise<void> {
    const answer = await renameJob(await theKeep(), job.id, name.trim());
    if (!answer.ok)
      say(answer.fault === 'openElsewhere' ? placeFault.openElsewhere : loadFault(answer.fault, job.name));
    onClose();
  }
  return (
    <Dialog
      title={ui.rename.title}
      open
      onClose={onClose}
      foot={
        <>
          <Button onClick={onClose}>{ui.cancel}</Button>
          <Button
            kind="main"
            blocked={name.trim() === '' ? ui.needsName : null}
            onClick={() => void oneAtATime(rename)}
          >
            {ui.rename.do}
          </Button>
        </>
      }
    >
      <TextField label={ui.rename.label} value={name} onSet={setName} onType={setName} autoFocus />
    </Dialog>
  );
}

/** Jobs of this browser, the last changed first, and those removed that can still be taken back. */
export function JobRows(): ReactElement {
  const [jobs, setJobs] = useState<readonly ListedJob[] | null>(null);
  const [removed, setRemoved] = useState<readonly ListedJob[]>([]);
  const [renaming, setRenaming] = useState<ListedJob | null>(null);
  const read = useCallback(async () => {
    const keep = await theKeep();
    if (isInMemory(keep)) return setJobs([]);
    setJobs(await listJobs(keep));
    setRemoved(await listRemoved(keep));
  }, []);
  useEffect(() => void read(), [read]);
  return (
    <>
      <h2 className={css.title}>{jobText.yours}</h2>
      {jobs?.length === 0 && <p className={css.none}>{jobText.none}</p>}
      <ul>
        {jobs?.map((job) => (
          <JobLine key={job.id} job={job} onChanged={() => void read()} onRename={() => setRenaming(job)} />
        ))}
      </ul>
      {removed.length > 0 && (
        <details className={css.removed}>
          <summary>{jobText.removed}</summary>
          <ul>
            {removed.map((job) => (
              <li key={job.id} className={css.line}>
                <span className={css.gone}>{job.name}</span>
                <Button
                  size="desk"
                  onClick={() =>
                    void theKeep()
                      .then((keep) => takeBackJob(keep, job.id))
                      .then(read)
                  }
                >
                  {jobText.takeBack}
                </Button>
              </li>
            ))}
          </ul>
        </details>
      )}
      {renaming && (
        <RenameDialog
          job={renaming}
          onClose={() => {
            setRenaming(null);
            void read();
          }}
        />
      )}
    </>
  );
}
