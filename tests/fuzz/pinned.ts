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
];
