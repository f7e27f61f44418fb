import { keptOf, keptOfTwo } from './keptShapes.ts';

const placesIn = keptOf(
  (records: readonly { readonly id: string }[]) => new Map(records.map(({ id }, place) => [id, place])),
);

export interface Lying<R> {
  readonly record: R;
  readonly amount: number;
}

type Amounts = Readonly<Record<string, number>>;

/** Kept: quantities, hours and materials ask the same several times over. */
const lying = keptOfTwo((amounts: Amounts, records: readonly { readonly id: string }[]): readonly Lying<unknown>[] => {
  const places = placesIn(records);
  return Object.entries(amounts)
    .flatMap(([id, amount]) => {
      const place = places.get(id);
      return place === undefined || amount <= 0 ? [] : [{ place, amount }];
    })
    .toSorted((a, b) => a.place - b.place)
    .map(({ place, amount }) => ({ record: records[place], amount }));
});

/**
 * Records of a list that something has been measured of, in the order of the list, with how much of each: the same list
 * each time. A floor has thousands of cracks and a zone some dozens: what was measured is gone through, not the list.
 */
export function lyingIn<R extends { readonly id: string }>(
  records: readonly R[],
  amounts: Amounts,
): readonly Lying<R>[] {
  return lying(amounts, records) as readonly Lying<R>[];
}

/** Records of a list that are named, in the order of the list: the same list each time. */
export function namedOf<R extends { readonly id: string }>(
  records: readonly R[],
  ids: readonly string[],
): readonly R[] {
  return namedIn(ids, records) as readonly R[];
}

/** Kept: edges, spots and hours ask what stands in a zone, each for itself. */
const namedIn = keptOfTwo((ids: readonly string[], records: readonly { readonly id: string }[]): readonly unknown[] => {
  const places = placesIn(records);
  return ids
    .flatMap((id) => places.get(id) ?? [])
    .toSorted((a, b) => a - b)
    .flatMap((place) => records[place] ?? []);
});
