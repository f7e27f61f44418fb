import type { Failure } from './runPlans.ts';

/*
 * Plans of the first 20,000 on which the engine is known to be wrong, by family, seed and law, and by how much. They are
 * told and not counted, so that a new fault is seen at once. Nothing is put here without a look at its size, and whoever
 * mends one moves it to pinned.ts.
 *
 * Most have things that miss each other by less than a hair (1e-9 to 0.05 mm), or a machine that fits to the last bit.
 * Where other engines find less field ("oracles") the reason is not known.
 */
const OPEN: readonly string[] = [
  'columnsOnOutline 107 mirrored: rest fieldM2: 9.215905 and 9.216507 differ by 0.000601',
  'columnsOnOutline 124 splitEdges: rest fieldM2: 54.096635 and 54.096627 differ by 0.000007',
  'columnsOnOutline 200 oracles: floor field: 0, oracles 2.102345',
  'columnsOnOutline 207 mirrored: rest faces wall: 5.938506 and 5.944522 differ by 0.006016',
  'columnsOnOutline 326 quarterTurned: rest fieldM2: 24.986884 and 25.001435 differ by 0.014551',
  'columnsOnOutline 566 quarterTurned: rest fieldM2: 65.593498 and 65.589742 differ by 0.003755',
  'columnsOnOutline 568 turnedAnyWay: rest faces hidden: 27.899998 and 28.399999 differ by 0.500001',
  'columnsOnOutline 660 oracles: floor field: 0.947484, oracles 0.906408',
  'columnsOnWalls 306 quarterTurned: rest faces wall: 10.159869 and 10.200664 differ by 0.040794',
  'columnsOnWalls 530 widerHead: rest: field 34.660850 grew to 34.740436',
  'cracksAlongEdges 334 zonesGone: line c0: 9.398338 and 9.398338 differ by 6.208885e-7',
  'crowded 180 oracles: floor field: 22.130925, oracles 22.130625',
  'crowded 280 oracles: floor covered: 32.984476, oracles 32.970980',
  'crowded 480 oracles: floor field: 16.828875, oracles 16.806055',
  'crowded 500 oracles: floor field: 30.833659, oracles 30.832479',
  'doorsAtEnds 490 widerHead: rest: field 20.541983 grew to 20.542264',
  'doorsAtEnds 630 widerHead: rest: field 8.885766 grew to 8.892666',
  'duplicateColumns 508 turnedAnyWay: rest tightM2: 0.417079 and 0.417079 differ by 3.093593e-8',
  'entrancesAnywhere 180 oracles: floor field: 12.770917, oracles 5.637369',
  'entrancesAnywhere 228 turnedAnyWay: rest line c0: 8.808131 and 8.808741 differ by 0.000610',
  'entrancesAnywhere 470 widerHead: rest: field 29.290893 grew to 29.305993',
  'extremeSizes 600 outlines: outline of z1 tight: 0 and 2.624999e-7 differ by 2.624999e-7',
  'findingsOverlap 646 quarterTurned: rest fieldM2: 20.923857 and 20.923954 differ by 0.000097',
  'keyholes 7 mirrored: rest fieldM2: 4.070529 and 1.838436 differ by 2.232093',
  'manySlabs 6 quarterTurned: rest fieldM2: 23.488064 and 23.488064 differ by 2.712523e-7',
  'manySlabs 88 turnedAnyWay: rest fieldM2: 17.355283 and 18.079630 differ by 0.724346',
  'manySlabs 107 mirrored: rest faces wall: 19.297410 and 19.531606 differ by 0.234196',
  'manySlabs 170 widerHead: rest: field 43.267987 grew to 43.267990',
  'manySlabs 447 mirrored: rest stripM2: 0.919204 and 0.909285 differ by 0.009918',
  'manySlabs 490 widerHead: rest: field 61.837039 grew to 61.844881',
  'manySlabs 520 moved: rest fieldM2: 8.171351 and 8.171351 differ by 6.186473e-8',
  'manySlabs 608 turnedAnyWay: z1 faces drop: 3.95 and 3.449999 differ by 0.500000',
  'manySlabs 641 otherDirection: rest stripM2: 4.075840 and 4.095707 differ by 0.019867',
  'nearCollinear 8 turnedAnyWay: rest fieldM2: 13.403515 and 13.387991 differ by 0.015523',
  'nearCollinear 140 moved: rest fieldM2: 32.818346 and 32.818346 differ by 3.541788e-7',
  'nearCollinear 180 moved: rest fieldM2: 32.198313 and 32.198313 differ by 3.844062e-8',
  'nearCollinear 186 quarterTurned: rest fieldM2: 19.188185 and 19.133267 differ by 0.054917',
  'nearCollinear 307 mirrored: z1 fieldM2: 0.000955 and 0.000955 differ by 1.950997e-8',
  'nearCollinear 327 mirrored: z0 fieldM2: 4.254398 and 4.254999 differ by 0.000601',
  'nearCollinear 346 quarterTurned: rest fieldM2: 18.210332 and 18.210332 differ by 6.287371e-7',
  'nearCollinear 428 turnedAnyWay: rest fieldM2: 3.871495 and 3.868142 differ by 0.003353',
  'nearCollinear 440 oracles: floor field: 3.847138, oracles 3.455265',
  'nearCollinear 487 mirrored: rest fieldM2: 21.147785 and 21.147785 differ by 5.308227e-8',
  'nearCollinear 546 quarterTurned: z1 fieldM2: 1.455663 and 1.455663 differ by 2.138393e-7',
  'nearCollinear 627 mirrored: rest fieldM2: 22.117410 and 22.136630 differ by 0.019219',
  'nearCollinear 667 mirrored: rest fieldM2: 36.709223 and 36.714431 differ by 0.005207',
  'nearCollinear 687 mirrored: rest fieldM2: 29.846184 and 29.846787 differ by 0.000603',
  'nested 566 quarterTurned: z6 faces obstruction: 6.562499 and 6.600000 differ by 0.037500',
  'oddTurned 180 oracles: floor field: 2.605845, oracles 2.604744',
  'oddTurned 240 oracles: floor field: 22.263763, oracles 22.246050',
  'oneCorner 340 oracles: floor field: 26.693578, oracles 26.724083',
  'sharedEdges 568 turnedAnyWay: z1 stripM2: 0.454424 and 0.454424 differ by 1.291276e-8',
  'slivers 107 mirrored: rest fieldM2: 28.390949 and 28.390949 differ by 9.103421e-8',
  'slivers 200 moved: rest fieldM2: 0 and 33.835474 differ by 33.835474',
  'slivers 208 turnedAnyWay: rest tightM2: 1.035335 and 1.035335 differ by 1.315427e-8',
  'slivers 287 mirrored: rest fieldM2: 33.389384 and 33.392722 differ by 0.003338',
  'slivers 364 splitEdges: rest fieldM2: 33.024907 and 33.032761 differ by 0.007854',
  'slivers 367 mirrored: rest fieldM2: 30.224465 and 30.224465 differ by 6.783973e-8',
  'slivers 530 widerHead: rest: field 26.111782 grew to 26.111782',
  'slivers 547 mirrored: rest fieldM2: 48.895503 and 48.895533 differ by 0.000029',
  'slivers 586 quarterTurned: rest fieldM2: 45.363217 and 45.347784 differ by 0.015433',
  'slivers 667 mirrored: rest fieldM2: 18.858531 and 18.866756 differ by 0.008225',
  'teeJunctions 47 mirrored: rest fieldM2: 49.806372 and 49.806372 differ by 5.186475e-8',
  'teeJunctions 460 moved: rest fieldM2: 4.053894 and 4.053894 differ by 3.970024e-8',
  'touchingCorners 680 moved: rest fieldM2: 18.415019 and 18.415019 differ by 2.906563e-7',
];

const known: ReadonlySet<string> = new Set(OPEN.map((line) => line.split(':')[0] as string));

/** True for a failure that is known and not mended yet. */
export function isOpen({ family, seed, law }: Pick<Failure, 'family' | 'seed' | 'law'>): boolean {
  return known.has(`${family} ${seed} ${law}`);
}
