import { useEffect } from 'react';
import { useOpen } from '../plan.ts';
import { openPanel, say } from '../session.ts';
import { useHasMoney } from '../takeoff/useHasMoney.ts';
import { bookDifferences } from '../../takeoff/rates/bookDifferences.ts';
import { rateBookText } from '../../words/rateWords.ts';

/** Once for each job that is opened: says that the book is newer than its copy, and leads to what is otherwise. */
export function useBookNotice(): void {
  const open = useOpen();
  const hasMoney = useHasMoney();
  const id = open?.id ?? null;
  const tells = hasMoney && open !== null && open.readOnly === null;
  useEffect(() => {
    if (!tells || !open) return;
    const changed = bookDifferences(open.store.getState()).filter(({ was }) => was !== null);
    const { notice, see } = rateBookText.differences;
    if (changed.length > 0) say(notice(changed.length), { words: see, run: () => openPanel('rates') });
    // Told when a job comes to the screen, not at each of its changes.
    // oxlint-disable-next-line react-hooks/exhaustive-deps
  }, [id, tells]);
}
