import type { Region } from '../../geometry/floorShape.ts';
import { fieldPieces } from '../../geometry/lanes/fieldPieces.ts';
import type { LaneJob } from '../../geometry/lanes/lane.ts';
import { lanePlanOf } from '../../geometry/lanes/lanePlan.ts';
import type { LaneAsk } from '../../takeoff/laneHours.ts';
import type { LanesFound, LanesWanted } from './laneMessages.ts';

/*
 * Lanes are worked out only when a screen asks for them, one field after the other:
 *
 *   ask --> known? --> yes: at once
 *                      no:  in the queue; a newer ask for the same pass takes the place of the one before
 *
 * What was found is remembered as long as the outline of the field lives; zones that an edit did not touch keep theirs.
 */
const known = new WeakMap<Region, Map<string, LanesFound>>();
const listeners = new Set<() => void>();
let queue: readonly LaneAsk[] = [];
let working: LaneAsk | null = null;
let worker: Worker | null = null;
let found = 0;

/** The lanes of a field, or undefined while nobody has worked them out. */
export function lanesKnown(field: Region, job: LaneJob): LanesFound | undefined {
  return known.get(field)?.get(keyOf(job));
}

/** Calls back whenever lanes have been found. */
export function onLanesFound(on: () => void): () => void {
  listeners.add(on);
  return () => listeners.delete(on);
}

/** How many have been found so far: a new number means that there is something new to read. */
export function lanesFoundSoFar(): number {
  return found;
}

export function wantLanes(asks: readonly LaneAsk[]): void {
  for (const ask of asks) {
    if (lanesKnown(ask.field, ask.job) === undefined) {
      queue = [...queue.filter(({ hours }) => hours !== ask.hours), ask];
    }
  }
  workOn();
}

function keyOf(job: LaneJob): string {
  return JSON.stringify(job);
}

function workOn(): void {
  if (working) return;
  const next = queue.find(({ field, job }) => lanesKnown(field, job) === undefined);
  queue = queue.filter((ask) => ask !== next && lanesKnown(ask.field, ask.job) === undefined);
  if (!next) return;
  working = next;
  const wanted: LanesWanted = { pieces: fieldPieces(next.field), job: next.job };
  if (typeof Worker === 'undefined') setTimeout(() => keep(next, lanePlanOf(wanted.pieces, wanted.job)), 0);
  else laneWorker().postMessage(wanted);
}

function laneWorker(): Worker {
  if (worker) return worker;
  worker = new Worker(new URL('./lanesWorker.ts', import.meta.url), { type: 'module', name: 'lanes' });
  worker.addEventListener('message', ({ data }: MessageEvent<LanesFound>) => {
    if (working) keep(working, data);
  });
  // A worker that gave up has no lanes: there is no second opinion, and nothing else hangs on it.
  worker.addEventListener('error', () => {
    if (working) keep(working, null);
  });
  return worker;
}

function keep({ field, job }: LaneAsk, plan: LanesFound): void {
  const ofField = known.get(field) ?? new Map<string, LanesFound>();
  known.set(field, ofField.set(keyOf(job), plan));
  working = null;
  found += 1;
  for (const on of listeners) on();
  workOn();
}
