export interface PageLife {
  /** The page goes out of sight, or for good: whatever waits is written now. */
  readonly onHide: () => void;
  /** True while leaving would lose something: then the browser asks first, and only then. */
  readonly wouldLose: () => boolean;
}

/** Listens to the life of the page until the answer is called. */
export function watchPageLife({ onHide, wouldLose }: PageLife): () => void {
  const onLeave = (event: BeforeUnloadEvent): void => {
    if (wouldLose()) event.preventDefault();
  };
  document.addEventListener('visibilitychange', onHide);
  window.addEventListener('pagehide', onHide);
  window.addEventListener('beforeunload', onLeave);
  return () => {
    document.removeEventListener('visibilitychange', onHide);
    window.removeEventListener('pagehide', onHide);
    window.removeEventListener('beforeunload', onLeave);
  };
}
