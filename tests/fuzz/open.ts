import type { Failure } from './runPlans.ts';

/*
 * Plans of the first 20,000 on which the engine is known to be wrong, by family, seed and law, and by how much. They are
 * told and not counted, so that a new fault is seen at once. Nothing is put here without a look at its size, and whoever
 * mends one moves it to pinned.ts.
 *
 * Most have things that miss each other by less than a hair (1e-9 to 0.05 mm), or a machine that fits to the last bit.
 */
const OPEN: readonly string[] = [
  'cracksAlongEdges 334 zonesGone: line c0: 9.398338 and 9.398339 differ by 6.2e-07',
  'entrancesAnywhere 228 turnedAnyWay: rest line c0: 8.808131 and 8.808742 differ by 0.00061',
  'manySlabs 188 turnedAnyWay: rest fieldM2: 30.5252 and 30.022679 differ by 0.502521',
];

const known: ReadonlySet<string> = new Set(OPEN.map((line) => line.split(':')[0] as string));

/** True for a failure that is known and not mended yet. */
export function isOpen({ family, seed, law }: Pick<Failure, 'family' | 'seed' | 'law'>): boolean {
  return known.has(`${family} ${seed} ${law}`);
}
