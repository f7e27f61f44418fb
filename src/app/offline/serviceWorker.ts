/// <reference lib="webworker" />
// Keeps the built app in the browser's cache, so that it opens with no signal. The build writes the list of
// files and a hash of their contents into this file (config/offlineShell.ts): any change gives a new worker.

declare const self: ServiceWorkerGlobalScope;
declare const __SHELL_FILES__: readonly string[];
declare const __SHELL_HASH__: string;

const PREFIX = 'slabtooth-shell-';
const CACHE = PREFIX + __SHELL_HASH__;

/** Servers send `Vary: Origin` and module scripts send an Origin: without this the cached copy is not found. */
const LOOSELY: CacheQueryOptions = { ignoreVary: true, ignoreSearch: true };

async function fillCache(): Promise<void> {
  const cache = await caches.open(CACHE);
  // 'reload' goes past the HTTP cache: a stale copy there must not end up in a fresh shell.
  await cache.addAll(__SHELL_FILES__.map((file) => new Request(file, { cache: 'reload' })));
}

async function dropOldCaches(): Promise<void> {
  const names = await caches.keys();
  const old = names.filter((name) => name.startsWith(PREFIX) && name !== CACHE);
  await Promise.all(old.map((name) => caches.delete(name)));
  await self.clients.claim();
}

async function answer(request: Request): Promise<Response> {
  const cache = await caches.open(CACHE);
  const kept = await cache.match(request, LOOSELY);
  if (kept) return kept;
  if (request.mode === 'navigate') {
    const page = await cache.match('./', LOOSELY);
    if (page) return page;
  }
  return fetch(request);
}

self.addEventListener('install', (event) => event.waitUntil(fillCache()));
self.addEventListener('activate', (event) => event.waitUntil(dropOldCaches()));

self.addEventListener('fetch', (event) => {
  const { request } = event;
  if (request.method !== 'GET') return;
  if (!request.url.startsWith(self.registration.scope)) return;
  event.respondWith(answer(request));
});

// A new version waits until the person says so: nobody's screen changes in the middle of a drag.
self.addEventListener('message', (event) => {
  if (event.data === 'skip-waiting') event.waitUntil(self.skipWaiting());
});
