/*
 * Runs inside the page, before the app. It watches from outside and changes nothing:
 *
 *   pointermove (its own time stamp) --> preview posted to the worker (asks are counted) --> the sill says which ask
 *   its numbers answer, and the frame that shows it has been drawn
 */

/** What was seen, ms on the page's clock. */
export interface Watched {
  /** For each move of the hand: until areas and lengths that answer it were on the screen; null: never. */
  readonly delaysMs: readonly (number | null)[];
  /** How many different sets of figures stood on the sill: a drag that changes nothing would be a lie. */
  readonly figures: number;
}

export interface Watch {
  start(): void;
  stop(): Watched;
}

declare global {
  interface Window {
    dragWatch: Watch;
  }
}

/** Self-contained: it is sent to the page as text. */
export function watchPage(): void {
  interface Move {
    readonly atMs: number;
    ask: number | null;
  }
  let moves: Move[] = [];
  /** When the numbers that answer an ask, or a later one, were first on the screen. */
  let shown: { readonly ask: number; readonly atMs: number }[] = [];
  let asked = 0;
  let watching = false;
  const figures = new Set<string>();

  const post = Worker.prototype.postMessage;
  let last: unknown = null;
  Worker.prototype.postMessage = function postCounted(this: Worker, ...given: [unknown, StructuredSerializeOptions?]) {
    const [message] = given;
    const { kind } = message as { readonly kind?: unknown };
    // One ask may go to two workers; other workers are asked other things.
    if (message !== last && typeof kind === 'string' && ['load', 'change', 'preview'].includes(kind)) {
      last = message;
      asked += 1;
      for (const move of moves) move.ask ??= asked;
    }
    post.apply(this, given);
  } as typeof post;

  addEventListener(
    'pointermove',
    (event) => {
      if (!watching) return;
      const all = event.getCoalescedEvents();
      for (const each of all.length > 0 ? all : [event]) moves.push({ atMs: each.timeStamp, ask: null });
    },
    true,
  );

  const onSill = new MutationObserver((changes) => {
    if (!watching) return;
    for (const { target } of changes) {
      const ask = Number((target as HTMLElement).dataset['answers']);
      figures.add(target.textContent ?? '');
      // In the frame that follows it is drawn; a task after that, it has been.
      requestAnimationFrame(() => setTimeout(() => shown.push({ ask, atMs: performance.now() }), 0));
    }
  });

  window.dragWatch = {
    start() {
      moves = [];
      shown = [];
      figures.clear();
      onSill.disconnect();
      for (const sill of document.querySelectorAll('[data-answers]'))
        onSill.observe(sill, { attributes: true, attributeFilter: ['data-answers'] });
      watching = true;
    },
    stop() {
      watching = false;
      const delaysMs = moves.map(({ atMs, ask }) => {
        const answer = ask === null ? undefined : shown.find((each) => each.ask >= ask);
        return answer ? answer.atMs - atMs : null;
      });
      return { delaysMs, figures: figures.size };
    },
  };
}
