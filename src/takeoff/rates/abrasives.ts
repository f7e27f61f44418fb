import { PRACTICE, type Sourced } from './rateRow.ts';

export type AbrasiveFit = 'diamond' | 'cup' | 'screen' | 'paper' | 'bush' | 'shot';

export interface AbrasiveRow extends Sourced {
  readonly id: string;
  readonly term: string;
  readonly fits: AbrasiveFit;
  readonly grainMm?: readonly [low: number, high: number];
  /** What it gives, read with caution. */
  readonly csp: readonly [min: number, max: number];
  /** What installers get on ordinary to soft concrete; disputed, so it asks for a mock-up. */
  readonly cspPractice?: readonly [min: number, max: number];
  readonly use?: string;
}

/** Grit is not profile: pressure, speed, bond and concrete decide. */
export const abrasives: readonly AbrasiveRow[] = [
  {
    id: 'd6',
    term: 'Metal-bond diamond 6-16',
    fits: 'diamond',
    grainMm: [1.2, 3.4],
    csp: [3, 3],
    cspPractice: [3, 4],
    use: 'open soft paste or remove thin coating; scratches telegraph',
    ...PRACTICE,
  },
  {
    id: 'd16',
    term: 'Metal-bond diamond 16-20',
    fits: 'diamond',
    grainMm: [0.85, 1.2],
    csp: [2, 3],
    cspPractice: [3, 4],
    use: 'usual first cut for high build; one page read says CSP 2',
    ...PRACTICE,
  },
  {
    id: 'd30',
    term: 'Metal-bond diamond 25-30',
    fits: 'diamond',
    grainMm: [0.55, 0.71],
    csp: [2, 2],
    cspPractice: [3, 4],
    use: 'usual for thin film and high build',
    ...PRACTICE,
  },
  {
    id: 'd40',
    term: 'Metal-bond diamond 40',
    fits: 'diamond',
    grainMm: [0.4, 0.43],
    csp: [1, 2],
    cspPractice: [3, 4],
    use: 'one page read says CSP 1',
    ...PRACTICE,
  },
  {
    id: 'd80',
    term: 'Metal-bond diamond 60-80',
    fits: 'diamond',
    grainMm: [0.18, 0.25],
    csp: [1, 2],
    cspPractice: [3, 4],
    use: 'disputed: cautious 1-2, practice 3-4 on ordinary concrete; mock-up decides',
    ...PRACTICE,
  },
  {
    id: 'd120',
    term: 'Metal-bond diamond 100-150',
    fits: 'diamond',
    grainMm: [0.1, 0.15],
    csp: [1, 1],
    cspPractice: [1, 2],
    use: 'refine; too smooth for film over 0.25 mm',
    ...PRACTICE,
  },
  {
    id: 'resin',
    term: 'Resin-bond 50 and finer',
    fits: 'diamond',
    grainMm: [0, 0.3],
    csp: [0, 1],
    use: 'polishing only',
    ...PRACTICE,
  },
  {
    id: 'pcd',
    term: 'Polycrystalline scraper',
    fits: 'diamond',
    csp: [2, 3],
    use: 'takes off coating; finish with diamonds',
    ...PRACTICE,
  },
  { id: 'cup_single', term: 'Cup wheel single row', fits: 'cup', csp: [2, 3], use: 'fast, rougher', ...PRACTICE },
  { id: 'cup_double', term: 'Cup wheel double row', fits: 'cup', csp: [1, 3], use: 'slower, flatter', ...PRACTICE },
  { id: 'cup_turbo', term: 'Cup wheel continuous turbo', fits: 'cup', csp: [1, 2], use: 'finer', ...PRACTICE },
  { id: 'screen60', term: 'Screen 60-80', fits: 'screen', csp: [0, 1], use: 'de-gloss, feather', ...PRACTICE },
  { id: 'screen100', term: 'Screen 80-120', fits: 'screen', csp: [0, 0], use: 'between coats', ...PRACTICE },
  { id: 'paper16', term: 'Sandpaper 16-36', fits: 'paper', csp: [1, 2], use: 'residue, thin paint', ...PRACTICE },
  { id: 'paper60', term: 'Sandpaper 60-100', fits: 'paper', csp: [0, 1], ...PRACTICE },
  { id: 'bush', term: 'Bush-hammer roller 30-60 points', fits: 'bush', csp: [4, 6], ...PRACTICE },
  {
    id: 'shot_s170',
    term: 'Steel shot S-170',
    fits: 'shot',
    grainMm: [0.43, 0.43],
    csp: [2, 3],
    use: 'size by SAE-J444 (read second-hand); profile by practice',
    ...PRACTICE,
  },
  {
    id: 'shot_s230',
    term: 'Steel shot S-230',
    fits: 'shot',
    grainMm: [0.58, 0.58],
    csp: [3, 3],
    use: 'size by SAE-J444 (read second-hand); profile by practice',
    ...PRACTICE,
  },
  {
    id: 'shot_s280',
    term: 'Steel shot S-280',
    fits: 'shot',
    grainMm: [0.71, 0.71],
    csp: [3, 4],
    use: 'size by SAE-J444 (read second-hand); profile by practice',
    ...PRACTICE,
  },
  {
    id: 'shot_s330',
    term: 'Steel shot S-330',
    fits: 'shot',
    grainMm: [0.84, 0.84],
    csp: [4, 5],
    use: 'size by SAE-J444 (read second-hand); profile by practice',
    ...PRACTICE,
  },
  {
    id: 'shot_s390',
    term: 'Steel shot S-390',
    fits: 'shot',
    grainMm: [0.99, 0.99],
    csp: [5, 7],
    use: 'size by SAE-J444 (read second-hand); profile by practice',
    ...PRACTICE,
  },
  {
    id: 'shot_s460',
    term: 'Steel shot S-460',
    fits: 'shot',
    grainMm: [1.17, 1.17],
    csp: [6, 8],
    use: 'size by SAE-J444 (read second-hand); profile by practice',
    ...PRACTICE,
  },
  {
    id: 'shot_s550',
    term: 'Steel shot S-550',
    fits: 'shot',
    grainMm: [1.4, 1.4],
    csp: [7, 9],
    use: 'size by SAE-J444 (read second-hand); profile by practice',
    ...PRACTICE,
  },
];

/** The row of an abrasive, or null for an id that this book does not know. */
export function abrasiveOf(id: string): AbrasiveRow | null {
  return abrasives.find((row) => row.id === id) ?? null;
}
