import { checkPlan } from './checkPlan.ts';
import { FAMILY_NAMES } from './families.ts';
import { isOpen } from './open.ts';
import { loadJury } from './oracleVotes.ts';
import { planOf } from './plan.ts';
import { type Failure, runPlans, told } from './runPlans.ts';
import { shrunk } from './shrink.ts';

export interface FuzzOrder {
  readonly count: number;
  readonly firstSeed: number;
  /** All of them when it is left out. */
  readonly family: string | undefined;
  /** Which part of the work, of how many. */
  readonly share: number;
  readonly shares: number;
}

/** One process's part of `npm run fuzz`: prints what fails and answers how many plans did. */
export async function fuzzShare(order: FuzzOrder, print: (line: string) => void): Promise<number> {
  const families = FAMILY_NAMES.filter((name) => order.family === undefined || name === order.family);
  if (families.length === 0) {
    print(`There is no family ${order.family}. There are: ${FAMILY_NAMES.join(' ')}`);
    return 1;
  }
  const jury = await loadJury();
  let [failed, open, disagreements] = [0, 0, 0];
  // Whole rounds of the families, so that each process has seeds of its own.
  for (let round = order.share; round * families.length < order.count; round += order.shares) {
    const plans = Math.min(families.length, order.count - round * families.length);
    const run = runPlans(plans, order.firstSeed + round, jury, families);
    const fresh = run.failures.filter((failure) => !isOpen(failure));
    for (const failure of fresh) print(told(failure));
    failed += plansOf(fresh);
    open += plansOf(run.failures.filter(isOpen));
    disagreements += run.disagreements;
  }
  if (disagreements > 0) print(`${disagreements} answers on which other engines do not agree`);
  if (open > 0) print(`${open} plans break a law as they are known to, see tests/fuzz/open.ts`);
  return failed;
}

function plansOf(failures: readonly Failure[]): number {
  return new Set(failures.map(({ family, seed }) => `${family} ${seed}`)).size;
}

/** For each law that one plan breaks, or for one of them, the smallest plan that still breaks it, printed as a shape. */
export async function smallestPlans(
  name: string,
  seed: number,
  law: string | undefined,
  print: (line: string) => void,
): Promise<number> {
  const family = FAMILY_NAMES.find((one) => one === name);
  if (!family || !Number.isInteger(seed)) {
    print(`Say a family and a seed. There are: ${FAMILY_NAMES.join(' ')}`);
    return 1;
  }
  const jury = await loadJury();
  const { broken } = checkPlan(family, seed, jury, law === undefined ? 'all' : { law });
  const laws = new Map(broken.map((one) => [one.law, one.what]));
  for (const [broke, what] of laws) {
    print(told({ family, seed, law: broke, what }));
    print(JSON.stringify(shrunk(planOf(family, seed), seed, broke, jury)));
  }
  return laws.size;
}
