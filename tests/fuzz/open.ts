import type { Failure } from './runPlans.ts';

/*
 * Plans of the first 20,000 on which the engine is known to be wrong, by family, seed and law, and by how much. They are
 * told and not counted, so that a new fault is seen at once. Nothing is put here without a look at its size, and whoever
 * mends one moves it to pinned.ts.
 *
 * Both are lines along edges, by less than a millimetre.
 */
const OPEN: readonly string[] = [
  'cracksAlongEdges 334 zonesGone: line c0: 9.398338 and 9.398339 differ by 6.2e-07',
  'duplicateColumns 508 turnedAnyWay: rest tightM2: 0.417079 and 0.417079 differ by 3.1e-08',
  'entrancesAnywhere 180 quarterTurned: z0 fieldM2: 6.972775 and 6.972775 differ by 2.6e-08',
  'entrancesAnywhere 228 turnedAnyWay: rest line c0: 8.808131 and 8.808742 differ by 0.00061',
  'manySlabs 6 quarterTurned: rest fieldM2: 23.488064 and 23.488065 differ by 2.7e-07',
  'nearCollinear 286 quarterTurned: rest fieldM2: 29.353684 and 29.353682 differ by 1.6e-06',
  'nested 646 turnedAnyWay: rest fieldM2: 19.771594 and 19.771594 differ by 2.5e-08',
  'slivers 208 turnedAnyWay: rest tightM2: 1.086271 and 1.086271 differ by 1.3e-08',
];

const known: ReadonlySet<string> = new Set(OPEN.map((line) => line.split(':')[0] as string));

/** True for a failure that is known and not mended yet. */
export function isOpen({ family, seed, law }: Pick<Failure, 'family' | 'seed' | 'law'>): boolean {
  return known.has(`${family} ${seed} ${law}`);
}
