import { useMemo, useState, type ReactElement } from 'react';
import css from './Estimate.module.css';
import { SentenceFields } from './SentenceFields.tsx';
import { SentenceList } from './SentenceList.tsx';
import { Button } from '../parts/Button.tsx';
import { Dialog } from '../parts/Dialog.tsx';
import { newId, run, useDoc } from '../plan.ts';
import { openPanel, say } from '../session.ts';
import { usePricing } from '../rates/usePricing.ts';
import { offerWords } from '../questions/offerWords.ts';
import { today } from '../today.ts';
import type { Json } from '../../model/cell.ts';
import { nextEstimate } from '../../edit/issueEstimate.ts';
import { estimateNow } from '../../exchange/estimateNow.ts';
import { noticeSentences, toTheCent } from '../../exchange/estimateRows.ts';
import { estimateText } from '../../words/estimateWords.ts';

/** What will be issued, over all floors, and the words that go with it; then it is frozen. */
export function IssueDialog(): ReactElement {
  const doc = useDoc((now) => now);
  const { job, frozen } = useMemo(() => estimateNow(doc), [doc]);
  const edits = usePricing();
  const [changing, setChanging] = useState(false);
  const { number } = nextEstimate(doc);
  const currency = frozen?.currency ?? '';
  const floors = new Set(job.zones.map(({ floor }) => floor)).size;
  const close = (): void => openPanel(null);

  function issue(): void {
    if (!frozen) return;
    const id = newId('estimate');
    const args = { id, on: today(), open: [...job.notAnOffer], frozen: frozen as unknown as { [slot: string]: Json } };
    if (!run('issueEstimate', args)) return;
    openPanel(null);
    say(estimateText.issued(number), { words: estimateText.show, run: () => openPanel(id) });
  }
  const blocked =
    frozen === null ? estimateText.noPrice : job.notAnOffer.length > 0 ? offerWords(job.notAnOffer) : null;
  return (
    <Dialog
      title={estimateText.issueTitle(number)}
      open
      onClose={close}
      foot={
        <>
          <Button onClick={close}>{estimateText.close}</Button>
          <Button kind="main" blocked={blocked} onClick={issue}>
            {estimateText.issueNow}
          </Button>
        </>
      }
    >
      {frozen && (
        <div className={css.price}>
          <b>{toTheCent(frozen.totalMinor, currency)}</b>
          <p>
            {estimateText.range(
              toTheCent(frozen.lowMinor ?? frozen.totalMinor, currency),
              toTheCent(frozen.highMinor ?? frozen.totalMinor, currency),
            )}
          </p>
          {floors > 1 && <p>{estimateText.allFloors(floors)}</p>}
          {job.leftOut.length > 0 && <p>{estimateText.leftOut(job.leftOut.map(({ name }) => name).join(', '))}</p>}
          {noticeSentences(frozen).map((words) => (
            <p key={words}>{words}</p>
          ))}
        </div>
      )}
      <p className={css.note}>{estimateText.issueSays}</p>
      {changing ? (
        <SentenceFields edits={edits} />
      ) : (
        <>
          <SentenceList title={estimateText.assumptions} sentences={frozen?.assumptions ?? []} />
          <SentenceList title={estimateText.exclusions} sentences={frozen?.exclusions ?? []} />
        </>
      )}
      <div>
        <Button size="desk" aria-pressed={changing} onClick={() => setChanging(!changing)}>
          {changing ? estimateText.wordsDone : estimateText.changeWords}
        </Button>
      </div>
    </Dialog>
  );
}
