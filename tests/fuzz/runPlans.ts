import type { Oracle } from '../support/oracles/oracle.ts';
import { type Failure, checkPlan } from './checkPlan.ts';
import { FAMILY_NAMES, type FamilyName } from './families.ts';

export interface Run {
  readonly plans: number;
  readonly failures: readonly Failure[];
  /** Answers of other engines that no two of them agreed on. */
  readonly disagreements: number;
}

/** `count` plans, family by family in turn, with seeds from `firstSeed` up. */
export function runPlans(
  count: number,
  firstSeed: number,
  oracles: readonly Oracle[],
  families: readonly FamilyName[] = FAMILY_NAMES,
): Run {
  const failures: Failure[] = [];
  let disagreements = 0;
  for (let i = 0; i < count; i += 1) {
    const family = families[i % families.length] as FamilyName;
    const checked = checkPlan(family, firstSeed + Math.floor(i / families.length), oracles);
    failures.push(...checked.failures);
    disagreements += checked.disagreements;
  }
  return { plans: count, failures, disagreements };
}

/** One line a failure, to run again or to pin. */
export function told({ family, seed, what }: Failure): string {
  return `${family} ${seed}: ${what}`;
}
