import { useState, type ReactElement } from 'react';
import css from './HandoverStage.module.css';
import { floorSpot } from './floorSpot.ts';
import { judgeReading, limitText } from './judgeReading.ts';
import { Button } from '../parts/Button.tsx';
import { Choice } from '../parts/Choice.tsx';
import { Dialog } from '../parts/Dialog.tsx';
import { Picker } from '../parts/Picker.tsx';
import { TextField } from '../parts/TextField.tsx';
import { newId, planStoreNow, run, useFloor } from '../plan.ts';
import { useZones } from '../prep/usePickedZone.ts';
import { zoneName } from '../prep/zoneNames.ts';
import { answeredBy, setAnsweredBy } from '../questions/answeredBy.ts';
import { say } from '../session.ts';
import { isDay, today } from '../today.ts';
import { parseNumber } from '../../model/parseNumber.ts';
import type { Held } from '../../model/doc.ts';
import type { RecordId } from '../../model/cell.ts';
import { readingOf, surveyReadings } from '../../takeoff/rates/surveyReadings.ts';
import { handoverText } from '../../words/siteWords.ts';
import { sourceSays } from '../../words/whyWords.ts';

type Verdict = 'yes' | 'no' | 'unknown';

interface Draft {
  readonly kind: string | null;
  readonly value: string;
  readonly unit: string;
  readonly limit: string;
  readonly on: string;
  readonly by: string;
  readonly instrument: string;
  readonly serial: string;
  /** What the person says; null while the limit of the table judges. */
  readonly verdict: Verdict | null;
}

function draftOf(reading: Held<'reading'> | null): Draft {
  return {
    kind: reading?.kind ?? null,
    value: reading?.value === null || reading?.value === undefined ? '' : String(reading.value),
    unit: reading?.unit ?? '',
    limit: reading?.limit ?? '',
    on: reading?.takenOn?.slice(0, 10) ?? today(),
    by: reading?.takenBy ?? answeredBy(),
    instrument: reading?.instrument ?? '',
    serial: reading?.serial ?? '',
    verdict: reading ? verdictOf(reading.passes ?? null) : null,
  };
}

const verdictOf = (passes: boolean | null): Verdict => (passes === null ? 'unknown' : passes ? 'yes' : 'no');
const passesOf: Readonly<Record<Verdict, boolean | null>> = { yes: true, no: false, unknown: null };
const verdicts = (['yes', 'no', 'unknown'] as const).map((value) => ({ value, words: handoverText.verdicts[value] }));

/** One reading: what, how much, when, by whom, with what. The limit of the table is shown and can be written over. */
export function ReadingDialog({
  reading,
  onClose,
}: {
  readonly reading: Held<'reading'> | null;
  readonly onClose: () => void;
}): ReactElement {
  const floor = useFloor();
  const zones = useZones();
  const [draft, setDraft] = useState(() => draftOf(reading));
  const [zone, setZone] = useState<RecordId | null>(zones[0]?.id ?? null);
  const [asked, setAsked] = useState(false);
  const more = (fields: Partial<Draft>): void => setDraft((was) => ({ ...was, ...fields }));
  const row = draft.kind ? readingOf(draft.kind) : null;
  const parsed = parseNumber(draft.value, { negative: true });
  const value = parsed.ok ? parsed.value : null;
  const judged = row ? judgeReading(row, value) : null;
  const verdict = draft.verdict ?? verdictOf(judged);
  const faults = {
    kind: draft.kind ? null : handoverText.needsKind,
    value: value === null ? handoverText.needsValue : null,
    on: isDay(draft.on) ? null : handoverText.needsDate,
    by: draft.by.trim() === '' ? handoverText.needsBy : null,
  };

  function save(): void {
    setAsked(true);
    if (!floor || !draft.kind || Object.values(faults).some(Boolean)) return;
    const fields = {
      kind: draft.kind,
      value,
      unit: draft.unit.trim(),
      limit: draft.limit.trim(),
      passes: passesOf[verdict],
      takenOn: draft.on,
      takenBy: draft.by.trim(),
      instrument: draft.instrument.trim(),
      serial: draft.serial.trim(),
    };
    setAnsweredBy(fields.takenBy);
    if (reading) {
      if (run('setFields', { ids: [reading.id], fields })) onClose();
      return;
    }
    const at = floorSpot(planStoreNow().getState(), floor.id, zone);
    if (!at) return say(handoverText.needsFloor);
    if (run('placeReading', { id: newId('reading'), floor: floor.id, at, ...fields })) onClose();
  }
  return (
    <Dialog
      title={reading ? `${handoverText.readings} ${reading.tag}` : handoverText.addReading}
      open
      onClose={onClose}
      foot={
        <>
          <Button onClick={onClose}>{handoverText.cancel}</Button>
          <Button kind="main" onClick={save} blocked={asked ? faults.kind : null}>
            {handoverText.save}
          </Button>
        </>
      }
    >
      <Picker
        label={handoverText.kind}
        value={draft.kind}
        empty={handoverText.needsKind}
        options={surveyReadings.map((each) => ({ value: each.id, words: each.term, more: each.method }))}
        onPick={(kind) => {
          const picked = readingOf(kind);
          more({ kind, unit: picked?.unit ?? '', limit: picked ? limitText(picked) : '' });
        }}
      />
      <div className={css.pair}>
        <TextField
          label={handoverText.value}
          value={draft.value}
          onSet={() => undefined}
          onType={(text) => more({ value: text })}
          fault={asked ? faults.value : null}
        />
        <TextField
          label={handoverText.unit}
          value={draft.unit}
          onSet={() => undefined}
          onType={(unit) => more({ unit })}
        />
      </div>
      <TextField
        label={handoverText.limit}
        value={draft.limit}
        onSet={() => undefined}
        onType={(limit) => more({ limit })}
        say={
          row
            ? `${handoverText.limitFrom} ${sourceSays(row.source, row.provenance, row.fromMemory)}.`
            : handoverText.limitFrom
        }
      />
      <Choice
        label={handoverText.verdict}
        value={verdict}
        options={verdicts}
        onChoose={(answer) => more({ verdict: answer })}
      />
      <div className={css.pair}>
        <TextField
          label={handoverText.on}
          value={draft.on}
          onSet={() => undefined}
          onType={(on) => more({ on })}
          fault={asked ? faults.on : null}
        />
        <TextField
          label={handoverText.by}
          value={draft.by}
          onSet={() => undefined}
          onType={(by) => more({ by })}
          fault={asked ? faults.by : null}
        />
        <TextField
          label={handoverText.instrument}
          value={draft.instrument}
          onSet={() => undefined}
          onType={(instrument) => more({ instrument })}
        />
        <TextField
          label={handoverText.serial}
          value={draft.serial}
          onSet={() => undefined}
          onType={(serial) => more({ serial })}
        />
      </div>
      {!reading && zones.length > 0 && (
        <div>
          <Picker
            label={handoverText.where}
            value={zone}
            options={zones.map((each) => ({ value: each.id, words: zoneName(each) }))}
            onPick={setZone}
          />
          <p>{handoverText.whereHelp}</p>
        </div>
      )}
    </Dialog>
  );
}
