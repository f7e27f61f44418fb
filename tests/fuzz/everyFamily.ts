import type { Jury } from './oracleVotes.ts';
import { expect, it } from 'vitest';
import { FAMILY_NAMES, type FamilyName } from './families.ts';
import { isOpen } from './open.ts';
import { runPlans, told } from './runPlans.ts';

/** A few plans of each family, for whoever runs tests alone; `npm test` has 20,000 in a stage of their own, where they go faster. */
const SEEDS_A_FAMILY = 15;
const MOST_TOLD = 12;

/** One test a family; two files take half of them each, to run side by side. */
export function everyFamily(half: 0 | 1, jury: Jury): void {
  const names = FAMILY_NAMES.filter((_, i) => i % 2 === half);
  it.each(names)('%s: every plan keeps every law', { timeout: 60_000 }, (name: FamilyName) => {
    const { plans, failures } = runPlans(SEEDS_A_FAMILY, 0, jury, [name]);
    const fresh = failures.filter((failure) => !isOpen(failure));
    expect(fresh.slice(0, MOST_TOLD).map(told)).toEqual([]);
    expect(plans).toBe(SEEDS_A_FAMILY);
  });
}
