import { useState, type ReactElement } from 'react';
import css from './HandoverStage.module.css';
import { ReadingDialog } from './ReadingDialog.tsx';
import { cx } from '../look/cx.ts';
import { Button } from '../parts/Button.tsx';
import { Figure } from '../parts/Figure.tsx';
import { Tag } from '../parts/Tag.tsx';
import { run, useDoc, useFloor } from '../plan.ts';
import { pick, useSession } from '../session.ts';
import { onFloor, type Held } from '../../model/doc.ts';
import { readingOf } from '../../takeoff/rates/surveyReadings.ts';
import { handoverText } from '../../words/siteWords.ts';

/** Readings of the floor with value, limit, time and name. */
export function Readings(): ReactElement {
  const floor = useFloor();
  const readings = useDoc((doc) => (floor ? onFloor(doc, 'reading', floor.id) : []));
  const [open, setOpen] = useState<Held<'reading'> | 'new' | null>(null);
  return (
    <section className={css.section}>
      <div className={css.head}>
        <h2>{handoverText.readings}</h2>
        <Button size="desk" kind="main" onClick={() => setOpen('new')}>
          {handoverText.addReading}
        </Button>
      </div>
      {readings.length === 0 && (
        <p className={css.note}>
          <b>{handoverText.noReadings}.</b> {handoverText.noReadingsHelp}
        </p>
      )}
      <ul>
        {readings.map((reading) => (
          <li key={reading.id}>
            <ReadingRow reading={reading} onEdit={() => setOpen(reading)} />
          </li>
        ))}
      </ul>
      {open && <ReadingDialog reading={open === 'new' ? null : open} onClose={() => setOpen(null)} />}
    </section>
  );
}

function ReadingRow({
  reading,
  onEdit,
}: {
  readonly reading: Held<'reading'>;
  readonly onEdit: () => void;
}): ReactElement {
  const picked = useSession((now) => now.picked.includes(reading.id));
  const row = readingOf(reading.kind);
  const taken = [reading.takenOn?.slice(0, 10), reading.takenBy, reading.instrument].filter(Boolean).join(', ');
  const limit = reading.limit ?? '';
  const verdict = reading.passes === true ? 'yes' : reading.passes === false ? 'no' : 'unknown';
  return (
    <div className={css.reading}>
      <Tag picked={picked}>{reading.tag}</Tag>
      <span className={css.words}>
        {row?.term ?? (reading.kind || handoverText.kind)}
        <small>{taken}</small>
        <small>{limit === '' ? handoverText.noLimit : `${handoverText.limit}: ${limit}`}</small>
      </span>
      <Figure of={{ figure: reading.value === null ? '–' : String(reading.value), unit: reading.unit }} size="lead" />
      <span className={cx(css.verdict, verdict === 'no' && css.outside)}>{handoverText.passes[verdict]}</span>
      <span className={css.actions}>
        <Button size="desk" aria-label={`${handoverText.editReading} ${reading.tag}`} onClick={onEdit}>
          {handoverText.editReading}
        </Button>
        <Button
          size="desk"
          aria-label={`${handoverText.remove} ${reading.tag}`}
          onClick={() => {
            if (run('removeRecords', { ids: [reading.id] })) pick([]);
          }}
        >
          {handoverText.remove}
        </Button>
      </span>
    </div>
  );
}
