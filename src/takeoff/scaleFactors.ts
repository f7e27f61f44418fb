import { fixed } from './formula.ts';
import type { Term } from './line.ts';
import type { RateBook } from './rates/rateBook.ts';

/** Middles of the classes of room size, m2 net floor of the zone, and of obstructions in 100 m2; common practice, no source. */
const ROOM_M2 = [10, 32, 100, 450, 2000] as const;
const PER_100_M2 = [0.5, 3, 7, 15] as const;

/**
 * A factor between two middles: linear in the logarithm of the size, flat outside them. Steps at class borders would
 * let more floor take fewer hours; this does not.
 */
export function logLinear(at: number, middles: readonly number[], factors: readonly number[]): number {
  const above = middles.findIndex((middle) => at <= middle);
  if (above === 0) return factors[0] ?? 1;
  if (above === -1) return factors.at(-1) ?? 1;
  const [low, high] = [middles[above - 1] ?? 1, middles[above] ?? 1];
  const share = Math.log(at / low) / Math.log(high / low);
  const [from, to] = [factors[above - 1] ?? 1, factors[above] ?? 1];
  return from + (to - from) * share;
}

/** Factor on machine rates for the size of a zone, m2. */
export function roomTerm(book: RateBook, netM2: number): Term {
  return scaled(book, 'room size', `for ${netM2.toFixed(1)} m2`, netM2, ROOM_M2, 'factors/room');
}

/** Factor on machine rates for what stands about, pieces in 100 m2. */
export function obstructionTerm(book: RateBook, count: number, netM2: number): Term {
  const density = netM2 > 0 ? (count * 100) / netM2 : 0;
  const name = `${density.toFixed(1)} in 100 m2`;
  return scaled(book, 'obstructions', name, density, PER_100_M2, 'factors/obstructions');
}

function scaled(
  book: RateBook,
  name: string,
  detail: string,
  at: number,
  middles: readonly number[],
  code: string,
): Term {
  const rows = middles.map((middle) => book.rate(`${code}/${middle}`));
  const value = logLinear(
    at,
    middles,
    rows.map((row) => row.likely),
  );
  const nearest = rows[middles.findIndex((middle) => at <= middle)] ?? rows.at(-1);
  return {
    name: `${name}, ${detail}`,
    value: fixed(value),
    unit: 'factor',
    source: nearest?.source ?? 'arithmetic',
    provenance: nearest?.provenance ?? 'A',
    fromMemory: nearest?.fromMemory ?? false,
    from: nearest?.record ?? null,
  };
}
