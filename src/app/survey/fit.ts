/** "Fit" is asked for in the top bar and answered by whoever shows the plan. */
const listeners = new Set<() => void>();

export function askFit(): void {
  for (const on of listeners) on();
}

export function onFit(on: () => void): () => void {
  listeners.add(on);
  return () => listeners.delete(on);
}
