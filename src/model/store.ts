import type { Cell, Change, Origin, RecordId } from './cell.ts';
import { applyCells, cellsBefore, EMPTY_DOC, type Doc, type Fields } from './doc.ts';
import { checkRecord } from './records/all.ts';

/** A record that could not be read: kept aside as it came, shown, never counted, never dropped. */
export interface KeptAside {
  readonly fields: Fields;
  readonly reason: string;
}
export type Quarantine = ReadonlyMap<RecordId, KeptAside>;

export interface PlanStore {
  /** The first three are what zustand's `useStore` asks for. */
  getState(): Doc;
  getInitialState(): Doc;
  subscribe(on: (now: Doc, was: Doc) => void): () => void;
  /** Writes cells. A local change with a record that does not parse is refused whole (throws `RefusedChange`). */
  commit(label: string, cells: readonly Cell[], origin?: Origin): Change;
  /** 'overtaken': the newest step could not be taken back and is passed over for good; the next call takes the one before. */
  undo(): Change | 'overtaken' | null;
  redo(): Change | 'overtaken' | null;
  /** Labels of the steps that undo and redo would take, newest first. */
  steps(): { readonly undo: readonly string[]; readonly redo: readonly string[] };
  onChange(on: (change: Change) => void): () => void;
  quarantine(): Quarantine;
  tick(): number;
}

export class RefusedChange extends Error {
  readonly record: RecordId;
  constructor(record: RecordId, reason: string) {
    super(`${record}: ${reason}`);
    this.record = record;
  }
}

interface StoreStart {
  readonly doc?: Doc;
  readonly quarantine?: Quarantine;
  readonly device?: string;
  readonly tick?: number;
}

export function planStore(start: StoreStart = {}): PlanStore {
  const initial = start.doc ?? EMPTY_DOC;
  const device = start.device ?? 'here';
  const listeners = new Set<(now: Doc, was: Doc) => void>();
  const changeListeners = new Set<(change: Change) => void>();
  let doc = initial;
  let tick = start.tick ?? 0;
  let aside: Quarantine = start.quarantine ?? new Map();
  let done: Change[] = [];
  let undone: Change[] = [];
  /** Tick of the last write of a field that undo must not overwrite: somebody else's, or one of a step passed over. */
  const standsSince = new Map<string, number>();

  function write(label: string, cells: readonly Cell[], origin: Origin): Change {
    const strict = origin === 'local';
    const before = cellsBefore(doc, cells);
    let next = applyCells(doc, cells);
    const touched = new Set(cells.map(([id]) => id));
    for (const id of touched) {
      const fields = next.get(id);
      if (!fields) continue;
      const fault = checkRecord(id, fields);
      if (!fault) continue;
      if (strict) throw new RefusedChange(id, fault);
      aside = new Map(aside).set(id, { fields, reason: fault });
      const without = new Map(next);
      without.delete(id);
      next = without;
    }
    tick += 1;
    const change: Change = Object.freeze({
      label,
      origin,
      stamp: { tick, device },
      writes: Object.freeze([...cells]),
      before: Object.freeze(before),
    });
    if (origin === 'remote' || origin === 'load') {
      letStand(cells, tick);
    }
    const was = doc;
    doc = next;
    for (const on of changeListeners) on(change);
    for (const on of listeners) on(doc, was);
    return change;
  }

  function letStand(cells: readonly Cell[], since: number): void {
    for (const [id, slot] of cells) {
      const field = `${id} ${slot}`;
      standsSince.set(field, Math.max(since, standsSince.get(field) ?? 0));
    }
  }

  /** One of these fields was written after the change being taken back, by another device or by a step passed over. */
  function overtaken(change: Change): boolean {
    return change.writes.some(([id, slot]) => (standsSince.get(`${id} ${slot}`) ?? 0) > change.stamp.tick);
  }

  function takeBack(from: Change[], origin: 'undo' | 'redo'): Change | 'overtaken' | null {
    const last = from.pop();
    if (!last) return null;
    if (overtaken(last)) {
      // It stands whole: an earlier step that shares a field with it would take half of it away.
      letStand(last.writes, last.stamp.tick);
      // No field has changed, but `steps` has.
      for (const on of listeners) on(doc, doc);
      return 'overtaken';
    }
    return write(last.label, last.before, origin);
  }

  return {
    getState: () => doc,
    getInitialState: () => initial,
    subscribe(on) {
      listeners.add(on);
      return () => listeners.delete(on);
    },
    commit(label, cells, origin = 'local') {
      const change = write(label, cells, origin);
      if (origin === 'local') {
        done.push(change);
        undone = [];
      }
      return change;
    },
    undo() {
      const change = takeBack(done, 'undo');
      if (change && change !== 'overtaken') undone.push(change);
      return change;
    },
    redo() {
      const change = takeBack(undone, 'redo');
      if (change && change !== 'overtaken') done.push(change);
      return change;
    },
    steps: () => ({
      undo: done.map((change) => change.label).toReversed(),
      redo: undone.map((change) => change.label).toReversed(),
    }),
    onChange(on) {
      changeListeners.add(on);
      return () => changeListeners.delete(on);
    },
    quarantine: () => aside,
    tick: () => tick,
  };
}
