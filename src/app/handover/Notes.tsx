import { useState, type ReactElement } from 'react';
import css from './HandoverStage.module.css';
import { floorSpot } from './floorSpot.ts';
import { Button } from '../parts/Button.tsx';
import { Dialog } from '../parts/Dialog.tsx';
import { Tag } from '../parts/Tag.tsx';
import { TextField } from '../parts/TextField.tsx';
import { newId, planStoreNow, run, useDoc, useFloor } from '../plan.ts';
import { say } from '../session.ts';
import { onFloor, type Held } from '../../model/doc.ts';
import { handoverText } from '../../words/siteWords.ts';

/** What should be remembered, at its place on the floor. */
export function Notes(): ReactElement {
  const floor = useFloor();
  const notes = useDoc((doc) => (floor ? onFloor(doc, 'note', floor.id) : []));
  const [open, setOpen] = useState<Held<'note'> | 'new' | null>(null);
  return (
    <section className={css.section}>
      <div className={css.head}>
        <h2>{handoverText.notes}</h2>
        <Button size="desk" onClick={() => setOpen('new')}>
          {handoverText.addNote}
        </Button>
      </div>
      {notes.length === 0 && <p className={css.note}>{handoverText.noNotes}</p>}
      <ul>
        {notes.map((note) => (
          <li key={note.id} className={css.reading}>
            <Tag>{note.tag}</Tag>
            <span className={css.words}>{note.text}</span>
            <span className={css.actions}>
              <Button size="desk" aria-label={`${handoverText.editReading} ${note.tag}`} onClick={() => setOpen(note)}>
                {handoverText.editReading}
              </Button>
              <Button
                size="desk"
                aria-label={`${handoverText.remove} ${note.tag}`}
                onClick={() => run('removeRecords', { ids: [note.id] })}
              >
                {handoverText.remove}
              </Button>
            </span>
          </li>
        ))}
      </ul>
      {open && <NoteDialog note={open === 'new' ? null : open} onClose={() => setOpen(null)} />}
    </section>
  );
}

function NoteDialog({
  note,
  onClose,
}: {
  readonly note: Held<'note'> | null;
  readonly onClose: () => void;
}): ReactElement {
  const floor = useFloor();
  const [text, setText] = useState(note?.text ?? '');
  const [asked, setAsked] = useState(false);
  function save(): void {
    setAsked(true);
    if (!floor || text.trim() === '') return;
    if (note) {
      if (run('setField', { id: note.id, slot: 'text', value: text.trim() })) onClose();
      return;
    }
    const at = floorSpot(planStoreNow().getState(), floor.id, null);
    if (!at) return say(handoverText.needsFloor);
    if (run('placeNote', { id: newId('note'), floor: floor.id, at, text: text.trim() })) onClose();
  }
  return (
    <Dialog
      title={note ? `${handoverText.note} ${note.tag}` : handoverText.addNote}
      open
      onClose={onClose}
      foot={
        <>
          <Button onClick={onClose}>{handoverText.cancel}</Button>
          <Button kind="main" onClick={save}>
            {handoverText.keep}
          </Button>
        </>
      }
    >
      <TextField
        label={handoverText.note}
        lines
        value={text}
        onSet={setText}
        onType={setText}
        fault={asked && text.trim() === '' ? handoverText.needsNote : null}
        autoFocus
      />
    </Dialog>
  );
}
