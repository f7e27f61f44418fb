import { PRACTICE, type Sourced } from './rateRow.ts';

/**
 * A floor as the rules count it. A rule written for 1000 ft2 gives 100 m2 in metric editions, which is not the same
 * floor: the count is worked out in the units of the job, and says so.
 */
export interface CountedFloor {
  readonly areaM2: number;
  readonly areaFt2: number;
  readonly units: 'metric' | 'imperial';
  readonly zones: number;
  /** Edge runs and changes of method: one comparison of the profile each. */
  readonly edgeRuns: number;
  readonly methodChanges: number;
}

export interface TestCountRow extends Sourced {
  readonly id: string;
  readonly term: string;
  /** As it is printed. */
  readonly rule: string;
  /** Whole tests that the rule asks for; null: it is not counted by the floor. */
  readonly count: ((floor: CountedFloor) => number) | null;
}

interface Unit {
  readonly ft2: number;
  readonly m2: number;
}

const PROBES: Unit = { ft2: 1000, m2: 100 };
const SHEETS: Unit = { ft2: 500, m2: 46 };
/** A hair over a whole unit is rounding, not floor: 92.9 m2 written as 1000 ft2 and read back. */
const HAIR = 1e-9;

function parts(area: number, unit: number): number {
  return Math.max(0, Math.ceil(area / unit - HAIR));
}

function unitsOf(floor: CountedFloor, unit: Unit): number {
  return floor.units === 'metric' ? parts(floor.areaM2, unit.m2) : parts(floor.areaFt2, unit.ft2);
}

/** `least` for the first unit, one more for each further unit or part of it. */
function firstThen(least: number, area: number, first: number, further: number): number {
  return least + parts(Math.max(0, area - first), further);
}

function probes(floor: CountedFloor): number {
  return floor.units === 'metric'
    ? firstThen(3, floor.areaM2, PROBES.m2, PROBES.m2)
    : firstThen(3, floor.areaFt2, PROBES.ft2, PROBES.ft2);
}

/** F numbers: least readings by ASTM E1155, from memory; for 320 ft2 and more. */
function flatnessReadings({ areaFt2 }: CountedFloor): number {
  if (areaFt2 < 320) return 0;
  return Math.ceil((areaFt2 >= 1600 ? 2 * Math.sqrt(areaFt2) : areaFt2 / 30) - HAIR);
}

const read = (source: string): Sourced => ({ source, provenance: 'R', fromMemory: false });
const heard = (source: string): Sourced => ({ source, provenance: 'R2', fromMemory: false });
const remembered = (source: string): Sourced => ({ source, provenance: 'M', fromMemory: true });

function row(id: string, term: string, rule: string, count: TestCountRow['count'], from: Sourced): TestCountRow {
  return { id, term, rule, count, ...from };
}

/** How many tests a floor needs. The specification, and the data sheet of the system, come before every rule. */
export const testCounts: readonly TestCountRow[] = [
  row(
    'f2170',
    'Relative humidity probes',
    '3 for the first 1000 ft2 (100 m2), 1 for each further 1000 ft2 (100 m2) or part',
    probes,
    heard('ASTM-F2170'),
  ),
  row(
    'f1869',
    'Calcium chloride domes',
    '3 for the first 1000 ft2 (100 m2), 1 for each further 1000 ft2 (100 m2) or part',
    probes,
    heard('ASTM-F1869'),
  ),
  row(
    'd4263',
    'Plastic sheets',
    '1 for each 500 ft2 (46 m2) or part',
    (floor) => unitsOf(floor, SHEETS),
    remembered('ASTM-D4263'),
  ),
  row(
    'd4262',
    'pH after a chemical clean or etch',
    '2 for each 500 ft2 (46 m2) or part',
    (floor) => 2 * unitsOf(floor, SHEETS),
    read('ASTM-D4262'),
  ),
  row(
    'd4262_or_moisture',
    'pH otherwise',
    'after a chemical clean or etch as above; else 1 at each moisture test',
    null,
    heard('ASTM-F710'),
  ),
  row(
    'f3191',
    'Water drop',
    '3 for the first 3000 ft2, 1 for each further 2000 ft2 or part',
    ({ areaFt2 }) => firstThen(3, areaFt2, 3000, 2000),
    remembered('ASTM-OTHER'),
  ),
  row(
    'e1155',
    'Flatness readings',
    'at least A / 30, from 1600 ft2 on 2 x root of A; A in ft2, 320 or more',
    flatnessReadings,
    remembered('ASTM-OTHER'),
  ),
  row(
    'pull',
    'Pull-off',
    '3 for the first 500 m2, 1 for each further 500 m2 or part, of each zone and method',
    ({ areaM2 }) => firstThen(3, areaM2, 500, 500),
    PRACTICE,
  ),
  row(
    'csp',
    'Profile comparisons',
    '3 for the first 100 m2, 1 for each further 100 m2 or part, and 1 for each edge run and change of method',
    (floor) => firstThen(3, floor.areaM2, 100, 100) + floor.edgeRuns + floor.methodChanges,
    PRACTICE,
  ),
  row('zone3', 'Scratch hardness, coating', '3 in each zone', ({ zones }) => 3 * zones, PRACTICE),
  row('zone1', 'Rebound number', '1 in each zone', ({ zones }) => zones, PRACTICE),
  row('day', 'Climate', '1 before work, then every 4 h and at each change of weather', null, PRACTICE),
  row(
    'rh_depth',
    'Depth of a humidity probe',
    '40 % of the slab where it dries to one side, 20 % where to two',
    null,
    heard('ASTM-F2170'),
  ),
];

/** Whole tests that a rule asks for on this floor; null for a rule that is not counted by the floor, or an unknown one. */
export function testsNeeded(rule: string, floor: CountedFloor): number | null {
  return testCounts.find(({ id }) => id === rule)?.count?.(floor) ?? null;
}

/** Hours before a test tells something: the climate it stands in, and the wait after it is set. */
export const TEST_WAITS_H = {
  f2170: { condition: 48, wait: 24 },
  f1869: { condition: 48, open: 24, dome: [60, 72] },
  d4263: { wait: 16 },
  pull: { glue: [1, 24] },
} as const;
