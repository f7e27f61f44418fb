import type { Failure } from './runPlans.ts';

/*
 * Plans of the first 20,000 on which the engine is known to be wrong, by family, seed and law, and by how much. They are
 * told and not counted, so that a new fault is seen at once. Nothing is put here without a look at its size, and whoever
 * mends one moves it to pinned.ts.
 *
 * Most have things that miss each other by less than a hair (1e-9 to 0.05 mm), or a machine that fits to the last bit.
 */
const OPEN: readonly string[] = [
  'columnsOnOutline 200 oracles: floor field: 0, oracles 2.102345',
  'columnsOnWalls 530 widerHead: rest: field 34.66085 grew to 34.740437',
  'cracksAlongEdges 334 zonesGone: line c0: 9.398338 and 9.398339 differ by 6.2e-07',
  'crowded 688 turnedAnyWay: rest fieldM2: 13.941423 and 13.941468 differ by 0.000045',
  'crowded 480 oracles: floor field: 16.816775, oracles 16.806056',
  'crowded 500 oracles: floor field: 30.833659, oracles 30.83248',
  'doorsAtEnds 490 widerHead: rest: field 20.541983 grew to 20.542264',
  'doorsAtEnds 630 widerHead: rest: field 8.885767 grew to 8.892667',
  'entrancesAnywhere 180 oracles: floor field: 12.770918, oracles 5.637369',
  'entrancesAnywhere 228 turnedAnyWay: rest line c0: 8.808131 and 8.808742 differ by 0.00061',
  'entrancesAnywhere 470 widerHead: rest: field 29.290893 grew to 29.305993',
  'findingsOverlap 646 quarterTurned: rest fieldM2: 20.923857 and 20.923955 differ by 0.000098',
  'columnsOnOutline 107 mirrored: rest fieldM2: 9.215301 and 9.215294 differ by 7.1e-06',
  'columnsOnOutline 124 splitEdges: rest tightM2: 0.000024 and 0.000024 differ by 1.5e-07',
  'columnsOnOutline 207 mirrored: rest fieldM2: 4.264517 and 4.264517 differ by 6.6e-08',
  'columnsOnOutline 568 turnedAnyWay: rest faces hidden: 27.899999 and 28.4 differ by 0.500001',
  'columnsOnOutline 587 mirrored: rest faces wall: 3.40596 and 3.380163 differ by 0.025797',
  'cracksAlongEdges 334 zonesGone: line c0: 9.398338 and 9.398339 differ by 6.2e-07',
  'crowded 688 turnedAnyWay: rest fieldM2: 13.941423 and 13.941468 differ by 0.000045',
  'entrancesAnywhere 228 turnedAnyWay: rest line c0: 8.808131 and 8.808742 differ by 0.00061',
  'extremeSizes 600 outlines: outline of z1 tight: 0 and 2.6e-07 differ by 2.6e-07',
  'keyholes 7 mirrored: rest fieldM2: 4.070529 and 1.838436 differ by 2.232093',
  'manySlabs 6 quarterTurned: rest fieldM2: 23.48803 and 23.488065 differ by 0.000035',
  'manySlabs 107 mirrored: rest faces wall: 19.29741 and 19.531607 differ by 0.234197',
  'extremeSizes 600 outlines: outline of z1 tight: 0 and 2.6e-07 differ by 2.6e-07',
  'manySlabs 170 widerHead: rest: field 43.267987 grew to 43.26799',
  'manySlabs 490 widerHead: rest: field 61.834736 grew to 61.844881',
  'manySlabs 447 mirrored: rest stripM2: 0.919204 and 0.909286 differ by 0.009918',
  'manySlabs 520 moved: rest fieldM2: 8.171352 and 8.171352 differ by 3.1e-08',
  'manySlabs 641 otherDirection: rest stripM2: 4.075841 and 4.095708 differ by 0.019867',
  'nearCollinear 307 mirrored: z1 stripM2: 0.160112 and 0.160112 differ by 2.0e-08',
  'nearCollinear 627 mirrored: rest fieldM2: 22.117411 and 22.117386 differ by 0.000025',
  'nearCollinear 687 mirrored: rest stripM2: 4.033309 and 4.033307 differ by 1.8e-06',
  'nested 646 quarterTurned: rest fieldM2: 19.771594 and 19.771514 differ by 0.00008',
  'oddTurned 36 quarterTurned: rest stripM2: 3.328813 and 3.334292 differ by 0.005479',
  'oddTurned 36 turnedAnyWay: rest stripM2: 3.328813 and 3.334292 differ by 0.005479',
  'roundThings 490 oracles: floor field: 16.146736, oracles 16.202633',
  'slivers 107 mirrored: rest fieldM2: 28.39095 and 28.39095 differ by 4.3e-08',
  'slivers 287 mirrored: rest fieldM2: 33.389384 and 33.389375 differ by 8.9e-06',
  'slivers 667 mirrored: rest stripM2: 1.657874 and 1.657873 differ by 9.5e-08',
  'oddTurned 36 moreLap: strip 2.766315 shrank to 2.505973',
  'oddTurned 180 oracles: floor field: 2.605751, oracles 2.604745',
  'oneCorner 340 oracles: floor field: 26.693578, oracles 26.724084',
];

const known: ReadonlySet<string> = new Set(OPEN.map((line) => line.split(':')[0] as string));

/** True for a failure that is known and not mended yet. */
export function isOpen({ family, seed, law }: Pick<Failure, 'family' | 'seed' | 'law'>): boolean {
  return known.has(`${family} ${seed} ${law}`);
}
