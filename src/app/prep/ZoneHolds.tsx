import { useState, type ReactElement } from 'react';
import { zoneKey } from './zoneNames.ts';
import { HoldBar } from '../parts/HoldBar.tsx';
import { Pictogram } from '../parts/Pictogram.tsx';
import { run, useDoc, useJob, useTakeoff } from '../plan.ts';
import { RecordResult } from '../questions/RecordResult.tsx';
import { openPanel } from '../session.ts';
import type { Json, RecordId } from '../../model/cell.ts';
import { recordOf, type Held } from '../../model/doc.ts';
import type { Clearance } from '../../model/records/base.ts';
import type { Hold } from '../../takeoff/line.ts';
import { findingRowOf } from '../../takeoff/rates/findings.ts';
import { holdWords } from '../../words/takeoffWords.ts';
import { holdText, questionsText, resultText } from '../../words/stageWords.ts';

const slots = { asbestos: 'asbestosTest', lead: 'leadTest', inSlab: 'inSlabLocated' } as const;

/** What is being answered for: a finding and its test, or the job and what lies in its slab. */
interface Asked {
  readonly record: RecordId;
  readonly slot: (typeof slots)[Hold['kind']];
  readonly what: string;
}

/** Holds of the zone as ink bars, each with the place to record the result that ends it. */
export function ZoneHolds({ zone }: { readonly zone: Held<'zone'> }): ReactElement {
  const { takeoff } = useTakeoff();
  const measure = takeoff?.measure.zones.find((each) => each.id === zoneKey(zone));
  const holds = (takeoff?.holds ?? []).filter(
    (hold) =>
      hold.zone === zoneKey(zone) || (hold.zone === null && hold.records.some((id) => (measure?.lengthM[id] ?? 0) > 0)),
  );
  return (
    <>
      {holds.map((hold) => (
        <HoldOf key={`${hold.kind} ${hold.reason}`} hold={hold} />
      ))}
    </>
  );
}

/** One hold. Several findings may call for it: each is answered by its own result. */
export function HoldOf({ hold }: { readonly hold: Hold }): ReactElement {
  const job = useJob();
  const [asked, setAsked] = useState<Asked | null>(null);
  const findings = useDoc((doc) => hold.records.flatMap((id) => recordOf(doc, 'finding', id) ?? []));
  const words = holdText[hold.kind];
  const slot = slots[hold.kind];
  const open =
    hold.kind === 'inSlab'
      ? []
      : findings.filter((finding) => (finding[slot] as Clearance | undefined)?.result !== 'clear');

  function ask(finding: Held<'finding'>): void {
    const term = findingRowOf(finding.kind)?.term ?? finding.kind;
    setAsked({ record: finding.id, slot, what: holdText.resultOf(words.test, finding.tag, term) });
  }
  const actions = open.map((finding) => ({
    words: open.length > 1 ? `${resultText.record}, ${finding.tag}` : resultText.record,
    run: () => ask(finding),
  }));
  if (hold.kind === 'inSlab' && job) {
    actions.push({
      words: resultText.record,
      run: () => setAsked({ record: job.id, slot, what: questionsText.locate }),
    });
  }
  if (hold.reason === 'building') actions.push({ words: questionsText.title, run: () => openPanel('questions') });
  const tags = findings.map((finding) => finding.tag).join(', ');
  const [first, ...others] = actions;
  return (
    <>
      <HoldBar
        pictogram={<Pictogram name={hold.kind === 'inSlab' ? 'locate' : 'unknownLayer'} onInk />}
        title={tags === '' || hold.kind === 'inSlab' ? words.title : `${words.title}, ${tags}`}
        sentence={holdWords[`${hold.kind}.${hold.reason}`] ?? words.title}
        {...(first ? { action: first } : {})}
      />
      {others.map((action) => (
        <HoldBar key={action.words} pictogram={null} title="" sentence={words.title} action={action} />
      ))}
      {asked && (
        <RecordResult
          what={asked.what}
          {...(asked.slot === 'inSlabLocated'
            ? { words: { clear: resultText.located, found: resultText.notLocated } }
            : {})}
          onClose={() => setAsked(null)}
          onSave={(clearance) =>
            run('recordClearance', { record: asked.record, slot: asked.slot, clearance: clearance as Json })
          }
        />
      )}
    </>
  );
}
