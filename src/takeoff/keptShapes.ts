/*
 * Records do not change in place, so what was made of one holds as long as it lives. The engine knows what it has
 * measured by identity: the same record must give the very same shape, and the same list the very same list.
 */

/** Made once for each key. */
export function keptOf<K extends object, V>(make: (key: K) => V): (key: K) => V {
  const known = new WeakMap<K, { readonly made: V }>();
  return (key) => {
    let entry = known.get(key);
    if (!entry) {
      entry = { made: make(key) };
      known.set(key, entry);
    }
    return entry.made;
  };
}

/** Made once for each pair of keys. */
export function keptOfTwo<A extends object, B extends object, V>(make: (a: A, b: B) => V): (a: A, b: B) => V {
  const ofFirst = keptOf((a: A) => keptOf((b: B) => make(a, b)));
  return (a, b) => ofFirst(a)(b);
}

/** A list made of a list, item by item; both the items and the whole are kept. */
export function keptList<K extends object, V>(make: (key: K) => V): (list: readonly K[]) => readonly V[] {
  const one = keptOf(make);
  return keptOf((list: readonly K[]) => list.map(one));
}

/**
 * What was made of a key the last time, if what is made now says the same: compared field by field, and lists in a
 * field item by item. For what follows from more than its key.
 */
export function keptIfSame<V extends object>(): (key: object, made: V) => V {
  const known = new WeakMap<object, V>();
  return (key, made) => {
    const was = known.get(key);
    if (was && saysTheSame(was, made)) return was;
    known.set(key, made);
    return made;
  };
}

function saysTheSame(one: object, other: object): boolean {
  const [a, b] = [Object.entries(one), Object.entries(other)];
  return a.length === b.length && a.every(([name, value]) => isSame(value, (other as Record<string, unknown>)[name]));
}

function isSame(one: unknown, other: unknown): boolean {
  if (Object.is(one, other)) return true;
  if (!Array.isArray(one) || !Array.isArray(other)) return false;
  return one.length === other.length && one.every((item, i) => Object.is(item, other[i]));
}
