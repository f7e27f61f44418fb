export interface OfflineEvents {
  /** A new version is downloaded and waits. Call `useIt` to switch; the page then reloads. */
  readonly onNewVersion: (useIt: () => void) => void;
  /** Another tab switched to a new version: this page should be reloaded when its work is saved. */
  readonly onReplaced: () => void;
}

/** True where this page can be kept for use with no signal: https or localhost, in a browser that knows how. */
export function canWorkOffline(): boolean {
  return 'serviceWorker' in navigator;
}

/**
 * Keeps the app in the browser so that it opens with no signal. Answers false where that is not possible
 * (a plain-http address, an old browser); the app then works as long as the page stays open.
 */
export async function registerOffline(events: OfflineEvents): Promise<boolean> {
  if (!canWorkOffline()) return false;
  const container = navigator.serviceWorker;
  const hadController = container.controller !== null;
  let asked = false;

  container.addEventListener('controllerchange', () => {
    // The very first worker also takes control; there is nothing newer to load then.
    if (!hadController) return;
    if (asked) location.reload();
    else events.onReplaced();
  });

  try {
    const registration = await container.register('./sw.js', { scope: './' });
    const offer = (worker: ServiceWorker): void => {
      events.onNewVersion(() => {
        asked = true;
        worker.postMessage('skip-waiting');
      });
    };
    if (registration.waiting && hadController) offer(registration.waiting);
    registration.addEventListener('updatefound', () => {
      const worker = registration.installing;
      worker?.addEventListener('statechange', () => {
        if (worker.state === 'installed' && container.controller) offer(worker);
      });
    });
    return true;
  } catch {
    // A browser may know service workers and still forbid them (private windows, storage switched off).
    return false;
  }
}
