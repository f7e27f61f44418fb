import { type Seeded, seeded } from '../../bench/seeded.ts';

/** Chance from a seed, and the few throws that plans are made with. */
export interface Dice extends Seeded {
  readonly chance: (share: number) => boolean;
  readonly pick: <T>(list: readonly [T, ...T[]]) => T;
  /** A multiple of `by` between two bounds, so that things meet exactly. */
  readonly step: (least: number, most: number, by?: number) => number;
  /** Of the order of a power of ten between two exponents, of either sign. */
  readonly tiny: (leastPower: number, mostPower: number) => number;
  /** `count` times what `make` makes. */
  readonly many: <T>(least: number, most: number, make: (i: number) => T) => T[];
}

export function diceOf(word: string, seed: number): Dice {
  const { next, between, whole } = seeded(hashOf(word) ^ Math.imul(seed + 1, 0x9e3779b1));
  return {
    next,
    between,
    whole,
    chance: (share) => next() < share,
    pick: (list) => list[whole(0, list.length - 1)] ?? list[0],
    step: (least, most, by = 50) => whole(Math.ceil(least / by), Math.floor(most / by)) * by,
    tiny: (leastPower, mostPower) => (next() < 0.5 ? -1 : 1) * 10 ** between(leastPower, mostPower),
    many: (least, most, make) => Array.from({ length: whole(least, most) }, (_, i) => make(i)),
  };
}

/** FNV-1a, a published public-domain hash (from memory): families differ though their seeds are the same. */
function hashOf(word: string): number {
  let hash = 0x811c9dc5;
  for (const letter of word) hash = Math.imul(hash ^ (letter.codePointAt(0) ?? 0), 0x01000193);
  return hash;
}
