/** Popups and the guards round them, which are gone when they close. */
const POPUPS = '[role=dialog], [role=listbox], [role=menu], [role=presentation], [aria-hidden=true]';

let last: HTMLElement | null = null;

document.addEventListener('focusin', ({ target }) => {
  if (target instanceof HTMLElement && !target.closest(POPUPS)) last = target;
});

/**
 * Where the focus was last outside all popups: it goes back there. A dialog that opened in the place of another one, or
 * from a list, would give it to something that is gone. True: nowhere, the usual.
 */
export function lastOutside(): HTMLElement | true {
  return last?.isConnected ? last : true;
}
