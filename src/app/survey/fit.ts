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

/** How near the plan has to be, and how much of it about the points is shown if it is not. */
export interface CloseUp {
  readonly leastPxPerMm: number;
  readonly roomMm: number;
}

type Seer = (points: readonly Point[], closeUp?: CloseUp) => void;
const seers = new Set<Seer>();

/** These points should be in sight, near enough if that is asked: the plan moves only when it has to. */
export function askToSee(points: readonly Point[], closeUp?: CloseUp): void {
  for (const on of seers) on(points, closeUp);
}

export function onAskToSee(on: Seer): () => void {
  seers.add(on);
  return () => seers.delete(on);
}
