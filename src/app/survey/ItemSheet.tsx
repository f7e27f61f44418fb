import type { ReactElement } from 'react';
import css from './sheets/Sheet.module.css';
import { typeOf, type Json, type RecordId } from '../../model/cell.ts';
import { recordOf, type Doc } from '../../model/doc.ts';
import { Button } from '../parts/Button.tsx';
import { Figure } from '../parts/Figure.tsx';
import { MeasureField } from '../parts/MeasureField.tsx';
import { Tag } from '../parts/Tag.tsx';
import { TextField } from '../parts/TextField.tsx';
import { run, useDoc, useUnits } from '../plan.ts';
import { arm, useSession, type Settings } from '../session.ts';
import { fieldWords, surveyText } from '../../words/surveyWords.ts';
import { ui } from '../../words/uiWords.ts';
import { itemFields } from './itemFields.tsx';
import { itemLine, sizeFigure } from './itemLine.ts';
import { removePicked } from './removePicked.ts';
import { EdgesSection } from './sheets/EdgesSection.tsx';
import { FindingHolds } from './sheets/FindingHolds.tsx';
import { FindingMore } from './sheets/FindingMore.tsx';

/** Writes slots; a slot that is undefined is taken away. */
function setSlots(id: RecordId, slots: Settings): void {
  const fields: Record<string, Json> = {};
  const clear: string[] = [];
  for (const [slot, value] of Object.entries(slots)) {
    if (value === undefined) clear.push(slot);
    else fields[slot] = value;
  }
  run('setFields', { ids: [id], fields, ...(clear.length > 0 ? { clear } : {}) });
}

/** An obstruction's sizes live in its shape; all other fields are slots of the record. */
function valueOf(doc: Doc, id: RecordId): Settings {
  const obstruction = recordOf(doc, 'obstruction', id);
  if (obstruction) {
    const { shape, kind, under } = obstruction;
    const sizes = shape as unknown as Settings;
    return { ...sizes, kind, under };
  }
  return doc.get(id) ?? {};
}

function writeTo(doc: Doc, id: RecordId, slots: Settings): void {
  const obstruction = recordOf(doc, 'obstruction', id);
  const ofRecord = 'kind' in slots || 'under' in slots;
  if (obstruction && !ofRecord) setSlots(id, { shape: { ...obstruction.shape, ...slots } });
  else setSlots(id, slots);
}

function Fields({ id }: { readonly id: RecordId }): ReactElement | null {
  const doc = useDoc((now) => now);
  const KindFields = itemFields[typeOf(id)];
  const finding = recordOf(doc, 'finding', id);
  const obstruction = recordOf(doc, 'obstruction', id);
  const upstand = obstruction?.upstand;
  const UpstandFields = itemFields['upstand'];
  const opening = recordOf(doc, 'opening', id);
  const set = (slots: Settings): void => writeTo(doc, id, slots);
  return (
    <div className={css.fields}>
      {KindFields && <KindFields value={valueOf(doc, id)} onSet={set} />}
      {opening && (
        <MeasureField label={fieldWords.along} mm={opening.atMm} onSet={(mm) => mm !== null && set({ atMm: mm })} />
      )}
      {finding && <FindingMore finding={finding} onSet={set} />}
      {obstruction && UpstandFields && upstand && (
        <UpstandFields
          value={{ kind: upstand.kind, heightMm: upstand.heightMm, treat: upstand.treat }}
          onSet={(slots) => run('setUpstand', { id, upstand: { ...upstand, ...slots } as unknown as Json })}
        />
      )}
      {obstruction && (
        <Button
          size="desk"
          onClick={() =>
            run('setUpstand', {
              id,
              upstand: upstand ? null : { kind: 'platformSide', heightMm: 150, treat: 'prepare' },
            })
          }
        >
          {upstand ? surveyText.noUpstand : surveyText.addUpstand}
        </Button>
      )}
    </div>
  );
}

/** The picked item: what it is, its size, and every field of its kind. */
export function ItemSheet({ withDone = false }: { readonly withDone?: boolean }): ReactElement | null {
  const units = useUnits();
  const doc = useDoc((now) => now);
  const picked = useSession((now) => now.picked);
  const [id] = picked;
  if (!id || !doc.has(id)) return null;
  if (picked.length > 1) {
    return (
      <section className={css.sheet} aria-label={surveyText.sheet} tabIndex={-1} data-sheet>
        <div className={css.head}>
          <h2 className={css.title}>{surveyText.several(picked.length)}</h2>
        </div>
        <div className={css.foot}>
          <Button onClick={removePicked}>{ui.remove}</Button>
        </div>
      </section>
    );
  }
  const line = itemLine(doc, id, units);
  const figure = sizeFigure(doc, id, units);
  const slab = recordOf(doc, 'slab', id);
  const finding = recordOf(doc, 'finding', id);
  const name = doc.get(id)?.['name'];
  const locked = doc.get(id)?.['locked'] === true;
  return (
    <section className={css.sheet} aria-label={surveyText.sheet} tabIndex={-1} data-sheet>
      <div className={css.head}>
        {line.tag && <Tag picked>{line.tag}</Tag>}
        <h2 className={css.title}>{line.words}</h2>
        {figure && <Figure of={figure} size="title" />}
      </div>
      {finding && <FindingHolds finding={finding} />}
      {finding && <div className={css.gap} />}
      {slab && <EdgesSection slab={slab} />}
      <Fields key={id} id={id} />
      <div className={css.fields}>
        {typeOf(id) !== 'note' && (
          <TextField
            label={fieldWords.name}
            value={typeof name === 'string' ? name : ''}
            onSet={(next) => setSlots(id, { name: next === '' ? undefined : next })}
          />
        )}
      </div>
      <div className={css.foot}>
        <Button
          size="desk"
          aria-pressed={locked}
          onClick={() =>
            run('setField', locked ? { id, slot: 'locked', clear: true } : { id, slot: 'locked', value: true })
          }
        >
          {locked ? surveyText.unlock : surveyText.lock}
        </Button>
        <Button size="desk" onClick={removePicked} blocked={locked ? surveyText.lockedWhy : null}>
          {ui.remove}
        </Button>
        {withDone && (
          <Button size="desk" onClick={() => arm('pick')}>
            {surveyText.done}
          </Button>
        )}
      </div>
    </section>
  );
}
