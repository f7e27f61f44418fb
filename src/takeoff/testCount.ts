import { M2_PER_FT2 } from '../model/units.ts';
import { add, divide, largest, number, subtract, term, wholeUp } from './formula.ts';
import type { Formula, Line, Term } from './line.ts';
import { testCounts } from './rates/testCounts.ts';
import { measured } from './terms.ts';

/** So many to start with, which the first unit of area is worth, and one more for each further unit or part of it. */
interface CountRule {
  readonly start: number;
  readonly unitM2: number;
  /** null: the rule is in m2 for every job. */
  readonly unitFt2: number | null;
}

const RULES = {
  f2170: { start: 3, unitM2: 100, unitFt2: 1000 },
  pull: { start: 3, unitM2: 500, unitFt2: null },
  csp: { start: 3, unitM2: 100, unitFt2: null },
} as const satisfies Readonly<Record<string, CountRule>>;

export interface TestCount {
  readonly formula: Formula;
  readonly terms: readonly Term[];
}

/**
 * Number of tests of one rule on an area, m2, as formula and terms; whole tests. 100 m2 are not 1,000 ft2: the units of
 * the job decide how a rule is counted that is written for both, and the working says which. Sources: table of test
 * counts.
 */
export function testCount(
  rule: keyof typeof RULES,
  areaM2: number,
  units: 'metric' | 'imperial',
  from: Line['key'] | null = null,
): TestCount {
  const { start, unitM2, unitFt2 }: CountRule = RULES[rule];
  const inFeet = units === 'imperial' && unitFt2 !== null;
  const unit = inFeet ? 'ft2' : 'm2';
  const terms = [
    measured('area', inFeet ? areaM2 / M2_PER_FT2 : areaM2, unit, from),
    ruleTerm(rule, 'area of one', inFeet ? unitFt2 : unitM2, unit),
    ruleTerm(rule, 'tests to start with', start, 'number'),
  ];
  const further = largest(number(0), subtract(term('area'), term('area of one')));
  return { formula: add(term('tests to start with'), wholeUp(divide(further, term('area of one')))), terms };
}

function ruleTerm(rule: keyof typeof RULES, name: string, value: number, unit: string): Term {
  const row = testCounts.find(({ id }) => id === rule);
  return {
    name,
    value: { low: value, likely: value, high: value },
    unit,
    source: row?.source ?? 'common practice, no source',
    provenance: row?.provenance ?? 'P',
    fromMemory: row?.fromMemory ?? false,
    from: null,
  };
}
