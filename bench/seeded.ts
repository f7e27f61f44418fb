/** Numbers in [0, 1) from a seed: the same on every machine. Mulberry32, a published public-domain generator (from memory). */
export interface Seeded {
  readonly next: () => number;
  /** Evenly between two bounds. */
  readonly between: (least: number, most: number) => number;
  /** A whole number, both bounds included. */
  readonly whole: (least: number, most: number) => number;
}

export function seeded(seed: number): Seeded {
  let state = seed;
  const next = (): number => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
  const between = (least: number, most: number): number => least + next() * (most - least);
  return { next, between, whole: (least, most) => Math.floor(between(least, most + 1)) };
}
