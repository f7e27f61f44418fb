/** Figures typed while the hand is on the plan go into the Length box: whoever shows that box listens here. */
const listeners = new Set<() => void>();

export function onTyping(on: () => void): () => void {
  listeners.add(on);
  return () => listeners.delete(on);
}

/** Moves the caret to the box before the key lands, so that the figure is not lost. False when no box is shown. */
export function startTyping(): boolean {
  for (const on of listeners) on();
  return listeners.size > 0;
}
