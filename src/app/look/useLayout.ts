import { useSyncExternalStore } from 'react';

/** Which grid the screen gets: under 640 wide phone, to 1099 tablet, from 1100 desk; a low wide screen is a phone on its side. */
export type Layout = 'phone' | 'phoneWide' | 'tablet' | 'desk';

const queries = [
  ['phoneWide', '(max-height: 519px) and (min-aspect-ratio: 13/10) and (max-width: 1099px)'],
  ['phone', '(max-width: 639px)'],
  ['tablet', '(max-width: 1099px)'],
] as const;

export function layoutNow(): Layout {
  return queries.find(([, query]) => matchMedia(query).matches)?.[0] ?? 'desk';
}

function subscribe(on: () => void): () => void {
  const lists = queries.map(([, query]) => matchMedia(query));
  for (const list of lists) list.addEventListener('change', on);
  return () => {
    for (const list of lists) list.removeEventListener('change', on);
  };
}

export function useLayout(): Layout {
  return useSyncExternalStore(subscribe, layoutNow);
}
