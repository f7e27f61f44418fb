import { keptOf, keptOfTwo } from './keptShapes.ts';

const placesIn = keptOf(
  (records: readonly { readonly id: string }[]) => new Map(records.map(({ id }, place) => [id, place])),
);

interface Lying<R> {
  readonly record: R;
  readonly amount: number;
}

/** Kept: quantities, hours and materials ask the same several times over. */
const placesOf = keptOfTwo((amounts: Readonly<Record<string, number>>, records: readonly { readonly id: string }[]) => {
  const places = placesIn(records);
  return Object.entries(amounts)
    .flatMap(([id, amount]) => {
      const place = places.get(id);
      return place === undefined || amount <= 0 ? [] : [{ place, amount }];
    })
    .toSorted((a, b) => a.place - b.place);
});

/**
 * Records of a list that something has been measured of, in the order of the list, with how much of each. A floor has
 * thousands of cracks and a zone some dozens: what was measured is gone through, not the list.
 */
export function lyingIn<R extends { readonly id: string }>(
  records: readonly R[],
  amounts: Readonly<Record<string, number>>,
): readonly Lying<R>[] {
  return placesOf(amounts, records).flatMap(({ place, amount }) => {
    const record = records[place];
    return record ? [{ record, amount }] : [];
  });
}

/** Records of a list that are named, in the order of the list. */
export function namedOf<R extends { readonly id: string }>(
  records: readonly R[],
  ids: readonly string[],
): readonly R[] {
  const places = placesIn(records);
  return ids
    .flatMap((id) => places.get(id) ?? [])
    .toSorted((a, b) => a - b)
    .flatMap((place) => records[place] ?? []);
}
