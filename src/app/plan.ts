/**
 * The open job, for the screens. Imported by every stage; these signatures stay as they are:
 *
 *   useDoc(select)            what `select` reads from the plan; drawn again when the plan changes
 *   usePlanStore()            the open job's PlanStore (also planStoreNow() outside React)
 *   run(name, args): boolean  runs one command; a refusal is said in the notice strip and answers false
 *   useTakeoff()              { takeoff, stale, preview }: stale while newer numbers are on their way
 *   useTotals()               { totals, stale }: areas and lengths; while the hand moves they come before the takeoff does
 *   useSettled()              takeoff and totals of the plan as it stands, without any preview
 *   undo(), redo(), useSteps()
 *   useJob(), useFloor()      the job record and the floor that is shown (null before there is one)
 *   useOpen()                 id, read-only reason… of the open job, or null on the job list
 *   useUnits()                'metric' | 'imperial'
 *   newId(type)               an id for a new record
 */
import { useMemo, useSyncExternalStore } from 'react';
import { create } from 'zustand';
import type { Cell, Json, RecordId } from '../model/cell.ts';
import { recordOf, recordsOf, type Doc, type Held } from '../model/doc.ts';
import { idMaker } from '../model/id.ts';
import { planStore, type PlanStore } from '../model/store.ts';
import type { Takeoff, TakeoffPort } from '../takeoff/port.ts';
import type { Totals } from '../takeoff/totals.ts';
import { runCommand } from '../edit/run.ts';
import { refusalSentence } from '../words/handWords.ts';
import { ui } from '../words/uiWords.ts';
import { hush, say, session, useSession, type Units } from './session.ts';

export type ReadOnly = 'otherTab' | 'newerFile' | null;

export interface OpenJob {
  readonly id: string;
  readonly store: PlanStore;
  readonly port: TakeoffPort;
  readonly readOnly: ReadOnly;
}

interface Shown {
  readonly open: OpenJob | null;
  readonly takeoff: Takeoff | null;
  /** The last answer that was no preview: what the plan itself says. */
  readonly settled: Takeoff | null;
  readonly preview: boolean;
  /** Areas and lengths of the takeoff, or newer ones. */
  readonly totals: Totals | null;
  readonly settledTotals: Totals | null;
  /** Numbers of the last ask, of that which the totals answer and of that which the takeoff does. */
  readonly asked: number;
  readonly totalsOf: number;
  readonly takeoffOf: number;
}

const NOTHING = {
  takeoff: null,
  settled: null,
  preview: false,
  totals: null,
  settledTotals: null,
  asked: 0,
  totalsOf: 0,
  takeoffOf: 0,
} as const;
const useShown = create<Shown>()(() => ({ open: null, ...NOTHING }));
const noJob = planStore();
let letGo: (() => void) | null = null;

export const newId = idMaker((count) => crypto.getRandomValues(new Uint8Array(count)));

/** Puts a job on the screen; null goes back to the job list. The port is closed with the job. */
export function showJob(open: OpenJob | null): void {
  letGo?.();
  letGo = null;
  useShown.setState({ open, ...NOTHING });
  if (!open) return;
  const { store, port } = open;
  const stopAnswers = port.listen(
    ({ ask, takeoff, preview, totals }) =>
      useShown.setState((was) => ({
        takeoff,
        preview,
        takeoffOf: ask,
        // Newer areas and lengths may have come ahead of their own takeoff.
        ...(ask >= was.totalsOf ? { totals, totalsOf: ask } : {}),
        ...(preview ? {} : { settled: takeoff, settledTotals: totals }),
      })),
    ({ ask, totals }) => useShown.setState({ totals, totalsOf: ask }),
  );
  const stopChanges = store.onChange((change) => noteAsk(port.change(change.writes, change.stamp.tick)));
  letGo = () => {
    stopAnswers();
    stopChanges();
    port.close();
  };
}

function noteAsk(asked: number | undefined): void {
  if (asked !== undefined) useShown.setState({ asked });
}

export function setReadOnly(readOnly: ReadOnly): void {
  useShown.setState(({ open }) => ({ open: open && { ...open, readOnly } }));
}

/** Tells the takeoff which floor is shown. */
export function measureFloor(floor: RecordId): void {
  const open = useShown.getState().open;
  noteAsk(open?.port.load(open.store.getState(), floor, open.store.tick()));
}

/** Numbers for what the hand is doing and the plan does not hold yet; null ends it. */
export function previewCells(cells: readonly Cell[] | null): void {
  const open = useShown.getState().open;
  noteAsk(open?.port.preview(cells, open.store.tick()));
}

