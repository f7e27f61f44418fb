import { useState, type ReactElement } from 'react';
import css from './Sheet.module.css';
import type { Held } from '../../../model/doc.ts';
import type { Clearance } from '../../../model/records/base.ts';
import type { Json } from '../../../model/cell.ts';
import { Button } from '../../parts/Button.tsx';
import { HoldBar } from '../../parts/HoldBar.tsx';
import { Pictogram } from '../../parts/Pictogram.tsx';
import { run, useTakeoff } from '../../plan.ts';
import { RecordResult } from '../../questions/RecordResult.tsx';
import { surveyText } from '../../../words/surveyWords.ts';

type Test = 'asbestosTest' | 'leadTest';

const HOLD_OF = { asbestos: 'asbestosTest', lead: 'leadTest' } as const;
const WORDS = {
  asbestosTest: { title: surveyText.holdAsbestos, sentence: surveyText.holdAsbestosMore, pictogram: 'unknownLayer' },
  leadTest: { title: surveyText.holdLead, sentence: surveyText.holdLeadMore, pictogram: 'hold' },
} as const;

function resultWords({ result, by, on }: Clearance): string {
  return result === 'clear' ? surveyText.testClear(by, on) : surveyText.testFound(by, on);
}

/** Tests that stand open on a finding hold its zone; a result with a date and a name clears or keeps the hold. */
export function FindingHolds({ finding }: { readonly finding: Held<'finding'> }): ReactElement {
  const [asking, setAsking] = useState<Test | null>(null);
  const { takeoff } = useTakeoff();
  const open = (takeoff?.holds ?? []).flatMap((hold) =>
    hold.kind !== 'inSlab' && hold.records.includes(finding.id) ? [HOLD_OF[hold.kind]] : [],
  );
  const tests = (['asbestosTest', 'leadTest'] as const).filter((test) => finding[test]);
  return (
    <>
      {open.map((test) => (
        <HoldBar
          key={test}
          pictogram={<Pictogram name={WORDS[test].pictogram} onInk />}
          title={WORDS[test].title}
          sentence={WORDS[test].sentence}
          action={{ words: surveyText.recordResult, run: () => setAsking(test) }}
        />
      ))}
      {tests.map((test) => {
        const result = finding[test];
        return (
          result && (
            <div key={test} className={css.test}>
              <span>
                {surveyText.testFor[test]}: {resultWords(result)}
              </span>
              <Button
                size="desk"
                onClick={() => run('recordClearance', { record: finding.id, slot: test, clearance: null })}
              >
                {surveyText.takeBack}
              </Button>
            </div>
          )
        );
      })}
      {asking && (
        <RecordResult
          what={surveyText.testFor[asking]}
          onClose={() => setAsking(null)}
          onSave={(clearance) =>
            run('recordClearance', { record: finding.id, slot: asking, clearance: clearance as unknown as Json })
          }
        />
      )}
    </>
  );
}
