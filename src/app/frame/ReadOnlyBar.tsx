import { useSyncExternalStore, type ReactElement } from 'react';
import css from './ReadOnlyBar.module.css';
import { onFloor } from '../../model/doc.ts';
import { useDoc, useFloor, useOpen, usePlanStore, useTakeoff } from '../plan.ts';
import { openPanel, trueThe, useSession } from '../session.ts';
import { saveFile, useKeptState } from '../jobs/jobActions.ts';
import { useKept } from '../jobs/kept.ts';
import { isTrued } from '../../edit/pageMap.ts';
import { jobText } from '../../words/jobWords.ts';
import { pageText } from '../../words/pageWords.ts';
import { ui } from '../../words/uiWords.ts';

interface Saying {
  readonly text: string;
  readonly act?: { readonly words: string; readonly run: () => void };
}

/** Records that could not be read, for as long as the job is open. */
function useAside(): Saying | null {
  const store = usePlanStore();
  useSyncExternalStore(store.subscribe, store.getState);
  const count = store.quarantine().size;
  return count === 0
    ? null
    : { text: jobText.asideTitle(count), act: { words: ui.show, run: () => openPanel('aside') } };
}

/** A page with no known length stops all quantities: said in every stage, with the way on. */
function useNotTrued(): Saying | null {
  const floor = useFloor();
  const truing = useSession((now) => now.truing);
  const { takeoff } = useTakeoff();
  const page = useDoc((doc) =>
    floor ? onFloor(doc, 'page', floor.id).find((one) => one.hidden !== true && !isTrued(one)) : undefined,
  );
  if (!page || truing || takeoff?.blocked !== 'pageNotTrued') return null;
  return { text: pageText.notTruedSays, act: { words: pageText.trueIt, run: () => trueThe(page.id) } };
}

function useSayings(): readonly Saying[] {
  const readOnly = useOpen()?.readOnly ?? null;
  const { fault } = useKeptState();
  const asks = useKept((now) => now.asks);
  const notTrued = useNotTrued();
  const aside = useAside();
  const save = { words: ui.saveNow, run: saveFile };
  if (readOnly) return [{ text: ui.readOnlyBar[readOnly] }];
  const sayings: Saying[] = [];
  if (fault !== null) sayings.push({ text: fault, act: save });
  else if (asks) sayings.push({ text: jobText.asksHere, act: save });
  if (notTrued) sayings.push(notTrued);
  if (aside) sayings.push(aside);
  return sayings;
}

/** What stands in the way of the whole job: said all the time, not once. */
export function ReadOnlyBar(): ReactElement {
  const sayings = useSayings();
  return (
    <div role="status">
      {sayings.map(({ text, act }) => (
        <div key={text} className={css.bar}>
          <p>{text}</p>
          {act && (
            <button type="button" className={css.act} onClick={act.run}>
              {act.words}
            </button>
          )}
        </div>
      ))}
    </div>
  );
}