export function openNow(): OpenJob | null {
  return useShown.getState().open;
}

export function useOpen(): OpenJob | null {
  return useShown((shown) => shown.open);
}

export function planStoreNow(): PlanStore {
  return openNow()?.store ?? noJob;
}

export function usePlanStore(): PlanStore {
  return useShown((shown) => shown.open?.store) ?? noJob;
}

export function useDoc<T>(select: (doc: Doc) => T): T {
  const store = usePlanStore();
  return select(useSyncExternalStore(store.subscribe, store.getState));
}

/** Numbers of another floor are no numbers of this one: after a change of floor there are none until its own come. */
export function useTakeoff(): { readonly takeoff: Takeoff | null; readonly stale: boolean; readonly preview: boolean } {
  const floor = useFloor();
  const takeoff = useShown((shown) => shown.takeoff);
  const preview = useShown((shown) => shown.preview);
  const stale = useShown((shown) => shown.takeoffOf < shown.asked);
  return { takeoff: ofFloor(takeoff, floor), stale, preview };
}

/** Areas and lengths on the screen, and the number of the ask that they answer. */
export function useTotals(): { readonly totals: Totals | null; readonly stale: boolean; readonly answers: number } {
  const floor = useFloor();
  const totals = useShown((shown) => shown.totals);
  const answers = useShown((shown) => shown.totalsOf);
  const stale = useShown((shown) => shown.totalsOf < shown.asked);
  return { totals: ofFloor(totals, floor), stale, answers };
}

/** The takeoff of the plan itself, while a preview is shown. */
export function useSettled(): { readonly takeoff: Takeoff | null; readonly totals: Totals | null } {
  const floor = useFloor();
  const takeoff = useShown((shown) => shown.settled);
  const totals = useShown((shown) => shown.settledTotals);
  return useMemo(
    () => ({ takeoff: ofFloor(takeoff, floor), totals: ofFloor(totals, floor) }),
    [takeoff, totals, floor],
  );
}

function ofFloor<T extends { readonly floor: string }>(numbers: T | null, floor: Held<'floor'> | null): T | null {
  return numbers && numbers.floor === floor?.id ? numbers : null;
}

export function useJob(): Held<'job'> | null {
  return useDoc((doc) => recordsOf(doc, 'job')[0] ?? null);
}

export function useFloor(): Held<'floor'> | null {
  const floor = useSession((now) => now.floor);
  return useDoc((doc) => recordOf(doc, 'floor', floor) ?? recordsOf(doc, 'floor')[0] ?? null);
}

export function floorNow(): Held<'floor'> | null {
  const doc = planStoreNow().getState();
  return recordOf(doc, 'floor', session().floor) ?? recordsOf(doc, 'floor')[0] ?? null;
}

export function unitsNow(): Units {
  return session().units ?? recordsOf(planStoreNow().getState(), 'job')[0]?.units ?? 'metric';
}

export function useUnits(): Units {
  const chosen = useSession((now) => now.units);
  const job = useJob();
  return chosen ?? job?.units ?? 'metric';
}

/** Runs one command by name. A refusal changes nothing and is said in a sentence. */
export function run(name: string, args: Json): boolean {
  const open = openNow();
  if (!open) return false;
  if (open.readOnly) {
    say(ui.readOnlyRefusal[open.readOnly]);
    return false;
  }
  const result = runCommand(open.store, { name, args });
  if ('refused' in result) {
    // It is like this already: nothing to say, nothing to take back.
    if (result.refused === 'noChange') return true;
    say(refusalSentence(result.refused));
    return false;
  }
  // What was said of the step before is over.
  hush();
  return true;
}

function step(which: 'undo' | 'redo'): void {
  const open = openNow();
  if (!open || open.readOnly) return;
  const result = open.store[which]();
  if (result === 'overtaken') say(ui.overtaken);
  // An offer to take something back is void once something else has been taken back.
  else hush();
}

export function undo(): void {
  step('undo');
}

export function redo(): void {
  step('redo');
}

/** Labels of what undo and redo would take, or null. */
export function useSteps(): { readonly undo: string | null; readonly redo: string | null } {
  const store = usePlanStore();
  const undoes = useSyncExternalStore(store.subscribe, () => store.steps().undo[0] ?? null);
  const redoes = useSyncExternalStore(store.subscribe, () => store.steps().redo[0] ?? null);
  return { undo: undoes, redo: redoes };
}
