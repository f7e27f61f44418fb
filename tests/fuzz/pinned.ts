import type { FamilyName } from './families.ts';

/** Plans on which the engine once was wrong, and what it was. They run first, with every law. */
export const PINNED: readonly { readonly family: FamilyName; readonly seed: number; readonly was: string }[] = [
  {
    family: 'oddTurned',
    seed: 36,
    was: 'a corner at the very middle of a slab of the sweep was in neither half: net 40 for 14 m2',
  },
  { family: 'sharedEdges', seed: 11, was: 'the same: net 32 for 42 m2' },
  { family: 'duplicatePoints', seed: 46, was: 'the same: net 44 for 16 m2' },
  {
    family: 'nearCollinear',
    seed: 0,
    was: 'an edge that rises by 1e-9 mm was asked beyond its end and left a spike, which the head grew from',
  },
  { family: 'duplicateColumns', seed: 50, was: 'the same: half of the field lost' },
  {
    family: 'findingsOverlap',
    seed: 57,
    was: 'a zone whose following machine got no floor kept that machine after it was sent home',
  },
  {
    family: 'manySlabs',
    seed: 139,
    was: 'a column whose slab was taken away still took its area off the floor that was left',
  },
  {
    family: 'nested',
    seed: 24,
    was: 'hard edges of overlapping slabs were not cut where they cross, so faces were joined across each other',
  },
  {
    family: 'oneCorner',
    seed: 28,
    was: 'where several things meet in one corner, rounding chose which face went on into which',
  },
  {
    family: 'entrancesAnywhere',
    seed: 338,
    was: 'metres of hidden faces whose kinds add up the same in another order were taken for the same',
  },
  {
    family: 'outOfScopeAreas',
    seed: 220,
    was: 'walls beside floor that is out of scope kept no machine off: 27 for 24 m2 of field',
  },
  {
    family: 'nearCollinear',
    seed: 366,
    was: 'between an edge that is all but level and its own band the head stood on floor 1e-9 mm thick',
  },
  { family: 'manySlabs', seed: 363, was: 'two slabs drew one edge, which became three faces' },
  {
    family: 'crowded',
    seed: 670,
    was: 'behind a column in an open edge there was no floor to drive round it on: 16.7 for 17.2 m2 of field',
  },
  {
    family: 'oddTurned',
    seed: 170,
    was: 'the side of a gap, drawn along an open edge where no wall stands, was a face that kept the head off',
  },
  {
    family: 'doorsAtEnds',
    seed: 550,
    was: 'an edge that rose by 2e-9 mm left a bridge of no height over a wall, and the head went along it',
  },
  {
    family: 'openEdges',
    seed: 110,
    was: 'between two open edges the floor did not run on round their corner, and a head of 20 m found no place',
  },
  {
    family: 'openEdges',
    seed: 370,
    was: 'a wall across an open edge, seen from behind, kept no head off the slab',
  },
  {
    family: 'nested',
    seed: 566,
    was: 'an all-but-level edge went past its corner where two heights were taken for one, and the head reached from its tip',
  },
  { family: 'manySlabs', seed: 641, was: 'the face drawn first took the next one, round the end of an edge and back' },
  { family: 'slivers', seed: 287, was: 'two faces 0.04 mm off each other met where the first of them ended' },
  {
    family: 'columnsOnOutline',
    seed: 568,
    was: 'a column against an all-but-level open edge was a face or none, as rounding had it',
  },
  { family: 'nested', seed: 646, was: 'the tip between a face and the round end of a band was cut off as a skin' },
  { family: 'manySlabs', seed: 6, was: 'a nanometre of field seen from a face parted the run of a corner from it' },
  { family: 'columnsOnOutline', seed: 124, was: 'a corner in the middle of an edge moved the corner at its end' },
  {
    family: 'duplicatePoints',
    seed: 166,
    was: 'an edge that rises by 1e-9 mm led past the band it crosses, and a head went where there is no width',
  },
  {
    family: 'entrancesAnywhere',
    seed: 180,
    was: 'rooms metres apart were one: a side that is all but level was asked at the height of another room',
  },
  {
    family: 'columnsOnOutline',
    seed: 200,
    was: 'the floor nearest to an entrance was the tip of a wedge, and straight on from there is none: no field',
  },
  {
    family: 'manySlabs',
    seed: 490,
    was: 'bands that go behind their faces took floor there, behind walls of no thickness',
  },
  { family: 'slivers', seed: 364, was: 'a sheet too thin to have sides kept its end, a face of 0.003 mm' },
  {
    family: 'columnsOnOutline',
    seed: 326,
    was: 'a column drawn against an all but level edge where the floor runs on had a face or none, as rounding chose',
  },
  { family: 'manySlabs', seed: 88, was: 'rounding chose whether an edge of two slabs is a drop or a stop' },
  {
    family: 'manySlabs',
    seed: 188,
    was: 'a side of an apron ran along a face up to the corner of the next, and rounding chose whether it lies behind that one',
  },
];
