import type { Jury } from './oracleVotes.ts';
import { type Broken, checkPlan } from './checkPlan.ts';
import { FAMILY_NAMES, type FamilyName } from './families.ts';

/** A plan with something wrong; `family` and `seed` make it again. */
export interface Failure extends Broken {
  readonly family: FamilyName;
  readonly seed: number;
}

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
  jury: Jury,
  families: readonly FamilyName[] = FAMILY_NAMES,
): Run {
  const failures: Failure[] = [];
  let disagreements = 0;
  for (let i = 0; i < count; i += 1) {
    const family = families[i % families.length] as FamilyName;
    const seed = firstSeed + Math.floor(i / families.length);
    const checked = checkPlan(family, seed, jury);
    failures.push(...checked.broken.map((broken) => ({ family, seed, ...broken })));
    disagreements += checked.disagreements;
  }
  return { plans: count, failures, disagreements };
}

/** One line a failure, to run again or to pin. */
export function told({ family, seed, law, what }: Failure): string {
  return `${family} ${seed}: ${law}: ${what}`;
}
