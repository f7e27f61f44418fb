import type { Point } from '../../geometry/floorShape.ts';

/** "Fit" is asked for in the top bar and answered by whoever shows the plan. */
const listeners = new Set<() => void>();

export function askFit(): void {
  for (const on of listeners) on();
}

export function onFit(on: () => void): () => void {
  listeners.add(on);
  return () => listeners.delete(on);
}

type Seer = (points: readonly Point[]) => void;
const seers = new Set<Seer>();

/** These points should be in sight: the plan moves only when one of them is not. */
export function askToSee(points: readonly Point[]): void {
  for (const on of seers) on(points);
}

export function onAskToSee(on: Seer): () => void {
  seers.add(on);
  return () => seers.delete(on);
}
