import { RefusedChange, type PlanStore } from '../../model/store.ts';

/** Why a job may only be read: another tab writes it, or a newer app saved it. */
export type ReadOnly = 'otherTab' | 'newerFile' | null;

/** The same store, deaf to this tab's own changes while it may only read. */
export function guardedStore(store: PlanStore, readOnly: () => ReadOnly): PlanStore {
  return {
    ...store,
    commit(label, cells, origin = 'local') {
      const why = readOnly();
      if (why && origin === 'local') throw new RefusedChange(cells[0]?.[0] ?? 'job:', why);
      return store.commit(label, cells, origin);
    },
    undo: () => (readOnly() ? null : store.undo()),
    redo: () => (readOnly() ? null : store.redo()),
  };
}
