import { expect, it } from 'vitest';
import { checkPlan } from './checkPlan.ts';
import { FAMILY_NAMES } from './families.ts';
import { isOpen } from './open.ts';
import { PINNED } from './pinned.ts';
import { loadJury } from './oracleVotes.ts';
import { planOf } from './plan.ts';
import { told } from './runPlans.ts';

const jury = await loadJury();

it('plans on which the engine once was wrong keep every law', { timeout: 120_000 }, () => {
  const failures = PINNED.flatMap(({ family, seed }) =>
    checkPlan(family, seed, jury, 'all')
      .broken.map((broken) => ({ family, seed, ...broken }))
      .filter((failure) => !isOpen(failure)),
  );
  expect(failures.map(told)).toEqual([]);
});

it('a family and a seed are one plan, and no two seeds the same', () => {
  for (const family of FAMILY_NAMES) {
    const plans = Array.from({ length: 20 }, (_, seed) => JSON.stringify(planOf(family, seed)));
    expect(JSON.stringify(planOf(family, 7)), family).toBe(plans[7]);
    expect(new Set(plans).size, family).toBe(20);
  }
});
